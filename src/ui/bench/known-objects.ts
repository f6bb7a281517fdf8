/**
 * Lengths of things that lie at hand, mm. Sources: identification card, ISO/IEC 7810:2019, ID-1; diameters of euro coins,
 * Council Regulation (EC) No 975/98 of 3 May 1998.
 */
export const knownObjects = {
  cardLong: 85.6,
  cardShort: 53.98,
  twoEuro: 25.75,
  oneEuro: 23.25,
  fiftyCent: 24.25,
} as const;
export type KnownObject = keyof typeof knownObjects;
