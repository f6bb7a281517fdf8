import { looksLikeCode } from './looks-like-code';
import type { Spelt } from './spelt';

/**
 * A gap in which nothing was read, in the line's usual distance from one character's middle to the next, from which on
 * what stands on its two sides is no one text: a word beside a date, or a character between them that was not seen. Own
 * measurement: of 404 rendered codes the widest is 1.9, of a real label whose word was read along with its date 4.5.
 */
const widest = 2.5;
/** A step in which a separator is this likely is none in which nothing was read. */
const leastSeparator = 0.3;

/** Whether a line that spells a code has such a gap; a separator that is read there explains it. */
export function hasWideGap({ lattice: { steps }, placed, free }: Spelt): boolean {
  if (placed.length < 3 || !looksLikeCode(free.text)) return false;
  const gaps = placed.slice(1).map(({ middle, character, steps: own }, at) => {
    const before = placed[at]!;
    const between = steps.slice(before.steps.at(-1)! + 1, own[0]!);
    const isSeparator = isSign(before.character) || isSign(character) || between.some((step) => hasSign(step));
    return { wide: middle - before.middle, isSeparator };
  });
  const usual = gaps.map(({ wide }) => wide).sort((a, b) => a - b)[gaps.length >> 1]!;
  return gaps.some(({ wide, isSeparator }) => !isSeparator && wide > widest * usual);
}

const isSign = (character: string): boolean => /^[-./ ]$/.test(character);
const hasSign = (step: Record<string, number>): boolean =>
  Object.entries(step).some(([character, share]) => isSign(character) && share >= leastSeparator);
