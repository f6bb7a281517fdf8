/** What stands between two things that may belong together, in so many steps: each grows by one character or one word. */
export const gaps: Record<string, (steps: number) => string> = {
  letters: (steps) => (steps === 0 ? ' ' : ` ${'v'.repeat(steps)} `),
  spaces: (steps) => ' '.repeat(steps),
  words: (steps) => ` ${'vava '.repeat(steps)}`,
  /** As many characters as steps, in words. */
  'text of words': (steps) => ` ${'vava '.repeat(Math.ceil(steps / 5)).slice(0, steps)} `,
  signs: (steps) => '-'.repeat(steps),
};

/**
 * Where an answer turns: the runs of equal answers over growing steps, one line each ("0–23 KV0915"). A limit that moves
 * by one moves a line.
 */
export function turnsOf(last: number, answer: (step: number) => string, first = 0, by = 1): string[] {
  const runs: { from: number; to: number; is: string }[] = [];
  for (let step = first; step <= last; step += by) {
    const is = answer(step);
    const run = runs.at(-1);
    if (run?.is === is) run.to = step;
    else runs.push({ from: step, to: step, is });
  }
  return runs.map(({ from, to, is }) => `${from === to ? from : `${from}–${to}`} ${is}`);
}

/** Where an answer turns as the gap grows, for each filler; fillers that turn alike are told together. */
export function gapTurnsOf(last: number, answer: (gap: string) => string): string[] {
  const alike = new Map<string, string[]>();
  for (const [filler, gap] of Object.entries(gaps)) {
    const turns = turnsOf(last, (steps) => answer(gap(steps))).join('\n    ');
    alike.set(turns, [...(alike.get(turns) ?? []), filler]);
  }
  return [...alike].map(([turns, fillers]) => `  ${fillers.join(', ')}\n    ${turns}`);
}

/**
 * The same over a long way: looked at every so many steps, and between two unlike answers at each step that halves the
 * way to the turn. An answer that holds for less than `by` may be passed over, the same in every run.
 */
export function farTurnsOf(first: number, last: number, by: number, answer: (step: number) => string): string[] {
  const turns: string[] = [];
  let from = first;
  let is = answer(first);
  const turn = (at: number, next: string) => {
    turns.push(`${from}–${at - 1} ${is}`);
    [from, is] = [at, next];
  };
  const between = (low: number, atLow: string, high: number, atHigh: string) => {
    if (atLow === atHigh) return;
    if (high - low === 1) {
      turn(high, atHigh);
      return;
    }
    const middle = Math.floor((low + high) / 2);
    const atMiddle = answer(middle);
    between(low, atLow, middle, atMiddle);
    between(middle, atMiddle, high, atHigh);
  };
  for (let step = first; step < last; ) {
    const next = Math.min(last, step + by);
    between(step, is, next, answer(next));
    step = next;
  }
  return [...turns, `${from}–${last} ${is}`];
}
