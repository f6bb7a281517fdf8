import { placedCharacters } from './align';
import { looksLikeCode } from './looks-like-code';
import type { Spelt } from './spelt';
import type { Lattice } from './types';

/** What stands in a lattice for any mark that is no character of ours: $ : % + and the like, arrows, emblems. */
export const sign = '*';

/**
 * The lattice with nothing where signs stand before its first character or behind its last: what stands around a code is
 * no part of it. Signs between characters stay.
 */
export function withoutOuterSigns(lattice: Lattice): Lattice {
  if (!lattice.steps.some((step) => step[sign] !== undefined)) return lattice;
  const own = placedCharacters(lattice).filter(({ character }) => character !== sign);
  const first = own[0]?.steps.at(-1) ?? lattice.steps.length;
  const last = own.at(-1)?.steps[0] ?? 0;
  const steps = lattice.steps.map((step, at) => {
    if (at > first && at < last) return step;
    const { [sign]: share = 0, ...rest } = step;
    return share === 0 ? step : { ...rest, '': (rest[''] ?? 0) + share };
  });
  return { steps };
}

/** A text as it is told: a sign between its characters is a gap, for what it was is not known. */
export const withoutSigns = (text: string): string =>
  text
    .split(sign)
    .map((part) => part.trim())
    .filter((part) => part !== '')
    .join(' ');

/** From this probability on a sign may stand among a line's characters: a colon is a point to a recogniser that is not sure. */
const leastSign = 0.2;

/** Whether signs part a line that spells a code, or likely do: what stands on both sides of one need not be one text. */
export function isPartedBySigns({ lattice, placed, free }: Spelt): boolean {
  if (!looksLikeCode(free.text)) return false;
  const own = placed.filter(({ character }) => character !== sign);
  const among = lattice.steps.slice(own[0]?.steps.at(-1), own.at(-1)?.steps[0]);
  return among.reduce((none, step) => none * (1 - (step[sign] ?? 0)), 1) <= 1 - leastSign;
}
