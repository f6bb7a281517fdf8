import type { GreyImage } from '../photo';
import type { PrintLine, PrintReader } from './engines';
import { startedPrint } from './print/when-needed';
import { bestView, type PrintView, readView, trustedOf } from './read-printed';
import { type Spelt, speltBy } from './spelt';
import type { Lattice, StampLine } from './types';

/**
 * How many times less likely anything else is once a second reader, which works in another way, reads the same. Where both
 * read the same of 185 real crops, neither was wrong; own measurement, of which this is a cautious part.
 */
const timesRarer = 20;
/** A reading that is less likely than this is a guess that a second one may share. */
const leastAgreed = 0.4;
/** Two readers may agree by chance on less. */
const leastCharacters = 4;
/**
 * From so many characters on, what the second reader does not trust counts as well: its trust is in words, a code is none,
 * and two that work in different ways seldom guess six characters alike.
 */
const longEnough = 6;
/** The second reader sees a line once more with less ground, and smaller: what it reads of small characters differs from view to view. */
const views: readonly PrintView[] = [
  bestView,
  { beside: 0.2, above: 0.1, height: 56 },
  { beside: 0.4, above: 0.25, height: 36 },
];

/** Whether a reading is likely enough, and long enough, to ask a second reader. */
const mayBeAgreed = ({ text, probability }: Spelt['free']): boolean =>
  probability >= leastAgreed && joined(text).length >= leastCharacters;

/** Likely codes that the print engine reads as well are surely read. */
export async function askPrint(
  codes: readonly StampLine[],
  lines: StampLine[],
  grey: GreyImage,
  print: PrintReader | null,
): Promise<void> {
  for (const line of codes.filter(({ free, mayGoOn, otherWay }) => mayBeAgreed(free) && !mayGoOn && !otherWay)) {
    const reader = await startedPrint(print);
    if (reader === null) return;
    for (const view of views) {
      const both = agreedBy(line, await readView(grey, line.quad, reader, view));
      if (both === null) continue;
      lines[lines.indexOf(line)] = { ...line, lattice: both.lattice, free: both.free };
      break;
    }
  }
}

/** What a line spells once one view of the second reader says the same, or null. */
function agreedBy({ lattice, free }: StampLine, printed: readonly PrintLine[]): Spelt | null {
  const trusted = agreed(lattice, free, trustedOf(printed));
  if (trusted !== null || joined(free.text).length < longEnough) return trusted;
  return agreed(lattice, free, printed.flatMap(({ words }) => words.map(({ text }) => text)).join(' '));
}

/** A text without what may part its characters. Any other sign stays: a bar is an I or a 1 that was not told. */
const joined = (text: string): string => text.toUpperCase().replace(/[-./\s]/g, '');

/** What a line spells once a second reader read the same; null where it read anything else. */
export function agreed(lattice: Lattice, { text }: Spelt['free'], other: string): Spelt | null {
  if (joined(text) !== joined(other)) return null;
  const path = alignment(lattice, text);
  if (path === null) return null;
  const spelt = speltBy({ steps: lattice.steps.map((step, at) => leaning(step, path[at]!)) });
  return spelt.free.text === text ? spelt : null;
}

/** A step in which all but one character is so many times rarer; it keeps its sum. */
function leaning(step: Lattice['steps'][number], to: string): Lattice['steps'][number] {
  const rest = Object.entries(step).filter(([character]) => character !== to);
  const given = rest.reduce((sum, [, share]) => sum + share * (1 - 1 / timesRarer), 0);
  return {
    ...Object.fromEntries(rest.map(([character, share]) => [character, share / timesRarer])),
    [to]: (step[to] ?? 0) + given,
  };
}

/**
 * The character of each step, or '' for none, along the likeliest way to spell a text; null where there is none. Source: the
 * best path through a CTC lattice held to its labels (Viterbi), A. Graves as in `freeTexts`.
 */
function alignment({ steps }: Lattice, text: string): string[] | null {
  // Between, before and after the characters there may be none.
  const states = ['', ...[...text].flatMap((character) => [character, ''])];
  let scores = states.map((_, at) => (at < 2 ? 0 : Number.NEGATIVE_INFINITY));
  const from: number[][] = [];
  for (const [index, step] of steps.entries()) {
    const ways: number[] = [];
    scores = states.map((character, at) => {
      // From itself, from the state before, and past a gap that two different characters need not have.
      const before = [at];
      if (index > 0 && at > 0) before.push(at - 1);
      if (index > 0 && at > 1 && character !== '' && character !== states[at - 2]) before.push(at - 2);
      const best = before.reduce((one, other) => (scores[other]! > scores[one]! ? other : one));
      ways.push(best);
      return scores[best]! + Math.log(Math.max(1e-12, step[character] ?? 0));
    });
    from.push(ways);
  }
  let at = states.length - 1;
  if (at > 0 && scores[at - 1]! > scores[at]!) at--;
  if (!Number.isFinite(scores[at]!)) return null;
  const path: string[] = [];
  for (let index = steps.length - 1; index >= 0; index--) {
    path.unshift(states[at]!);
    at = from[index]![at]!;
  }
  return path;
}
