import type { KnownCode } from '../../../../src/code';
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
