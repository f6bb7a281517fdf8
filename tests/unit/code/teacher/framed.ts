import type { KnownCode } from '../../../../src/code';
import { build } from '../../../../src/code/teacher/candidates';
import { type Dated, datedWritings } from '../../../../src/code/teacher/dated';
import { type Fact, readFacts } from '../../../../src/code/teacher/facts';
import { type Frame, framesOf } from '../../../../src/code/teacher/frame';

/** Known codes as "code = reads", parted by semicolons or lines. */
export const known = (text: string): KnownCode[] =>
  text
    .split(/[;\n]/)
    .filter((row) => row.trim() !== '')
    .map((row) => {
      const [code = '', reads = ''] = row.split(' = ');
      return { code: code.trim(), reads: reads.trim() };
    });

export const factsOf = (text: string): Fact[] => readFacts(known(text)).facts;

/** All of the codes side by side: of one length, or with a tail (or a head) of changing length. */
export function frameOf(text: string, changing: Frame['changing'] = 'tail'): Frame {
  const facts = factsOf(text);
  const frames = framesOf(facts, facts.length);
  return frames.find((frame) => frame.changing === changing) ?? frames[0]!;
}

/** All that a search hands on at its end, and how often it gave way before. */
export function ended<R>(search: Generator<unknown, R>): { value: R; turns: number } {
  for (let turns = 0; ; turns += 1) {
    const step = search.next();
    if (step.done) return { value: step.value, turns };
  }
}

/** Every way to write the dates of these codes that at least so many of them have. */
export const datedIn = (facts: readonly Fact[], least: number, work = { steps: 0, tried: 0 }): Dated[] =>
  framesOf(facts, least).flatMap((frame) => ended(datedWritings(frame, facts.length, least, work)).value);

/** The layout built round a way to write the date, of the codes that agree with it. */
export const builtRound = (dated: Dated) =>
  build(
    dated,
    dated.frame.facts.filter(({ order }) => dated.bits[order] !== null),
  );
