import { expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { listingOf, ondrasse, shortClaim, told } from './listing-of';

it('digits of a code are no size, and a size beside it is one', () => {
  const kinds = ['code', 'unknown', 'width', 'height'];
  expect(told(kinds, 'Date code 14 C 50 M 37 inside.')).toEqual(['code 14 C 50 M 37']);
  expect(told(kinds, 'Date code 14 C 50 M 37 inside. Width 30 cm.')).toEqual(['code 14 C 50 M 37', 'width 300']);
});

it('a page that offers nothing says nothing of a piece, and its replies do', () => {
  const text = 'Made in 1994, date code KV0915.';
  const claims = (kind: 'listing' | 'cut' | 'list') =>
    findClaims({ ...listingOf('Ondrasse satchel', text), kind } as never, [ondrasse]).map(shortClaim);
  expect(claims('listing')).toEqual(['maker Ondrasse', 'made 1994-1994', 'code KV0915']);
  expect(claims('cut')).toEqual(claims('listing'));
  expect(claims('list')).toEqual([]);
  const replied = findClaims({ ...listingOf('', ''), kind: 'list' } as never, [ondrasse], [text]);
  expect(replied.map(({ kind, at }) => `${kind} ${at.field}`)).toEqual(['made reply', 'code reply']);
});

it('a strap that is sold by itself is of what its seller says of nothing else', () => {
  expect(told(['strap', 'body'], 'Of brown calf.', 'Strap only')).toEqual(['strap = brown calfskin']);
  expect(told(['strap', 'body'], 'Of brown calf.', 'Satchel')).toEqual(['body = brown calfskin']);
});

it('a row that says what the page’s own data says is not said twice, and another value is', () => {
  const material = [{ value: 'calfskin', origin: 'json-ld' as const, where: 'x', confidence: 0.9 }];
  const listing = (row: string) => listingOf('Satchel', 'A bag.', 'en', { material, text: `A bag.\n${row}` });
  const said = (row: string) =>
    findClaims(listing(row), []).flatMap((one) => (one.kind === 'material' ? one.material : []));
  expect(said('Postage: free')).toEqual(['calfskin']);
  expect(said('Material: calfskin')).toEqual(['calfskin']);
  expect(said('Material: suede')).toEqual(['suede', 'calfskin']);
});
