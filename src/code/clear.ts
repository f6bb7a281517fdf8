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

/**
 * Whether a text that no system explains counts as read all the same (an impossible month is a finding). Not where it
 * differs from a sound code of a maker on file only in characters that many faces draw alike: then the faces may be all
 * that differs. A family is no such code: nearly every number with a 0 or 1 in front has a twin in one.
 */
export function isClear(texts: readonly Weighted[], nearest: readonly Nearest[]): boolean {
  const [best] = texts;
  if (best === undefined || !isSurelySeen(texts)) return false;
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
 * A family is a shape that somebody's codes have had. It settles what is doubtful, and never takes a text that is surely
 * seen for another of its own shape, with a character fewer or more: such readings stand under `nearest`.
 */
export function withoutOverruling(texts: readonly Weighted[], outcome: Settled): Settled {
  const [best, first] = [texts[0], outcome.readings[0]];
  if (best === undefined || first === undefined || first.system.maker !== null) return outcome;
  if (twinsOf(first.text) === twinsOf(best.text) || !isSurelySeen(texts)) return outcome;
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

/** A twin counts as likely too from this share on. */
const leastAlike = 0.1;

/** Characters of the best text that its likely twins have otherwise: O for 0, I for 1. */
export function alikeCharacters([best, ...others]: readonly Weighted[]): LeftOpen[] {
  if (best === undefined) return [];
  const [written, shapes] = [[...best.text], twinsOf(best.text)];
  const twins = others.filter(
    ({ text, probability }) => probability >= leastAlike && text.length === written.length && twinsOf(text) === shapes,
  );
  return written.flatMap((character, place): LeftOpen[] => {
    const may = new Set([character, ...twins.map(({ text }) => text[place]!)]);
    return may.size > 1 ? [{ kind: 'alike', place, may: [...may] }] : [];
  });
}
