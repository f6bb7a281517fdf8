import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Facts, type Finding, runChecks } from '../../../src/check';
import type { Claim, Part } from '../../../src/claim/types';
import type { Decoding } from '../../../src/code/types';
import { type Evidence, type Pair, pairsOf, reason } from '../../../src/evidence';
import type { MakerFile } from '../../../src/maker/types';
import type { MarkRead } from '../../../src/mark/types';
import { monthSpan, type Span, yearSpan, yearsSpan } from '../../../src/span';
import { claim, decoded, facts, ondrasse, reading } from './sample';
import { markRead } from './sample-marks';

const runs = 10_000;
const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);

/** What tells of two facts that stand to each other by a rule. */
const tellers = {
  'code-against-claimed-date': 'claimed-date-code',
  'mark-against-claimed-date': 'claimed-date-mark',
  'mark-against-code-date': 'code-mark',
  'plant-against-origin': 'origin-code',
  'mark-against-origin': 'origin-mark',
  'mark-against-plant': 'code-mark-place',
  'origin-claims-agree': 'origins',
  'origin-country-existed': 'country-date',
  'claimed-dates-agree': 'claimed-dates',
  'bought-after-making': 'making-purchase',
  'construction-against-date': 'material-date',
  'model-made-then': 'model-date',
} as const;
type Teller = keyof typeof tellers;
const placed: Teller[] = ['plant-against-origin', 'mark-against-origin', 'mark-against-plant', 'origin-claims-agree'];
const isTeller = (check: string): check is Teller => check in tellers;

const year = fc.integer({ min: 1984, max: 2004 });
const places = ['BE', 'IT', 'DDDE', 'DE', 'CSHH', 'SK'];
const place = fc.constantFrom(...places);
const sure = fc.constantFrom(0.9, 0.9, 0.3);
const field = fc.constantFrom('title', 'description');

const loose: fc.Arbitrary<Span> = fc.oneof(
  { weight: 3, arbitrary: year.map(yearSpan) },
  fc.tuple(year, fc.integer({ min: 1, max: 9 })).map(([from, more]) => yearsSpan(from, from + more)),
  year.map((one) => ({ ...yearSpan(one), about: true })),
);
const saying: fc.Arbitrary<(id: string) => Claim> = fc
  .tuple(
    fc.oneof(
      { weight: 4, arbitrary: loose.map((span) => claim('made', `made ${span.from}`, { span })) },
      loose.map((span) => claim('bought', `bought ${span.from}`, { span })),
      { weight: 2, arbitrary: place.map((one) => claim('origin', `made in ${one}`, { place: one })) },
      fc
        .constantFrom('olive twill', 'sand suede', 'satin', 'cotton')
        .map((material) => claim('material', material, { part: 'lining', material })),
      fc.constantFrom('Carryall 30', 'Carryall 45').map((model) => claim('model', model, { model })),
      fc.constantFrom<Part[]>(['lining'], []).map((parts) => claim('replaced', 'restored', { parts })),
    ),
    sure,
    field,
  )
  .map(
    ([one, confidence, where]) =>
      (id) =>
        ({ ...one, id, confidence, at: { ...one.at, field: where } }) as Claim,
  );

const read = fc.record({
  year,
  other: fc.option(year),
  places: fc.constantFrom<string[]>(['BE'], ['IT'], []),
  used: fc.tuple(year, fc.integer({ min: 0, max: 20 })),
  from: fc.constantFrom('photo', 'claim', 'typed'),
});
const code: fc.Arbitrary<(id: string) => Decoding> = read.map((given) => (id) => {
  const systemUsed = yearsSpan(given.used[0], given.used[0] + given.used[1]);
  const one = (at: number) => reading(id, monthSpan(at, 1), { places: given.places, systemUsed });
  const readings = [given.year, ...(given.other === null ? [] : [given.other])].map(one);
  const from = { photo: { kind: 'photo', photoId: 'p1', lineId: id }, typed: { kind: 'typed' } } as const;
  return decoded(id, readings, {
    id,
    from: given.from === 'claim' ? { kind: 'claim', claimId: id } : from[given.from],
  });
});
const mark: fc.Arbitrary<(id: string) => MarkRead> = fc
  .record({
    spans: fc.constantFrom<[number | null, number | null] | null>([1990, null], [1995, 1999], [null, 1990], null),
    places: fc.constantFrom<string[]>([], ['BE'], ['DE']),
    strength: fc.constantFrom<'hard' | 'soft'>('hard', 'soft'),
    foundIn: fc.constantFrom<'photo' | 'listing'>('photo', 'listing'),
  })
  .map(
    ({ spans, foundIn, ...rest }) =>
      (id) =>
        markRead({
          id,
          words: `mark ${id}`,
          spans: spans ? [yearsSpan(...spans)] : [],
          ...(foundIn === 'photo' ? { foundIn, photoId: 'p1' } : { foundIn, photoId: null }),
          ...rest,
        } as Partial<MarkRead>),
  );

const maker = {
  ...ondrasse,
  construction: [
    { part: 'lining', is: 'olive twill', not: ['satin'], used: ['1970', '1994'], strength: 'hard', source: 'invented' },
    { part: 'lining', is: 'sand suede', not: ['satin'], used: ['1995', null], strength: 'soft', source: 'invented' },
  ],
  models: [
    { name: 'Carryall 30', made: ['1985', '1997'] },
    { name: 'Carryall 45', made: ['1999', null] },
  ],
} as MakerFile;

const numbered = <T>(make: readonly ((id: string) => T)[], letter: string): T[] =>
  make.map((one, at) => one(`${letter}${at}`));
const given: fc.Arbitrary<Facts> = fc
  .record({
    claims: fc.array(saying, { maxLength: 5 }),
    decodings: fc.array(code, { maxLength: 2 }),
    marks: fc.array(mark, { maxLength: 2 }),
    known: fc.constantFrom(true, true, true, false),
  })
  .map(({ claims, decodings, marks, known }) =>
    facts({
      claims: numbered(claims, 'c'),
      decodings: numbered(decodings, 'd'),
      marks: numbered(marks, 'm'),
      maker: known ? maker : null,
    }),
  );

/** How a finding says that two facts stand to each other, as the reasoning would say it. */
function kindOf(pair: Pair): Finding['kind'] | null {
  if (pair.relation === 'conflicts') return pair.hard ? 'contradiction' : 'doubt';
  return pair.relation === 'agrees' ? 'agreement' : null;
}

const isOver = (check: Teller, over: Pair['over']) => (placed.includes(check) ? 'place' : 'date') === over;

const basesOf = (ids: readonly string[], evidence: readonly Evidence[]) =>
  new Set(evidence.filter(({ id }) => ids.includes(id)).map(({ basis }) => basis));

test(`no finding says otherwise than the reasoning, over ${runs} cases`, { timeout: 240_000 }, () => {
  const spoken = new Map<string, number>();
  fc.assert(
    fc.property(given, (all) => {
      const pairs = pairsOf(all.evidence);
      const { conflicts, agreeing, agrees } = all.reasoning;
      const findings = runChecks(all).flatMap((one) => (one.outcome === 'speaks' ? one.findings : []));
      for (const finding of findings) {
        const { check, kind, evidence } = finding;
        if (check === 'evidence-agrees') {
          expect(kind === 'agreement').toBe(agrees);
          const same = [...conflicts, ...agreeing].find((one) => one.evidence.join() === evidence.join());
          expect(same).toBeDefined();
          if (same && 'strength' in same && kind === 'contradiction') expect(same.strength).toBe('hard');
          continue;
        }
        if (!isTeller(check)) continue;
        spoken.set(`${check} ${kind}`, (spoken.get(`${check} ${kind}`) ?? 0) + 1);
        if (check === 'claimed-dates-agree' && kind === 'agreement') {
          const ids = finding.claims.map((id) => `claim-${id}`);
          const between = pairs.filter(
            ({ rule, left, right }) => rule === tellers[check] && ids.includes(left) && ids.includes(right),
          );
          expect(between.every(({ relation }) => relation === 'agrees')).toBe(true);
          continue;
        }
        const [one, other] = evidence;
        const pair = pairs.find(
          ({ rule, left, right }) =>
            rule === tellers[check] && [left, right].includes(one ?? '') && [left, right].includes(other ?? ''),
        );
        // A mark of the text against a date has its own evidence alone; its claim names the other side.
        const told = pair ?? pairOfClaim(finding, pairs, tellers[check]);
        expect(told && kindOf(told)).toBe(kind);
        if (!told || kind === 'agreement') continue;
        // What a finding speaks against is a conflict of the reasoning as well, and no softer there.
        const own = basesOf([told.left, told.right], all.evidence);
        const conflict = conflicts.find(
          (some) =>
            some.over === told.over && [...basesOf(some.evidence, all.evidence)].every((basis) => own.has(basis)),
        );
        expect(conflict).toBeDefined();
        if (kind === 'contradiction') expect(conflict?.strength).toBe('hard');
      }
      // And what the reasoning calls a conflict of two facts is never praised by a finding on the same.
      for (const { evidence, over } of conflicts) {
        if (evidence.length !== 2) continue;
        const praise = findings.find(
          ({ check, kind, evidence: ids }) =>
            isTeller(check) && kind === 'agreement' && isOver(check, over) && ids.join() === evidence.join(),
        );
        expect(praise).toBeUndefined();
      }
    }),
    { seed, numRuns: runs },
  );
  // The generator makes every check speak in every kind that it has of a rule.
  expect([...new Set([...spoken.keys()].map((key) => key.split(' ')[0]))].sort()).toEqual(Object.keys(tellers).sort());
});

/** Findings that name the evidence of one side and the claim of the other. */
const pairOfClaim = ({ evidence, claims }: Finding, pairs: readonly Pair[], rule: string): Pair | undefined =>
  pairs.find(
    (pair) =>
      pair.rule === rule &&
      evidence.some((id) => id === pair.left || id === pair.right) &&
      claims.some((id) => `claim-${id}` === pair.left || `claim-${id}` === pair.right),
  );

test('a reasoning over two facts alone says of them what the pair says', () => {
  fc.assert(
    fc.property(given, ({ evidence }) => {
      for (const pair of pairsOf(evidence)) {
        const two = evidence.filter(({ id }) => id === pair.left || id === pair.right);
        const { conflicts } = reason(two);
        const conflict = conflicts.find(({ over }) => over === pair.over);
        expect(conflict !== undefined).toBe(pair.relation === 'conflicts');
        // Alone nothing softens it: what the listing says besides is not there.
        if (pair.hard) expect(conflict?.strength).toBe('hard');
      }
    }),
    { seed, numRuns: 500 },
  );
});
