import type { Lattice } from '../stamp/types';

/**
 * How often a person who copies a stamp writes the first character for the second, and the other way round.
 * These figures are our own assumption, chosen by the likeness of the shapes and not measured; only their order
 * matters for the results. Pairs of digits are so rarely mistaken by eye that they serve for `nearest` alone.
 */
const mistakenLetters: Record<string, number> = {
  O0: 0.12,
  I1: 0.12,
  L1: 0.06,
  S5: 0.05,
  B8: 0.05,
  Z2: 0.05,
  G6: 0.04,
  D0: 0.03,
  Q0: 0.03,
  OQ: 0.02,
  DO: 0.02,
  IL: 0.02,
  T7: 0.01,
  A4: 0.01,
  UV: 0.01,
};

const mistakenDigits: Record<string, number> = {
  '38': 0.02,
  '17': 0.02,
  '56': 0.02,
  '68': 0.02,
  '08': 0.02,
  '06': 0.01,
  '09': 0.01,
  '49': 0.01,
  '35': 0.01,
  '27': 0.01,
  '39': 0.01,
};

type Likeness = Map<string, [other: string, share: number][]>;

function bothWays(pairs: Record<string, number>): Likeness {
  const likeness: Likeness = new Map();
  for (const [[a, b], share] of Object.entries(pairs).map(([pair, share]) => [[...pair], share] as const)) {
    for (const [one, other] of [
      [a!, b!],
      [b!, a!],
    ] as const) {
      likeness.set(one, [...(likeness.get(one) ?? []), [other, share]]);
    }
  }
  return likeness;
}

const typedLikeness = bothWays(mistakenLetters);
const anyLikeness = bothWays({ ...mistakenLetters, ...mistakenDigits });

/** Share of cases in which `typed` stands for `meant`; a small constant for characters that look nothing alike. */
export const unlikeShare = 0.002;
export const mistakeShare = (typed: string, meant: string): number =>
  anyLikeness.get(typed)?.find(([other]) => other === meant)?.[1] ?? unlikeShare;

const marks = /^[\p{P}\p{Z}\p{S}]$/u;
const dashes = /[‐-―−]/g;

/** Signs as they are compared: capitals, one kind of dash, full-width forms made plain. */
export const plainSigns = (text: string): string => text.normalize('NFKC').replace(dashes, '-').toUpperCase();

/** A typed code as it is compared, with one space for many. */
export const tidyCode = (code: string): string => plainSigns(code).replace(/\s+/g, ' ').trim();

/**
 * Typed text as a lattice, so that it takes the same way as a stamp. Separators may have been put in by the writer,
 * so they may be passed over.
 */
export function typedLattice(code: string): Lattice {
  const steps = [...tidyCode(code)].map((character) => {
    if (marks.test(character)) return { '': character === ' ' ? 0.6 : 0.3, [character]: character === ' ' ? 0.4 : 0.7 };
    const alike = character.length === 1 ? (typedLikeness.get(character) ?? []) : [];
    const rest = alike.reduce((sum, [, share]) => sum + share, 0);
    return { [character]: 1 - rest, ...Object.fromEntries(alike) };
  });
  return { steps: steps.flatMap((step, place) => (place === 0 ? [step] : [{ '': 1 }, step])) };
}

const every = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789'];
/** Share of characters that a writer leaves out or adds: our own assumption, as above. */
export const slipShare = 0.01;

/** A lattice in which any character may be wrong, missing or too many: for finding the nearest valid code. */
export function looseLattice(code: string): Lattice {
  const missing = { '': 1 - slipShare, ...Object.fromEntries(every.map((character) => [character, slipShare / 36])) };
  const steps = [...tidyCode(code)].map((character) => {
    const shares = Object.fromEntries(every.map((meant) => [meant, mistakeShare(character, meant)]));
    return { ...shares, '': marks.test(character) ? 0.5 : slipShare, [character]: 0.7 };
  });
  return { steps: [missing, ...steps.flatMap((step) => [step, missing])] };
}
