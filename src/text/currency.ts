import currencies from './currencies.json' with { type: 'json' };
import said from './currency-words.json' with { type: 'json' };

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

/*
 * currencies.json is made from Unicode CLDR, whose version it states, by `npm run make:currencies`. currency-words.json is
 * ours: decimal places and former codes by ISO 4217, and words and signs that people use beside CLDR's: common practice,
 * no source.
 */
const words = (text: string): string[] => text.split(' ');
const codes = new Set(
  [currencies.codes, said.former, ...Object.values(currencies.signs), ...Object.keys(currencies.regions)].flatMap(
    words,
  ),
);
/** Codes that people write in small letters; others in small letters are words ("all", "try", "top"). */
const small = new Set(words(said.small));
/** Signs of plain letters that count in running text; others ("L", "Q", "MK") only in a price field's own text. */
const running = new Set(words(said.running));

/** Signs as CLDR's locales write them, then words that people use; the codes that each may stand for. */
const symbols = new Map<string, string[]>(Object.entries(currencies.signs).map(([sign, of]) => [sign, words(of)]));
for (const [written, of] of Object.entries(said.words))
  for (const word of words(written)) symbols.set(word, [...new Set([...words(of), ...(symbols.get(word) ?? [])])]);

/** As above in small letters: "KSh" and "Ksh" are one. */
const inSmall = new Map([...symbols].map(([sign, of]) => [sign.toLowerCase(), of]));

const regions = new Map<string, string>();
for (const [code, places] of Object.entries(currencies.regions))
  for (const place of words(places)) regions.set(place, code);

const named = ['en', 'de', 'fr', 'it', 'es', 'nl', 'ja'];
let isNamed = false;
/** Names of currencies ("Schweizer Franken", "livres sterling") as CLDR has them, from the platform's own copy of it. */
function addNames(): void {
  isNamed = true;
  for (const language of named)
    for (const code of small) {
      const format = new Intl.NumberFormat(language, { style: 'currency', currency: code, currencyDisplay: 'name' });
      for (const count of [1, 2]) {
        const part = format.formatToParts(count).find(({ type }) => type === 'currency');
        const name = part?.value.toLowerCase() ?? '';
        if (!inSmall.has(name)) inSmall.set(name, [code.toUpperCase()]);
      }
    }
}

/** No sign and no name of a currency is longer. */
const longest = 24;

const decimals = new Map<string, number>(
  Object.entries(said.exponents).flatMap(([places, of]) => words(of).map((code) => [code, Number(places)] as const)),
);
/** Decimal places of a currency. Source: ISO 4217 list one (amendments after 2024 from memory). */
export const exponentOf = (currency: string | null): number => decimals.get(currency ?? '') ?? 2;

const letter = /[\p{L}\p{M}]/u;
const isLetter = (unit: string | undefined) => unit !== undefined && letter.test(unit);
const cjk = /[\u3040-\u30ff\u3400-\u9fff\uac00-\ud7af]/;
const plainLetters = /^[A-Za-z./']+$/;

/** A region or a currency's code beside the sign that it shares: "AU$", "$ NZ", "SGD$". */
function composed(sign: string): string[] | null {
  const match = /^(?:([A-Z]{2,3}) ?([$£¥])|([$£¥]) ?([A-Z]{2}))$/.exec(sign);
  const place = match?.[1] ?? match?.[4] ?? '';
  const code = place === 'UK' ? 'GBP' : (regions.get(place.toLowerCase()) ?? place);
  return match && symbols.get(match[2] ?? match[3] ?? '')?.includes(code) ? [code] : null;
}

function lookUp(sign: string, anySign: boolean): string[] | null {
  if (!isNamed) addNames();
  if (codes.has(sign)) return [sign];
  if (small.has(sign.toLowerCase()) && (anySign || !/[A-Z]{2}/.test(sign))) return [sign.toUpperCase()];
  const plain = sign.length > 1 ? sign.replace(/\.$/, '') : sign;
  const found = composed(sign) ?? symbols.get(plain) ?? inSmall.get(plain.toLowerCase());
  if (!found || anySign || !plainLetters.test(plain)) return found ?? null;
  return running.has(plain) || running.has(plain.toLowerCase()) || plain.length > 3 ? found : null;
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

/** The currency of a region or of a domain named after one; the rest of the euro's countries share no sign. */
const regionCurrency = (place: string): string | undefined =>
  place === 'uk' ? 'GBP' : (regions.get(place) ?? undefined);

/** Languages that are spoken in one country alone settle its currency; English, Spanish and others do not. */
const oneCountry = new Set(['ja', 'zh', 'sv', 'nb', 'nn', 'no', 'da', 'is', 'ro']);
const likelyRegion = (language: string): string =>
  oneCountry.has(language) ? (new Intl.Locale(language).maximize().region as string).toLowerCase() : '';

/** Settles candidates by the page's data, then its domain, then its language; `by` says which, null when none did. */
export function settleCurrency(
  candidates: string[],
  hints: PriceHints,
): { currency: string | null; by: 'data' | 'domain' | 'language' | null } {
  if (candidates.length === 1) return { currency: candidates[0] as string, by: null };
  const place = region(hints.language)?.toLowerCase() ?? '';
  const main = (hints.language ?? '').slice(0, 2).toLowerCase();
  const guesses = [
    { by: 'data' as const, code: hints.currency },
    { by: 'domain' as const, code: regionCurrency(topLevel(hints.domain)) },
    { by: 'language' as const, code: regionCurrency(place) },
    { by: 'language' as const, code: regionCurrency(likelyRegion(main)) },
    { by: 'language' as const, code: main === 'en' && candidates[0] === 'GBP' ? 'GBP' : undefined },
  ];
  const settled = guesses.find((guess) => guess.code !== undefined && candidates.includes(guess.code));
  return settled ? { currency: settled.code as string, by: settled.by } : { currency: null, by: null };
}

/** Countries that write both, so that neither settles anything. */
const mixed = new Set(['ch', 'li', 'za']);

/** The decimal sign of a locale as CLDR has it, from the platform's own copy of it; null where it knows none. */
function decimalSign(locale: string): '.' | ',' | null {
  try {
    if (Intl.NumberFormat.supportedLocalesOf(locale).length === 0) return null;
    const sign = new Intl.NumberFormat(locale, { numberingSystem: 'latn' })
      .formatToParts(1.5)
      .find(({ type }) => type === 'decimal')?.value;
    return sign === '.' || sign === ',' ? sign : null;
  } catch {
    return null;
  }
}

/** The decimal sign of the page's place: its language with the region, then the country of its domain. */
export function decimalConvention(hints: PriceHints): '.' | ',' | null {
  const language = hints.language ?? '';
  const place = region(language)?.toLowerCase() ?? '';
  if (mixed.has(place)) return null;
  const byLanguage = language === '' ? null : decimalSign(language);
  if (byLanguage) return byLanguage;
  const domain = topLevel(hints.domain);
  if (!/^[a-z]{2}$/.test(domain) || mixed.has(domain)) return null;
  const likely = new Intl.Locale(`und-${domain === 'uk' ? 'GB' : domain}`).maximize();
  return likely.language === 'und' ? null : decimalSign(likely.baseName);
}
