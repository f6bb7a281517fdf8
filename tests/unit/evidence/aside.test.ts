import { expect, test } from 'vitest';
import { gatherEvidence, pairsOf, reason } from '../../../src/evidence';
import { evidenceSchema } from '../../../src/evidence/types';
import type { Listing } from '../../../src/listing/types';
import { monthSpan, sinceSpan, yearSpan } from '../../../src/span';
import { claim, decoded, measureOf, ondrasse, priceOf, reading, stated, withPhotos } from '../check/sample';

const now = '2026-01-15T10:00:00Z';
const nothing = { claims: [], decodings: [], marks: [], maker: ondrasse, now };
const page = (rest: Partial<Listing>) => ({ ...nothing, listing: withPhotos(1, rest) });
const wide = (mm: number, words = `${mm} mm`) => stated(measureOf('width', mm, words, 5));

/** How the two stand to each other by a rule, each as "relation hard". */
const stand = (given: Parameters<typeof gatherEvidence>[0], rule: string) =>
  pairsOf(gatherEvidence(given))
    .filter((pair) => pair.rule === rule)
    .map(({ relation, hard }) => [relation, ...(hard ? ['hard'] : [])].join(' '));

test('all that is gathered is a statement of its kind', () => {
  const evidence = gatherEvidence({
    ...page({
      model: stated('Weekender 50'),
      measures: [...wide(510), ...stated(measureOf('height', 300, '30 cm'))],
      price: [...stated(priceOf(20_000)), ...stated(priceOf(90_000, 'EUR', 'was'))],
    }),
    claims: [
      claim('age-word', 'vintage', { word: 'vintage', polarity: 'is' }),
      claim('bought', '1990', { span: yearSpan(1990) }),
    ],
    decodings: [decoded('KV0915', [reading('KV0915', monthSpan(1995, 1))])],
  });
  expect(evidence.map((piece) => evidenceSchema.safeParse(piece).success)).not.toContain(false);
  expect(new Set(evidence.map(({ id }) => id)).size).toBe(evidence.length);
  const kinds = new Set(
    evidence.filter(({ about }) => !about.includes('date') && about !== 'place').map(({ says }) => says.kind),
  );
  expect([...kinds].sort()).toEqual([
    'age-word',
    'asked-used',
    'floor-then',
    'named-width',
    'price-before',
    'price-now',
    'price-shown',
    'purchase-day',
    'size',
    'stamped',
    'stamping',
    'today',
  ]);
});

test('what stands aside narrows no date and is no fact that agrees', () => {
  const made = claim('made', '1995', { span: yearSpan(1995) });
  const given = { ...page({ measures: wide(300), price: stated(priceOf(54_000)) }), claims: [made] };
  const [plain, whole] = [gatherEvidence({ ...nothing, maker: null, claims: [made] }), gatherEvidence(given)];
  expect(reason(whole).agreeing).toEqual(reason(plain).agreeing);
  expect(reason(whole).agrees).toBe(true);
});

test('two lengths of a side are apart from the roundings of both and two tapes on', () => {
  const apart = (mm: number) => stand(page({ measures: [...wide(300), ...wide(300 + mm)] }), 'sizes');
  expect([19, 20, 21].map(apart)).toEqual([['agrees'], ['agrees'], ['conflicts']]);
});

test('a length fits a model within its tolerance, the rounding and the tape', () => {
  const off = (mm: number) => stand(page({ model: stated('Carryall 30'), measures: wide(300 + mm) }), 'size-model');
  expect([19, 20, 21].map(off)).toEqual([['agrees'], ['agrees'], ['conflicts']]);
  expect([-19, -20, -21].map(off)).toEqual([['agrees'], ['agrees'], ['conflicts']]);
});

test('a width fits the number of a name within three centimetres and its rounding', () => {
  const off = (mm: number) => stand(page({ model: stated('Weekender 50'), measures: wide(500 + mm) }), 'size-name');
  expect([34, 35, 36].map(off)).toEqual([['agrees'], ['agrees'], ['conflicts']]);
});

test('sums in another currency are held against each other only where a floor is, by dollars', () => {
  const price = (currency: string) =>
    page({ price: [...stated(priceOf(20_000, currency)), ...stated(priceOf(90_000, 'EUR', 'was'))] });
  expect(stand(price('USD'), 'price-cut')).toEqual([]);
  expect(stand(price('USD'), 'used-price')).toEqual(['agrees']);
  expect(stand(price('XTS'), 'used-price')).toEqual([]);
});

test('a code and the day of the look: of today it may be, of the month after it cannot, a claim of it is a doubt', () => {
  const code = (month: number) => ({ ...nothing, decodings: [decoded('KV', [reading('KV', monthSpan(2026, month))])] });
  expect([1, 2].map((month) => stand(code(month), 'today-date'))).toEqual([['agrees'], ['conflicts hard']]);
  const said = (year: number) => ({ ...nothing, claims: [claim('made', String(year), { span: yearSpan(year) })] });
  expect([2026, 2027].map((year) => stand(said(year), 'today-date'))).toEqual([['agrees'], ['conflicts']]);
});

test('a word of age is held against the last year that it allows', () => {
  const given = (year: number) => ({
    ...nothing,
    claims: [
      claim('age-word', 'vintage', { word: 'vintage', polarity: 'is' }),
      claim('made', String(year), { span: yearSpan(year) }),
    ],
  });
  expect([2005, 2006, 2007].map((year) => stand(given(year), 'age-word-date'))).toEqual([
    ['agrees'],
    ['agrees'],
    ['conflicts'],
  ]);
});

test('the dates of one reading are not saved by the years of the system of another', () => {
  const early = reading('KV0915', monthSpan(2009, 1));
  const late = { ...early, span: monthSpan(1995, 1), systemUsed: sinceSpan('2009-01-01') };
  // The first system was in use in 1995 and the second is in 2009: by what the two allow together nothing would be wrong.
  const both = [early, late];
  expect(stand({ ...nothing, decodings: [decoded('KV0915', both)] }, 'code-system')).toEqual(['conflicts hard']);
});

test('the reasoning names the rule of each agreement, and why it counts', () => {
  const given = {
    ...page({ model: stated('Carryall 30'), measures: wide(300) }),
    claims: [claim('made', '1995', { span: yearSpan(1995) })],
    decodings: [decoded('KV0915', [reading('KV0915', monthSpan(1995, 1))])],
  };
  const { agreements } = reason(gatherEvidence(given));
  expect(agreements.map(({ rule, over, informs }) => `${rule} ${over} ${informs}`)).toEqual([
    'claimed-date-code date another-date',
    'code-plant date closed-period',
    'size-model size another-length',
  ]);
});
