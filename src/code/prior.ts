import { bare } from '../stamp';
import type { BookSystem } from './book';
import type { Meaning } from './interpret';
import type { LaidLayout } from './layout';
import { leftOut } from './search';
import { yearValues } from './year';

/**
 * Shares of what a line taken for a code may be: a sound code of a system on file; a text with a system's shape and
 * an impossible value (a slip of the stamp, or a copy); any other text. Our own assumptions: they only decide when
 * the characters are doubtful, and they are set so that an impossible value that is clearly legible stays impossible.
 * `legible` is the least probability of a reading for each of its characters (their geometric mean): where fewer than
 * one in two was seen, that no other code would do makes a guess the best one, but nothing read.
 */
export const shares = { sound: 0.8, misfit: 0.12, free: 0.08, legible: 0.5 };

/** What someone typed or quoted as a code is hardly ever other text. */
export const typedShares: typeof shares = { sound: 0.85, misfit: 0.149, free: 0.001, legible: 0 };

/** Share of sound codes dated outside their system's period, and of codes of a plant outside its own. */
const outsideShare = 0.05;
const idlePlantShare = 0.05;

/**
 * Expected share of this text among all texts that carry the layout, one over the number of such codes, as a multiple of
 * what a recogniser expects of any text of its length.
 */
export function expectedShare(
  system: BookSystem,
  laid: LaidLayout,
  path: string,
  meaning: Meaning,
  latestYear?: number,
): number {
  let count = 1;
  for (const [index, cell] of laid.cells.entries()) {
    if (cell.optional) count *= 2;
    if (path[index] === leftOut || cell.group || 'check' in laid.slots[cell.slot]!.slot) continue;
    count *= cell.tight.length;
  }
  for (const group of laid.groups.values()) {
    if (group.name === 'year') {
      count *= meaning.inPeriod ? yearValues(group, system.used, latestYear) : 10 ** group.width / outsideShare;
    } else count *= group.values?.length ?? 26 ** group.width;
  }
  return (meaning.plantInUse ? 1 : idlePlantShare) / count / chanceOf(path);
}

/**
 * How many times rarer a text is, to a recogniser that knows no code system, for each of its letters and digits. Its
 * probabilities hold this already: it weighed a character that is there against one that is not. Every share is told
 * against it, or a code would be taken for a shorter one that fits another system.
 */
const rarer = 10;

/** What a recogniser expects of a text of so many letters and digits before it looks. */
const chanceOf = (text: string): number => rarer ** -bare(text).length;

/** Share of one text among all that have the shape of these cells, as a multiple of what a recogniser expects. */
export const wideShare = (cells: readonly { wide: string }[]): number =>
  cells.reduce((share, { wide }) => share / wide.length / chanceOf(wide[0] ?? ''), 1);

/** Share of a text among all that are no code on file, as such a multiple: digits alone are commoner than chance. */
export const shapeShare = (text: string): number =>
  text === '' ? 1 : (36 ** -text.length + (/^[0-9]+$/.test(text) ? 0.3 * 10 ** -text.length : 0)) / chanceOf(text);
