import currencies from './currencies.json' with { type: 'json' };

/** What the page tells of its money: a currency from its data, a BCP 47 language, the host name. */
export interface PriceHints {
  currency?: string | undefined;
  language?: string | null | undefined;
  domain?: string | undefined;
}

/** A currency sign as written, and the ISO 4217 codes that it may stand for (empty: none that is legal tender). */
export interface CurrencySign {
  sign: string;
  codes: string[];
  start: number;
  end: number;
}

const codes = new Set([...currencies.codes.split(' '), ...currencies.former.split(' ')]);
const symbols = new Map<string, string[]>(Object.entries(currencies.symbols));
const fieldOnly = new Map<string, string[]>(Object.entries(currencies.fieldOnly));
const longest = Math.max(...[...symbols.keys(), ...fieldOnly.keys()].map((sign) => sign.length));

/** Decimal places of a currency. Source: ISO 4217 list one (amendments after 2024 from memory). */
export const exponentOf = (currency: string | null): number =>
  (currencies.exponents as Record<string, number>)[currency ?? ''] ?? 2;

const letter = /[\p{L}\p{M}]/u;
const isLetter = (unit: string | undefined) => unit !== undefined && letter.test(unit);
const cjk = /[\u3040-\u30ff\u3400-\u9fff\uac00-\ud7af]/;

function lookUp(sign: string, anySign: boolean): string[] | null {
  if (codes.has(sign)) return [sign];
  return symbols.get(sign) ?? (anySign ? (fieldOnly.get(sign) ?? null) : null);
}

/** Letters next to a sign of letters make it part of a word: "kr" in "krokodil". */
function standsAlone(text: string, start: number, end: number): boolean {
  const sign = text.slice(start, end);
  const joinsBefore = isLetter(sign[0]) && isLetter(text[start - 1]) && !cjk.test(sign);
  const joinsAfter = isLetter(sign[sign.length - 1]) && isLetter(text[end]) && !cjk.test(sign);
  return !joinsBefore && !joinsAfter;
}

/** The longest currency sign that begins at `start`. `anySign` also takes single letters, for a price field's text. */
export function signAt(text: string, start: number, anySign: boolean): CurrencySign | null {
  for (let length = Math.min(longest, text.length - start); length > 0; length -= 1) {
    const sign = text.slice(start, start + length);
    const found = lookUp(sign, anySign);
    if (found && standsAlone(text, start, start + length)) return { sign, codes: found, start, end: start + length };
  }
  return null;
}

/** The longest currency sign that ends at `end`. */
export function signBefore(text: string, end: number, anySign: boolean): CurrencySign | null {
  for (let length = Math.min(longest, end); length > 0; length -= 1) {
    const sign = text.slice(end - length, end);
    const found = lookUp(sign, anySign);
    if (found && standsAlone(text, end - length, end)) return { sign, codes: found, start: end - length, end };
  }
  return null;
}

const topLevel = (domain: string | undefined) => domain?.toLowerCase().split('.').pop() ?? '';
const region = (language: string | null | undefined) =>
  /^[a-z]{2,3}-(?:[a-z]{4}-)?([a-z]{2})\b/i.exec(language ?? '')?.[1];

/** Settles candidates by the page's data, then its domain, then its language; `by` says which, null when none did. */
export function settleCurrency(
  candidates: string[],
  hints: PriceHints,
): { currency: string | null; by: 'data' | 'domain' | 'language' | null } {
  if (candidates.length === 1) return { currency: candidates[0] as string, by: null };
  const byDomain = currencies.byDomain as Record<string, string>;
  const byLanguage = currencies.byLanguage as Record<string, string>;
  const place = region(hints.language)?.toLowerCase() ?? '';
  const main = (hints.language ?? '').slice(0, 2).toLowerCase();
  const guesses = [
    { by: 'data' as const, code: hints.currency },
    { by: 'domain' as const, code: byDomain[topLevel(hints.domain)] },
    { by: 'language' as const, code: place === 'gb' ? 'GBP' : byDomain[place] },
    { by: 'language' as const, code: byLanguage[main] },
    { by: 'language' as const, code: main === 'en' && candidates[0] === 'GBP' ? 'GBP' : undefined },
  ];
  const settled = guesses.find((guess) => guess.code !== undefined && candidates.includes(guess.code));
  return settled ? { currency: settled.code as string, by: settled.by } : { currency: null, by: null };
}

const commaLanguages = new Set(
  'de fr it es nl pt da sv nb nn no fi pl cs sk hu ro tr ru uk el id vi hr sl bg'.split(' '),
);
const pointLanguages = new Set('en ja zh ko th he hi'.split(' '));
const commaDomains = new Set(
  'de at fr it es nl be pt dk se no fi pl cz sk hu ro tr ru ua gr id vn hr si br ar'.split(' '),
);
const pointDomains = new Set('uk us ie au nz jp cn kr in sg hk tw th il my mx ph'.split(' '));

/**
 * The decimal sign of the page's place: region, then language, then domain. Source: Unicode CLDR number symbols
 * (from memory; Switzerland, Austria and South Africa mix both and settle nothing).
 */
export function decimalConvention(hints: PriceHints): '.' | ',' | null {
  const place = region(hints.language)?.toLowerCase();
  if (place === 'ch' || place === 'li' || place === 'za') return null;
  if (place && pointDomains.has(place)) return '.';
  const main = (hints.language ?? '').slice(0, 2).toLowerCase();
  if (commaLanguages.has(main)) return ',';
  if (pointLanguages.has(main)) return '.';
  const domain = topLevel(hints.domain);
  if (commaDomains.has(domain)) return ',';
  return pointDomains.has(domain) ? '.' : null;
}
