import { bare, shapesOf } from '../stamp';
import { acceptanceLevel, type Settled } from './settle';
import type { LeftOpen, Nearest } from './types';

export type Weighted = { text: string; probability: number };

/**
 * Letters that a stamp's digit may be, and the digit: more than are of one shape, for a narrow face, wear or a shadow
 * leaves little of what tells a D or a Q from a 0, and an L from a 1. Common practice, no source.
 */
const nearDigits: readonly (readonly [letters: RegExp, digit: string])[] = [
  [/[ODQ]/g, '0'],
  [/[IL]/g, '1'],
];

/** The letters and digits of a text with each twin as its digit: equal where a stamp may leave open which it is. */
const twinsOf = (text: string): string =>
  nearDigits.reduce((twins, [letters, digit]) => twins.replace(letters, digit), bare(text));

/** The texts of one line, likeliest first: by the characters alone, and weighed by what codes look like. */
export interface SeenTexts {
  seen: readonly Weighted[];
  weighed: readonly Weighted[];
}

/**
 * How many times likelier the characters alone may make another text than the one that they are taken for because codes
 * run so, and because a family's codes look so. Own measurement: a mark in the grain that was read as a further letter, 5
 * times likelier, was rightly left out by a family; a G was wrongly taken for a 0 that was 14 times less likely.
 */
const overRuns = 2;
const overFamily = 6;

/**
 * Whether a text that no system explains counts as read all the same (an impossible month is a finding). Not where it
 * differs from a sound code of a maker on file only in characters that many faces draw alike: then the faces may be all
 * that differs. A family is no such code: nearly every number with a 0 or 1 in front has a twin in one.
 */
export function isClear({ seen, weighed }: SeenTexts, nearest: readonly Nearest[]): boolean {
  const [best] = weighed;
  if (best === undefined || !isSurelySeen(weighed) || isUnlikely(twinsOf(best.text), seen, overRuns)) return false;
  const shapes = shapesOf(best.text);
  return !nearest.some(
    ({ how, system, text }) => how !== 'as-written' && system.maker !== null && shapesOf(text) === shapes,
  );
}

/** Whether the likeliest text, with its twins, is sure by its characters alone. */
function isSurelySeen(texts: readonly Weighted[]): boolean {
  const [best] = texts;
  if (best === undefined || best.text === '') return false;
  const twins = twinsOf(best.text);
  const likely = texts.filter(({ text }) => twinsOf(text) === twins);
  return likely.reduce((sum, { probability }) => sum + probability, 0) >= acceptanceLevel;
}

/**
 * A family is a shape that somebody's codes have had. It settles what is doubtful, and never takes a text for another of
 * its own shape: neither one that is surely seen, with a character fewer or more, nor one that is clearly likelier by the
 * characters alone. Such readings stand under `nearest`.
 */
export function withoutOverruling({ seen, weighed }: SeenTexts, outcome: Settled): Settled {
  const [best, first] = [weighed[0], outcome.readings[0]];
  if (best === undefined || first === undefined || first.system.maker !== null) return outcome;
  const told = twinsOf(first.text);
  const isOther = told !== twinsOf(best.text) && isSurelySeen(weighed);
  if (!isOther && !isUnlikely(told, seen, overFamily)) return outcome;
  const near = outcome.readings.map(
    (reading): Nearest => ({
      text: reading.text,
      system: reading.system,
      how: 'likely',
      likelihood: reading.probability,
      reading,
    }),
  );
  return { ...outcome, readings: [], nearest: [...near, ...outcome.nearest] };
}

/** Whether a text, given with its twins as one, is clearly less likely than another of those that were seen. */
function isUnlikely(twins: string, seen: readonly Weighted[], times: number): boolean {
  const likely = sumsBy(seen, twinsOf);
  return Math.max(...likely.values()) > times * (likely.get(twins) ?? 0);
}

function sumsBy(texts: readonly Weighted[], as: (text: string) => string): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { text, probability } of texts) sums.set(as(text), (sums.get(as(text)) ?? 0) + probability);
  return sums;
}

/** A twin counts as likely too from this share on, and from this one by the characters alone: codes' looks make none. */
const leastAlike = 0.1;
const leastSeen = 0.05;

/** Characters of the best text that its likely twins have otherwise: O for 0, I for 1. Signs between them are none. */
export function alikeCharacters({ seen, weighed }: SeenTexts): LeftOpen[] {
  const [best] = weighed;
  if (best === undefined) return [];
  const [shapes, alone] = [twinsOf(best.text), sumsBy(seen, bare)];
  const twins = [...sumsBy(weighed, bare)].filter(
    ([text, probability]) =>
      probability >= leastAlike && (alone.get(text) ?? 0) >= leastSeen && twinsOf(text) === shapes,
  );
  const places = [...best.text].flatMap((character, place) => (bare(character) === '' ? [] : [place]));
  return places.flatMap((place, at): LeftOpen[] => {
    const may = new Set([best.text[place]!, ...twins.map(([text]) => text[at]!)]);
    return may.size > 1 ? [{ kind: 'alike', place, may: [...may] }] : [];
  });
}
