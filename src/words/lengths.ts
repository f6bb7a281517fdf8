import type { Kit } from './kit';

/** A number with one decimal, or with none where it is whole. */
const short = (value: number, kit: Kit): string => {
  const tenths = Math.round(value * 10);
  return kit.number(tenths / 10, tenths % 10 === 0 ? 0 : 1);
};

/** "30 cm (11.8 in)": what a tape of either kind shows. */
export const inBoth = (mm: number, inch: string, kit: Kit): string =>
  `${short(mm / 10, kit)} cm (${short(mm / 25.4, kit)} ${inch})`;

/** "2.54" or "10" */
export const factor = (value: number, kit: Kit): string => kit.number(value, Number.isInteger(value) ? 0 : 2);

/** "1.4" or "1.2 to 1.4", where both ends are the same as they are said. */
export const between = (least: number, most: number, to: string, kit: Kit): string =>
  [...new Set([kit.number(least, 1), kit.number(most, 1)])].join(` ${to} `);
