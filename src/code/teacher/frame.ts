import type { Fact } from './facts';

/**
 * Codes of one length, or codes whose first or last part is a number of changing length: the fixed places are
 * `core`, the changing digits `rest`.
 */
export interface Frame {
  facts: FramedFact[];
  /** Places of every core. */
  length: number;
  changing: 'nothing' | 'tail' | 'head';
  /** Fewest and most digits of the changing part. */
  rest: { min: number; max: number };
  /** Facts left out because they have another length, by index. */
  leftOut: number[];
}

export interface FramedFact extends Fact {
  core: string;
  rest: string;
}

const digitsOnly = (text: string) => /^[0-9]*$/.test(text);

/** Ways to lay the codes side by side that leave at most `wrong` of them out. */
export function framesOf(facts: readonly Fact[], wrong: number): Frame[] {
  const frames: Frame[] = [];
  const byLength = new Map<number, Fact[]>();
  for (const fact of facts) byLength.set(fact.bare.length, [...(byLength.get(fact.bare.length) ?? []), fact]);
  for (const [length, same] of byLength) {
    if (facts.length - same.length > wrong) continue;
    frames.push({
      facts: same.map((fact) => ({ ...fact, core: fact.bare, rest: '' })),
      length,
      changing: 'nothing',
      rest: { min: 0, max: 0 },
      leftOut: facts.filter((fact) => !same.includes(fact)).map(({ index }) => index),
    });
  }
  if (byLength.size > 1) {
    for (const changing of ['tail', 'head'] as const) {
      const frame = changingFrame(facts, changing);
      if (frame.length >= 1 && frame.leftOut.length <= wrong) frames.push(frame);
    }
  }
  return frames;
}

/** The core is as long as the shortest code; what is beyond it has to be digits. */
function changingFrame(facts: readonly Fact[], changing: 'tail' | 'head'): Frame {
  const length = Math.min(...facts.map(({ bare }) => bare.length));
  const framed = facts.map((fact): FramedFact => {
    const cut = fact.bare.length - length;
    return changing === 'tail'
      ? { ...fact, core: fact.bare.slice(0, length), rest: fact.bare.slice(length) }
      : { ...fact, core: fact.bare.slice(cut), rest: fact.bare.slice(0, cut) };
  });
  const fitting = framed.filter(({ rest }) => digitsOnly(rest) && rest.length <= 10);
  const widths = fitting.map(({ rest }) => rest.length);
  return {
    facts: fitting,
    length,
    changing,
    rest: { min: Math.min(...widths), max: Math.max(...widths) },
    leftOut: framed.filter((fact) => !fitting.includes(fact)).map(({ index }) => index),
  };
}
