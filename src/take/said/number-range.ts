const numeral = "(\\d{1,3}(?:[.,' ]\\d{3}){1,4}|\\d{1,12})";
const range = new RegExp(
  `^(?:(?:no|nr|n[.º°])\\.?\\s?)?${numeral}(?:\\s?(?:[-–—〜～~]|to|bis|à|al?|tot|through)\\s?${numeral})?(\\s?(?:\\+|[-–—]|\\p{L}{2,12}(?:\\s\\p{L}{2,12})?))?\\.?$`,
  'iu',
);

/** "1 – 1,200", "2750 onwards": the first and the last of running numbers; null where a text is anything else. */
export function readNumberRange(text: string): { first: number; last: number | null; goesOn: boolean } | null {
  const match = range.exec(text.trim());
  if (!match) return null;
  const [first, last] = [match[1], match[2]].map((one) => (one === undefined ? null : Number(one.replace(/\D/g, ''))));
  return { first: first!, last: last ?? null, goesOn: last === null && match[3] !== undefined };
}
