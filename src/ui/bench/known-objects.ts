import { cardMm } from '../../photo';

/** Lengths of things that lie at hand, mm. Source of the euro coins' diameters: Council Regulation (EC) No 975/98 of 3 May 1998. */
export const knownObjects = {
  cardLong: cardMm.width,
  cardShort: cardMm.height,
  twoEuro: 25.75,
  oneEuro: 23.25,
  fiftyCent: 24.25,
} as const;
export type KnownObject = keyof typeof knownObjects;
