import type { Quad } from '../../types';
import { backOf, project, projectionOnto } from '../../warp';
import type { HandMark, HandMeasure } from '../hand/hand-types';
import { mean } from '../mean';
import { lettersOf } from './letters';

/** A measured line: each of its different characters, and how wide it is, all in one unit that only this line has. */
export type LetterWidths = ReadonlyMap<string, number>;

/** Fewer are no reference: what two lines of one hand differ by is not known then. */
export const leastReferences = 3;
/** Lines that share fewer different characters are not compared. */
export const leastShared = 3;

/** How wide each character of a mark is, along its line; null where they were not told apart. */
export function letterWidths({ points, name }: HandMark, measured: readonly HandMeasure[]): LetterWidths | null {
  const boxes = measured.find(({ what, value }) => what === 'letters' && value !== null)?.where?.points ?? [];
  const letters = lettersOf(name);
  const onto = points.length === 4 ? projectionOnto(points as unknown as Quad, 1, 1) : null;
  const back = onto && backOf(onto);
  if (back === null || letters.length === 0 || boxes.length !== 2 * letters.length) return null;
  const along = boxes.map(({ x, y }) => project(back, x, y).x);
  const widths = new Map<string, number[]>();
  for (const [at, letter] of letters.entries())
    widths.set(letter, [...(widths.get(letter) ?? []), along[2 * at + 1]! - along[2 * at]!]);
  return new Map([...widths].map(([letter, each]) => [letter, mean(each)]));
}

/** One character that two or more lines share: its width here and in the others, in shares of what the shared ones are wide on the average. */
export interface SharedLetter {
  letter: string;
  own: number;
  others: number[];
}

export interface LettersCompared {
  letters: SharedLetter[];
  /** Lines that share enough with this one to be compared. */
  references: number;
  /**
   * Root mean square of the differences, from this line to each reference and among these; null with fewer than three
   * references. A camera held aslant narrows all characters of a line alike, and changes none of it.
   */
  apart: { own: readonly number[]; among: readonly number[] } | null;
}

/** A line held against others, character by character. It judges nothing: what is far off is for the eye to see. */
export function lettersCompared(own: LetterWidths, others: readonly LetterWidths[]): LettersCompared {
  const references = others.filter((other) => sharedBy(own, other).length >= leastShared);
  const letters = [...own.keys()].flatMap((letter): SharedLetter[] => {
    const having = references.filter((other) => other.has(letter));
    if (having.length === 0) return [];
    const shares = having.map((other) => sharesOf(own, other));
    return [
      {
        letter,
        own: mean(shares.map((share) => share.get(letter)![0])),
        others: shares.map((share) => share.get(letter)![1]),
      },
    ];
  });
  const enough = references.length >= leastReferences;
  const among = references.flatMap((one, at) =>
    references
      .slice(at + 1)
      .flatMap((other) => (sharedBy(one, other).length >= leastShared ? [apart(one, other)] : [])),
  );
  return {
    letters,
    references: references.length,
    apart: enough && among.length > 0 ? { own: references.map((other) => apart(own, other)), among } : null,
  };
}

const sharedBy = (one: LetterWidths, other: LetterWidths): string[] => [...one.keys()].filter((key) => other.has(key));

/** Widths of shared characters in two lines, each in shares of its line's mean over these. */
function sharesOf(one: LetterWidths, other: LetterWidths): Map<string, [number, number]> {
  const shared = sharedBy(one, other);
  const [own, their] = [one, other].map((line) => mean(shared.map((letter) => line.get(letter)!))) as [number, number];
  return new Map(shared.map((letter) => [letter, [one.get(letter)! / own, other.get(letter)! / their]]));
}

const apart = (one: LetterWidths, other: LetterWidths): number =>
  Math.sqrt(mean([...sharesOf(one, other).values()].map(([own, their]) => (own - their) ** 2)));
