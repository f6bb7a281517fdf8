import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { foldText } from '../../src/text/fold';

const cldr = new URL('../../node_modules/', import.meta.url);
const read = (path: string) => JSON.parse(readFileSync(new URL(path, cldr), 'utf8'));

type Tender = { _from?: string; _to?: string; _tender?: string };
interface Written {
  symbol?: string;
  'symbol-alt-narrow'?: string;
  'symbol-alt-variant'?: string;
  'symbol-alt-formal'?: string;
}

/** Currencies that are tender today, by region. */
function tenders(): Map<string, string> {
  const regions = read('cldr-core/supplemental/currencyData.json').supplemental.currencyData.region;
  const found = new Map<string, string>();
  for (const [region, times] of Object.entries<Record<string, Tender>[]>(regions))
    for (const [code, { _from, _to, _tender }] of times.flatMap((one) => Object.entries(one)))
      if (_from && !_to && _tender !== 'false' && !found.has(region)) found.set(region, code);
  return found;
}

/** Locales that CLDR calls covered for modern use, with their regions; the rest holds experiments and gaps. */
function modernLocales(): string[] {
  const levels: Record<string, string> = read('cldr-core/coverageLevels.json').effectiveCoverageLevels;
  return readdirSync(new URL('cldr-numbers-full/main', cldr)).filter((locale) => {
    const [language = '', script = ''] = locale.split('-');
    return [locale, `${language}-${script}`, language].some((tag) => levels[tag] === 'modern');
  });
}

/** The signs of every currency in use, as every modern locale writes them, with how many locales do. */
function signsOf(codes: ReadonlySet<string>): Map<string, Map<string, number>> {
  const signs = new Map<string, Map<string, number>>();
  for (const locale of modernLocales()) {
    const file = `cldr-numbers-full/main/${locale}/currencies.json`;
    if (!existsSync(new URL(file, cldr))) continue;
    const written: Record<string, Written> = read(file).main[locale].numbers.currencies;
    for (const [code, forms] of Object.entries(written))
      for (const form of [forms.symbol, forms['symbol-alt-narrow'], forms['symbol-alt-variant']]) {
        // As texts are folded before they are read; a point at the end may be the sentence's.
        const sign = foldText(form ?? '')
          .text.trim()
          .replace(/\.$/, '');
        if (sign === '' || sign === code || /\d/.test(sign) || !codes.has(code)) continue;
        const of = signs.get(sign) ?? new Map<string, number>();
        signs.set(sign, of.set(code, (of.get(code) ?? 0) + 1));
      }
  }
  return signs;
}

/** "AU$", "$AU" and "GB£" are a region and the sign of its currency: they are put together when a text is read. */
function isComposed(sign: string, of: Map<string, number>, regions: Map<string, string>): boolean {
  const place = /^(?:([A-Z]{2}) ?[$£¥]|[$£¥] ?([A-Z]{2}))$/.exec(sign);
  const code = regions.get(place?.[1] ?? place?.[2] ?? '');
  return code !== undefined && of.size === 1 && of.has(code);
}

const byCode = (pairs: Iterable<[string, string]>): Record<string, string> => {
  const grouped: Record<string, string[]> = {};
  for (const [value, code] of pairs) grouped[code] = [...(grouped[code] ?? []), value];
  return Object.fromEntries(
    Object.entries(grouped)
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([code, values]) => [code, values.sort().join(' ')]),
  );
};

/** The table of currencies as CLDR has them: codes, signs, and the regions of those that share a sign. */
export function currencyTable() {
  const regions = tenders();
  const codes = new Set(regions.values());
  const all = [...signsOf(codes)].sort(([a], [b]) => (a < b ? -1 : 1));
  const ranked = (of: Map<string, number>) =>
    [...of].sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1)).map(([code]) => code);
  // A sign is looked up in small letters too: of two that differ in their letters' case alone, one is enough.
  const seen = new Set<string>();
  const signs = all.filter(([sign, of]) => {
    const small = `${sign.toLowerCase()} ${ranked(of)}`;
    const kept = !isComposed(sign, of, regions) && !seen.has(small);
    seen.add(small);
    return kept;
  });
  // The dollar without a country is the one of the United States first, as CLDR's root has it.
  const shared = new Set(signs.flatMap(([, of]) => (of.size > 1 ? [...of.keys()] : [])));
  return {
    cldr: read('cldr-numbers-full/package.json').version as string,
    /** Those that no sign and no region below names. */
    codes: [...codes]
      .filter((code) => !signs.some(([, of]) => of.has(code)) && !shared.has(code))
      .sort()
      .join(' '),
    signs: Object.fromEntries(signs.map(([sign, of]) => [sign, ranked(of).join(' ')])),
    regions: byCode(
      [...regions].filter(([, code]) => shared.has(code)).map(([region, code]) => [region.toLowerCase(), code]),
    ),
  };
}

export const currencyJson = (): string => `${JSON.stringify(currencyTable(), null, 2)}\n`;
