import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Dating, reason, stretchOf } from '../../../src/evidence';
import { minimalConflicts } from '../../../src/evidence/conflicts';
import { presentPlaces } from '../../../src/place';
import { type Span, yearsSpan } from '../../../src/span';
import { setHolds } from '../span/set-holds';
import { piece } from './samples';

const seed = Date.now() % 1_000_000;
console.log(`seed ${seed}`);
const years = [1990, 1991, 1992, 1993, 1994, 1995];
const grounds = ['CSHH', 'CZ', 'SK', 'FR'];

const span: fc.Arbitrary<Span> = fc
  .tuple(fc.integer({ min: 1989, max: 1995 }), fc.integer({ min: 1990, max: 1996 }))
  .filter(([from, to]) => from <= to)
  .map(([from, to]) => yearsSpan(from === 1989 ? null : from, to === 1996 ? null : to));
const one = fc.record({
  from: fc.constantFrom('claim' as const, 'reading' as const, 'system' as const).map((kind) => ({ kind, id: 'd' })),
  basis: fc.constantFrom('a', 'b', 'c', 'd', 'e', 'f', 'g'),
  spans: fc.array(span, { maxLength: 3 }),
  places: fc.array(fc.constantFrom(...grounds), { maxLength: 2 }),
  strength: fc.constantFrom('hard' as const, 'soft' as const),
});
const evidenceOf = (most: number): fc.Arbitrary<Dating[]> =>
  fc.array(one, { maxLength: most }).map((pieces) => pieces.map((over, at) => piece(`e${at}`, over)));

/** Every year in question by itself, with one far before and one far after: the whole of time for these spans. */
const moments = [
  '1900-06-01',
  ...[1985, 1986, 1987, 1988, 1989, 1996, 1997, 1998, 1999, 2000].map((year) => `${year}-06-01`),
  ...years.map((year) => `${year}-06-01`),
  '2100-06-01',
];
const spots = ['CZ', 'SK', 'FR', 'elsewhere'];
const allowsDay = ({ spans }: Dating, day: string) =>
  spans.length === 0 || spans.some(({ from, to }) => (from === null || from <= day) && (to === null || to >= day));
const allowsSpot = ({ places }: Dating, spot: string) =>
  places.length === 0 || places.some((place) => presentPlaces(place).includes(spot));
const overDate = (set: Dating[]) => moments.some((day) => set.every((piece) => allowsDay(piece, day)));
const overPlace = (set: Dating[]) => spots.some((spot) => set.every((piece) => allowsSpot(piece, spot)));
const holds = (set: Dating[]) => overDate(set) && overPlace(set);
const subsets = <T>(items: T[]): T[][] =>
  Array.from({ length: 2 ** items.length }, (_, bits) => items.filter((_item, at) => (bits >> at) & 1));

test('the largest agreeing sets are those that trying every set finds', () => {
  fc.assert(
    fc.property(evidenceOf(7), (evidence) => {
      const speaking = evidence.filter(({ spans, places }) => spans.length + places.length > 0);
      const follows = ({ from }: Dating) => from.kind === 'system';
      const readingsOf = (piece: Dating, of: Dating[]) => of.filter((p) => p.basis === piece.basis && !follows(p));
      // What follows from a reading stands only with it.
      const stands = (set: Dating[]) =>
        set.every((p) => !follows(p) || readingsOf(p, speaking).length === 0 || readingsOf(p, set).length > 0);
      const factsOf = (set: Dating[]) => new Set(set.map(({ basis }) => basis)).size;
      // Said again, a fact weighs no more, neither as a fact nor as a hard one.
      const weight = (set: Dating[]) => {
        const weighing = set.filter((p) => !follows(p));
        return factsOf(weighing) * 100 + factsOf(weighing.filter((p) => p.strength === 'hard'));
      };
      const holding = subsets(speaking).filter((set) => set.length > 0 && holds(set) && stands(set));
      const most = Math.max(0, ...holding.map(weight));
      const heaviest = holding.filter((set) => weight(set) === most);
      const isWhole = (set: Dating[]) =>
        !heaviest.some((other) => other.length > set.length && set.every((p) => other.includes(p)));
      const expected = heaviest.filter(isWhole).map((set) => set.map(({ id }) => id).join());
      const found = reason(evidence).agreeing.map((set) => set.evidence.join());
      expect(found.sort()).toEqual(expected.sort());
    }),
    { seed, numRuns: 300 },
  );
});

test('conflicts are exactly the minimal sets, said once for the same facts', () => {
  fc.assert(
    fc.property(evidenceOf(7), (evidence) => {
      const { conflicts, conflictsComplete, agrees } = reason(evidence);
      expect(conflictsComplete).toBe(true);
      expect(agrees).toBe(evidence.length === 0 || holds(evidence));
      for (const over of ['date', 'place'] as const) {
        const fits = over === 'date' ? overDate : overPlace;
        const minimal = subsets(evidence).filter(
          (set) => set.length > 0 && !fits(set) && set.every((left) => fits(set.filter((piece) => piece !== left))),
        );
        const facts = (set: { basis: string }[]) => [...new Set(set.map(({ basis }) => basis))].sort();
        const hard = (set: Dating[]) => set.every(({ strength }) => strength === 'hard');
        const said = conflicts.filter((conflict) => conflict.over === over);
        const pieces = said.map((conflict) =>
          conflict.evidence.map((id) => evidence.find((piece) => piece.id === id)!),
        );
        const key = (set: Dating[]) => `${hard(set)} ${facts(set).join()}`;
        // Nothing is said that is not a minimal conflict, and no two say the same.
        const known = new Set(minimal.map((set) => set.map(({ id }) => id).join()));
        for (const set of pieces) expect(known).toContain(set.map(({ id }) => id).join());
        expect(new Set(pieces.map(key)).size).toBe(pieces.length);
        // Every minimal conflict is said, or one of no more facts and no less hard is.
        for (const set of minimal) {
          const stands = pieces.some(
            (other) => (hard(other) || !hard(set)) && facts(other).every((basis) => facts(set).includes(basis)),
          );
          expect(stands).toBe(true);
        }
      }
    }),
    { seed, numRuns: 300 },
  );
});

/** Room around spans: they themselves and what lies `years` before and after. */
const roomAround = (spans: Span[], more: number): Span[] =>
  spans.map(({ from, to }) =>
    yearsSpan(
      from === null ? null : Number(from.slice(0, 4)) - more,
      to === null ? null : Number(to.slice(0, 4)) + more,
    ),
  );
const roomyOf = (most: number): fc.Arbitrary<Dating[]> =>
  fc
    .array(fc.tuple(one, fc.integer({ min: 0, max: 2 }), fc.option(fc.integer({ min: 0, max: 2 }))), {
      maxLength: most,
    })
    .map((all) =>
      all.map(([over, reach, more], at) =>
        piece(`e${at}`, {
          ...over,
          reach: roomAround(over.spans, reach),
          hardReach: more === null ? null : roomAround(over.spans, reach + more),
        }),
      ),
    );

test('with room, conflicts are the minimal sets whose reaches do not meet, hard where no hard reach does', () => {
  fc.assert(
    fc.property(roomyOf(6), (evidence) => {
      const { agrees, conflicts } = reason(evidence);
      const said = conflicts.filter(({ over }) => over === 'date');
      const soft = evidence.map((one) => ({ ...one, spans: one.reach ?? [] }));
      const hard = evidence.map((one) => ({ ...one, spans: one.hardReach ?? [] }));
      expect(agrees).toBe(evidence.length === 0 || holds(soft));
      const minimal = (of: Dating[]) =>
        subsets(of)
          .filter((set) => set.length > 0 && !overDate(set))
          .filter((set) => set.every((left) => overDate(set.filter((piece) => piece !== left))))
          .map((set) => ({ ids: set.map(({ id }) => id).join(), bases: set.map(({ basis }) => basis) }));
      const within = (ids: string[], bases: string[]) =>
        ids.every((id) => bases.includes(evidence.find((piece) => piece.id === id)!.basis));
      const [hardSets, softSets] = [minimal(hard), minimal(soft)];
      for (const { evidence: ids, strength } of said)
        expect((strength === 'hard' ? hardSets : softSets).map((set) => set.ids)).toContain(ids.join());
      for (const { bases } of hardSets)
        expect(said.some((one) => one.strength === 'hard' && within(one.evidence, bases))).toBe(true);
      for (const { bases } of softSets) expect(said.some((one) => within(one.evidence, bases))).toBe(true);
    }),
    { seed, numRuns: 300 },
  );
});

test('explanations are exactly the facts without which the rest holds', () => {
  fc.assert(
    fc.property(evidenceOf(7), (evidence) => {
      const speaking = evidence.filter(({ spans, places }) => spans.length + places.length > 0);
      const explained = (set: Dating[]) =>
        set.length === 0 || holds(set)
          ? []
          : [...new Set(set.map(({ basis }) => basis))].filter((basis) => {
              const rest = set.filter((piece) => piece.basis !== basis);
              return rest.length > 0 && holds(rest);
            });
      const all = explained(speaking);
      const hardOnly =
        speaking.length > 0 && !holds(speaking) ? explained(speaking.filter((p) => p.strength === 'hard')) : [];
      const found = reason(evidence).explanations.map(({ basis }) => basis);
      expect(found.sort()).toEqual((all.length > 0 ? all : hardOnly).sort());
    }),
    { seed, numRuns: 300 },
  );
});

test('more evidence never widens the agreeing stretch', () => {
  fc.assert(
    fc.property(evidenceOf(6), one, (evidence, added) => {
      const [before, after] = [stretchOf(evidence), stretchOf([...evidence, piece('added', added)])];
      if (!after) return;
      expect(before).not.toBeNull();
      if (before!.spans.length > 0) expect(setHolds(before!.spans, after.spans)).toBe(true);
      const ground = (codes: string[]) => new Set(codes.flatMap(presentPlaces));
      if (before!.places.length > 0)
        for (const spot of ground(after.places)) expect(ground(before!.places)).toContain(spot);
    }),
    { seed, numRuns: 500 },
  );
});

test('the order of the evidence changes no set', () => {
  fc.assert(
    fc.property(evidenceOf(7), (evidence) => {
      const sets = (of: Dating[]) =>
        reason(of)
          .agreeing.map((set) => [...set.evidence].sort().join())
          .sort();
      expect(sets([...evidence].reverse())).toEqual(sets(evidence));
    }),
    { seed, numRuns: 200 },
  );
});

test('when there are too many conflicts of every size, those of two and three pieces are given and it is said', () => {
  // 28 pieces that forbid two cells each, in pairs that forbid the same two: any choice of one of each pair is minimal.
  const count = 28;
  const every = (1n << BigInt(count)) - 1n;
  const crossed = Array.from({ length: count }, (_, at) => every & ~(1n << BigInt(at)) & ~(1n << BigInt(at ^ 1)));
  const lower = (1n << 14n) - 1n;
  const { sets, complete } = minimalConflicts({ count, allowed: [...crossed, lower, every & ~lower] });
  expect(complete).toBe(false);
  expect(sets[0]).toEqual([28, 29]);
  expect(sets.filter((set) => set.length < 4)).toHaveLength(1);
  expect(sets.length).toBeLessThanOrEqual(2000);
});

test('evidence that cannot all hold never counts as agreeing, even where its conflicts are too many to list', () => {
  // Each of 60 pieces leaves out another six of forty years; no small set covers them all.
  const all = Array.from({ length: 40 }, (_, at) => 1950 + at);
  const evidence = Array.from({ length: 60 }, (_, at) =>
    piece(`e${at}`, {
      spans: all.filter((year) => (year * 7 + at * 11) % 40 > 5).map((year) => yearsSpan(year, year)),
    }),
  );
  const { agrees, conflicts, conflictsComplete, agreeing } = reason(evidence);
  expect(agrees).toBe(false);
  expect(conflictsComplete).toBe(false);
  expect(conflicts.length).toBeGreaterThan(0);
  expect(agreeing.length).toBeGreaterThan(0);
});

test('a page that claims six hundred different years is reasoned over to a stated limit', () => {
  const evidence = Array.from({ length: 600 }, (_, at) =>
    piece(`e${at}`, { spans: [yearsSpan(1400 + at, 1400 + at)] }),
  );
  const { agrees, conflicts, explanations } = reason(evidence);
  expect(agrees).toBe(false);
  expect(conflicts).toHaveLength(2000);
  expect(explanations).toEqual([]);
});
