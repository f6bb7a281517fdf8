import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { gatherEvidence, pairsOf, reason } from '../../../src/evidence';
import { monthSpan, yearSpan, yearsSpan } from '../../../src/span';
import { decoding, madeClaim, mark, ondrasse, originClaim, reading } from './samples';

const nothing = { claims: [], decodings: [], marks: [], maker: ondrasse };
const codeOf = (year: number) => decoding('d1', { readings: [reading({ span: monthSpan(year, 1) })] });
const bought = (year: number): Claim =>
  ({ ...madeClaim('b1', `bought in ${year}`, yearSpan(year)), kind: 'bought' }) as Claim;
const stand = (given: Partial<Parameters<typeof gatherEvidence>[0]>) =>
  pairsOf(gatherEvidence({ ...nothing, ...given })).map(({ rule, left, right, relation, hard, informs }) =>
    [rule, left, right, relation, ...(hard ? ['hard'] : []), ...(informs ? ['informs'] : [])].join(' '),
  );

test('every claimed date, code and mark is held against the others, once by each rule', () => {
  const claims = [
    madeClaim('c1', 'made in 1995', yearSpan(1995)),
    bought(1990),
    originClaim('o1', 'Czechoslovakia', 'CSHH'),
  ];
  const marks = [mark('m1', { spans: [yearsSpan(1998, null)], places: [] })];
  expect(stand({ claims, decodings: [codeOf(1995)], marks })).toEqual([
    'claimed-date-code claim-c1 reading-d1 agrees informs',
    'purchase-code claim-b1 reading-d1 conflicts hard',
    'claimed-date-mark claim-c1 mark-m1 conflicts hard',
    'code-mark reading-d1 mark-m1 conflicts hard',
  ]);
});

test('what agrees with nearly everything tells nothing', () => {
  const marks = [mark('m1', { spans: [yearsSpan(1990, null)], places: [] })];
  expect(stand({ claims: [bought(2001)], decodings: [codeOf(1995)], marks })).toEqual([
    'purchase-code claim-b1 reading-d1 agrees',
    'code-mark reading-d1 mark-m1 agrees',
  ]);
});

test('within its room a loose date neither agrees nor conflicts', () => {
  const about = madeClaim('c1', 'about 1994', { ...yearSpan(1994), about: true });
  const pair = (year: number) => stand({ claims: [about], decodings: [codeOf(year)] });
  expect(pair(1998)).toEqual(['claimed-date-code claim-c1 reading-d1 within-room']);
  expect(pair(2001)).toEqual(['claimed-date-code claim-c1 reading-d1 conflicts']);
});

const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);

test('two statements stand to each other as the reasoning over the two says', () => {
  const year = fc.integer({ min: 1985, max: 2005 });
  const about = fc.boolean();
  const given = fc.record({
    claimed: year,
    hedged: about,
    last: fc.option(fc.integer({ min: 0, max: 9 })),
    code: year,
    from: year,
    soft: about,
  });
  fc.assert(
    fc.property(given, ({ claimed, hedged, last, code, from, soft }) => {
      const span = { ...yearsSpan(claimed, claimed + (last ?? 0)), ...(hedged ? { about: true } : {}) };
      const evidence = gatherEvidence({
        claims: [madeClaim('c1', 'a date', span)],
        decodings: [codeOf(code)],
        marks: [mark('m1', { spans: [yearsSpan(from, null)], places: [], strength: soft ? 'soft' : 'hard' })],
        maker: ondrasse,
      });
      const pairs = pairsOf(evidence);
      expect(pairs).toHaveLength(3);
      for (const { left, right, relation, hard } of pairs) {
        const { agrees, conflicts } = reason(evidence.filter(({ id }) => id === left || id === right));
        expect(agrees).toBe(relation !== 'conflicts');
        expect(conflicts.map(({ strength }) => strength)).toEqual(agrees ? [] : [hard ? 'hard' : 'soft']);
      }
    }),
    { seed, numRuns: 1000 },
  );
});
