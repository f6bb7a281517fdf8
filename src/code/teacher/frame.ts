import type { Fact } from './facts';

/**
 * Codes of one length, or codes whose first or last part is a number of changing length: the fixed places are
 * `core`, the changing digits `rest`. A list may hold codes that a frame leaves out.
 */
export interface Frame {
  facts: FramedFact[];
  /** Places of every core. */
  length: number;
  changing: 'nothing' | 'tail' | 'head';
  /** Fewest and most digits of the changing part. */
  rest: { min: number; max: number };
}

export interface FramedFact extends Fact {
  core: string;
  rest: string;
}

const digitsOnly = (text: string) => /^[0-9]*$/.test(text);
/** With more lengths than this only single ones and all together are laid side by side. */
const mostLengths = 6;

/** Ways to lay at least `least` of the codes side by side: each length alone, and neighbouring lengths together. */
export function framesOf(facts: readonly Fact[], least: number): Frame[] {
  const lengths = [...new Set(facts.map(({ bare }) => bare.length))].sort((a, b) => a - b);
  const frames: Frame[] = [];
  for (const [from, shortest] of lengths.entries()) {
    for (const [to, longest] of lengths.entries()) {
      if (to < from) continue;
      const all = from === 0 && to === lengths.length - 1;
      if (from !== to && !all && lengths.length > mostLengths) continue;
      const group = facts.filter(({ bare }) => bare.length >= shortest && bare.length <= longest);
      if (from === to) frames.push(fixedFrame(group, shortest));
      else frames.push(changingFrame(group, shortest, 'tail'), changingFrame(group, shortest, 'head'));
    }
  }
  return frames.filter((frame) => frame.facts.length >= least && frame.rest.min <= frame.rest.max);
}

const fixedFrame = (group: readonly Fact[], length: number): Frame => ({
  facts: group.map((fact) => ({ ...fact, core: fact.bare, rest: '' })),
  length,
  changing: 'nothing',
  rest: { min: 0, max: 0 },
});

/** The core is as long as the shortest code; what is beyond it has to be digits. */
function changingFrame(group: readonly Fact[], length: number, changing: 'tail' | 'head'): Frame {
  const framed = group.map((fact): FramedFact => {
    const cut = fact.bare.length - length;
    return changing === 'tail'
      ? { ...fact, core: fact.bare.slice(0, length), rest: fact.bare.slice(length) }
      : { ...fact, core: fact.bare.slice(cut), rest: fact.bare.slice(0, cut) };
  });
  const facts = framed.filter(({ rest }) => digitsOnly(rest) && rest.length <= 10);
  const widths = facts.map(({ rest }) => rest.length);
  return { facts, length, changing, rest: { min: Math.min(...widths), max: Math.max(...widths) } };
}
