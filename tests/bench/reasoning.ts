import { type Evidence, reason } from '../../src/evidence';
import { type Span, yearsSpan } from '../../src/span';

/** Numbers from 0 to 1 that are the same in every run (Park and Miller's generator, CACM 31, 1988). */
function numbersFrom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 16_807) % 2_147_483_647;
    return state / 2_147_483_647;
  };
}

const places = ['FR', 'IT', 'ES', 'CSHH', 'CZ', 'DE', 'DDDE', 'YUCS'];

/** Pieces as a large case has them: half with one span, half with up to `alternatives` spans, a third with places. */
function caseOf(count: number, alternatives: number, spread: number, seed: number): Evidence[] {
  const next = numbersFrom(seed);
  const span = (): Span => {
    const first = 1960 + Math.floor(next() * spread);
    return yearsSpan(first, first + Math.floor(next() * 30));
  };
  return Array.from({ length: count }, (_, at) => ({
    id: `e${at}`,
    about: 'date-and-place',
    from: { kind: 'claim', id: `c${at}` },
    basis: `f${Math.floor(at / 2)}`,
    spans: Array.from({ length: at % 2 === 0 ? 1 : 1 + Math.floor(next() * alternatives) }, span),
    places: at % 3 === 0 ? [places[Math.floor(next() * places.length)]!] : [],
    strength: next() < 0.6 ? 'hard' : 'soft',
    says: { kind: 'mark', inText: true, words: `fact ${at}`, tells: { kind: 'convention-mark' } },
    source: { kind: 'practice', text: 'invented for the bench' },
  }));
}

/** Milliseconds of one call, the median of `runs` after two that do not count. */
function medianMs(work: () => void, runs = 15): number {
  const times = Array.from({ length: runs + 2 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  }).slice(2);
  return times.sort((a, b) => a - b)[Math.floor(runs / 2)]!;
}

/** Reasoning over 10, 30 and 60 pieces: agreeing, mixed and hostile. Prints milliseconds, and ratios to 10 pieces. */
export async function bench(): Promise<void> {
  const shapes = [
    { name: 'nearly agreeing', alternatives: 1, spread: 8 },
    { name: 'mixed, up to 3 readings', alternatives: 3, spread: 30 },
    { name: 'hostile, up to 12 readings', alternatives: 12, spread: 60 },
  ];
  const rows = shapes.map(({ name, alternatives, spread }) => {
    const ms = [10, 30, 60].map((count) => {
      const evidence = caseOf(count, alternatives, spread, 7);
      return medianMs(() => reason(evidence));
    });
    const whole = reason(caseOf(60, alternatives, spread, 7));
    return {
      evidence: name,
      '10 pieces, ms': ms[0]!.toFixed(2),
      '30 pieces, ms': ms[1]!.toFixed(2),
      '60 pieces, ms': ms[2]!.toFixed(2),
      '60 to 10': (ms[2]! / ms[0]!).toFixed(1),
      conflicts: whole.conflicts.length,
      complete: whole.conflictsComplete,
    };
  });
  console.table(rows);
}
