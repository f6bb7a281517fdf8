/** Francs as they are named with their country, by currency (ISO 4217). */
const named: Record<string, RegExp> = {
  FRF: /(?<!\p{L})(?:french francs?|francs? français|französische[rn]? francs?|franchi francesi|francos franceses|franse (?:frank|francs)|frf|ff)(?!\p{L})|フランスフラン/iu,
  BEF: /(?<!\p{L})(?:belgian francs?|francs? belges?|belgische[rn]? (?:francs?|franken|frank)|franchi belgi|francos belgas|bef|bfr|fb)(?!\p{L})|ベルギーフラン/iu,
  CHF: /(?<!\p{L})(?:swiss francs?|francs? suisses?|schweizer franken|franchi svizzeri|francos suizos|zwitserse (?:frank|franken|francs)|chf|sfr)(?!\p{L})|スイスフラン/iu,
  LUF: /(?<!\p{L})(?:luxembourg francs?|francs? luxembourgeois|luf)(?!\p{L})/iu,
};

/** Whose francs a page means: of the one country that it names with them; null where it names none, or several. */
export function francsOf(text: string): string | null {
  const [only, ...more] = Object.entries(named).filter(([, words]) => words.test(text));
  return only && more.length === 0 ? only[0] : null;
}

/** A bare "F" or "francs" behind figures, or in words that say in what money figures are. */
const bare = /(?<!\p{L})(?:f|fr|frs|francs?|franchi|francos|frank|franken)(?![\p{L}])/iu;
const behindFigures =
  /(?<![\d.,])(\d{1,3}(?:[.,'  ]\d{3}){1,3}|\d{1,7})(?:,(\d\d))?\s?(?:f|frs?|francs?|franchi|francos|frank|franken)(?![\p{L}])/giu;

/** Whether a text says "francs", and not whose. */
export const saysBareFrancs = (text: string): boolean =>
  bare.test(text) && !Object.values(named).some((words) => words.test(text));

/** Amounts in francs without a country, each with its place. */
export function bareFrancs(text: string): { amount: number; start: number; end: number }[] {
  return [...text.matchAll(behindFigures)].map(({ 0: all, 1: whole, 2: cents, index }) => ({
    amount: Number(whole!.replace(/\D/g, '')) + Number(cents ?? 0) / 100,
    start: index,
    end: index + all.length,
  }));
}
