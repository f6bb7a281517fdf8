import { describe, expect, it } from 'vitest';
import { plantAgainstOrigin } from '../../../src/check/plant-against-origin';
import { monthSpan } from '../../../src/span';
import { claim, decoded, facts, kv0915, onlyFinding, reading, said } from './sample';

describe('plant-against-origin', () => {
  const origin = (words: string, place: string) => claim('origin', words, { place });
  it('contradicts another country', () => {
    expect(said(plantAgainstOrigin, facts({ decodings: [kv0915], claims: [origin('Made in Italy', 'IT')] }))).toEqual([
      'contradiction: The stamp in photo 1 reads KV0915: workshop KV, Belgium. The listing says “Made in Italy”.',
    ]);
  });
  it('agrees with the same country', () => {
    expect(said(plantAgainstOrigin, facts({ decodings: [kv0915], claims: [origin('Made in Belgium', 'BE')] }))).toEqual(
      ['agreement: The stamp in photo 1 reads KV0915: workshop KV, Belgium, as the listing says: “Made in Belgium”.'],
    );
  });
  it('takes a former country for its heirs', () => {
    const czech = reading('KV0915', monthSpan(1991, 1), { places: ['CZ'] });
    const given = facts({
      decodings: [decoded('KV0911', [czech])],
      claims: [origin('Made in Czechoslovakia', 'CSHH')],
    });
    expect(onlyFinding(plantAgainstOrigin, given).kind).toBe('agreement');
  });
  it('is silent while one likely reading names no place', () => {
    const open = decoded('KV0915', [
      reading('KV0915', monthSpan(1995, 1), { probability: 0.5 }),
      reading('KV0915', monthSpan(1995, 1), { probability: 0.4, places: [], plant: null }),
    ]);
    expect(said(plantAgainstOrigin, facts({ decodings: [open], claims: [origin('Made in Italy', 'IT')] }))).toEqual([
      'silent',
    ]);
  });
  it('does not apply without an origin claim, and cannot tell from an unclear stamp', () => {
    expect(said(plantAgainstOrigin, facts({ decodings: [kv0915] }))).toEqual([
      'not-applicable: the listing names no country of making',
    ]);
    const unclear = facts({ decodings: [{ ...kv0915, accepted: false }], claims: [origin('Made in Italy', 'IT')] });
    expect(said(plantAgainstOrigin, unclear)[0]).toMatch(/^cannot-tell/);
  });
  it('only doubts a second country when the listing also names that of the workshop', () => {
    const claims = [origin('Made in Belgium', 'BE'), { ...origin('Made in Italy', 'IT'), id: 'second' }];
    const kinds = said(plantAgainstOrigin, facts({ decodings: [kv0915], claims })).map((one) => one.split(':')[0]);
    expect(kinds).toEqual(['agreement', 'doubt']);
  });
});
