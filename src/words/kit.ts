import type { Price } from '../listing/types';
import { placeName } from '../place';
import { daysInMonth, type Span } from '../span';
import { formerPlaces } from './de/former-places';
import { spans as germanSpans } from './de/spans';
import { spans as englishSpans } from './en/spans';
import type { Language } from './language';
import type { SpanForms } from './span-forms';

/** Forms of one phrase by the language's plural classes (CLDR); `#` stands for the number. */
export type PluralForms = { other: string } & Partial<Record<Intl.LDMLPluralRule, string>>;

/** What sentences are made with: numbers, dates, sums, lists and names as the language writes them (`Intl`, CLDR). */
export interface Kit {
  language: Language;
  /** The BCP 47 tag that `Intl` writes it with. */
  locale: string;
  number: (value: number, decimals?: number) => string;
  /** 0.42 as "42%". */
  percent: (share: number) => string;
  count: (number: number, forms: PluralForms) => string;
  /** "a, b and c" */
  list: (items: readonly string[]) => string;
  /** "a, b or c" */
  either: (items: readonly string[]) => string;
  /** An ISO day or moment as "4 March 1996". */
  day: (iso: string) => string;
  /** A month's name; 1 is January. */
  month: (number: number) => string;
  /** "January 1995", "1988 to 2003", "about 1994". */
  span: (span: Span) => string;
  /** A span after a verb: "from 1988 to 2003", "in January 1995". */
  during: (span: Span) => string;
  /** An ISO 3166 code's name. */
  place: (code: string) => string;
  price: (price: Price) => string;
  /** Whole units of a currency. */
  amount: (sum: { amount: number; currency: string }) => string;
  /** Millimetres as centimetres. */
  length: (mm: number) => string;
  /** Somebody's own words in the language's quotation marks, cut to what one line can hold. */
  quote: (words: string) => string;
  /** A code, cut to what a sentence can hold. */
  code: (text: string) => string;
  /** "photo 3"; a photo that the page does not list has no number. */
  photo: (number: number | null) => string;
  /** A sentence's first letter as a capital. */
  sentence: (words: string) => string;
}

const longestQuote = 80;
/** A typed code may be of any length. */
const longestCode = 40;
const oneLine = (words: string) => {
  const line = words.replace(/\s+/g, ' ').trim();
  return line.length > longestQuote ? `${line.slice(0, longestQuote - 1).trimEnd()}…` : line;
};

interface Manner {
  characters: string;
  photo: readonly [numbered: string, other: string];
  locale: string;
  spans: SpanForms;
  quotes: readonly [string, string];
  place: (code: string) => string;
}

const germanRegions = later(() => new Intl.DisplayNames('de', { type: 'region', fallback: 'code' }));
const english: Manner = {
  characters: 'characters',
  photo: ['photo', 'a photo'],
  locale: 'en-GB',
  spans: englishSpans,
  quotes: ['“', '”'],
  place: placeName,
};
const manners: Record<Language, Manner> = {
  en: english,
  'en-XA': english,
  de: {
    characters: 'Zeichen',
    photo: ['Foto', 'ein Foto'],
    locale: 'de-DE',
    spans: germanSpans,
    quotes: ['„', '“'],
    place: (code) => formerPlaces[code] ?? (/^[A-Z]{2}$/.test(code) ? (germanRegions().of(code) ?? code) : code),
  },
};

const kits = new Map<Language, Kit>();

/** The kit of a language: one, because every sentence asks for it. */
export function kitFor(language: Language): Kit {
  const kit = kits.get(language) ?? makeKit(language);
  kits.set(language, kit);
  return kit;
}

/** Made when it is first asked for: each of the platform's formats takes milliseconds, and few screens need all. */
function later<T>(make: () => T): () => T {
  let made: { value: T } | null = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

function makeKit(language: Language): Kit {
  const { locale, spans, quotes, place, photo, characters } = manners[language];
  const plural = later(() => new Intl.PluralRules(locale));
  const byDecimals = new Map<number, Intl.NumberFormat>();
  const number = (value: number, decimals = 0) => {
    const format =
      byDecimals.get(decimals) ??
      new Intl.NumberFormat(locale, { minimumFractionDigits: decimals, maximumFractionDigits: decimals });
    byDecimals.set(decimals, format);
    return format.format(value);
  };
  const list = (type: 'conjunction' | 'disjunction') => {
    const format = later(() => new Intl.ListFormat(locale, { type }));
    return (items: readonly string[]) => format().format(items);
  };
  const dated = (options: Intl.DateTimeFormatOptions) => {
    const format = later(() => new Intl.DateTimeFormat(locale, { ...options, timeZone: 'UTC' }));
    return (day: string) => format().format(new Date(`${day.slice(0, 10)}T00:00:00Z`));
  };
  const day = dated({ day: 'numeric', month: 'long', year: 'numeric' });
  const month = dated({ month: 'long', year: 'numeric' });
  const monthName = later(() => new Intl.DateTimeFormat(locale, { month: 'long', timeZone: 'UTC' }));
  const percent = later(() => new Intl.NumberFormat(locale, { style: 'percent' }));
  const { span, during } = spanSayer(spans, day, month);
  return {
    language,
    locale,
    number,
    percent: (share) => percent().format(share),
    count: (value, forms) => (forms[plural().select(value)] ?? forms.other).replaceAll('#', number(value)),
    list: list('conjunction'),
    either: list('disjunction'),
    day,
    month: (value) => monthName().format(Date.UTC(2000, value - 1, 1)),
    span,
    during,
    place,
    price: (price) => priceSaid(price, locale),
    amount: ({ amount, currency }) => moneySaid(amount, currency, 0, locale),
    length: (mm) => `${number(mm / 10, mm % 10 === 0 ? 0 : 1)} cm`,
    quote: (words) => `${quotes[0]}${oneLine(words)}${quotes[1]}`,
    code: (text) =>
      text.length > longestCode ? `${text.slice(0, longestCode)}… (${number(text.length)} ${characters})` : text,
    photo: (value) => (value === null ? photo[1] : `${photo[0]} ${value}`),
    sentence: (words) => words.charAt(0).toLocaleUpperCase(locale) + words.slice(1),
  };
}

function priceSaid({ minor, exponent, currency }: Price, locale: string): string {
  const unit = 10 ** exponent;
  return moneySaid(minor / unit, currency, minor % unit === 0 ? 0 : exponent, locale);
}

function moneySaid(amount: number, currency: string | null, decimals: number, locale: string): string {
  return new Intl.NumberFormat(locale, {
    minimumFractionDigits: decimals,
    maximumFractionDigits: decimals,
    useGrouping: 'min2',
    ...(currency ? { style: 'currency', currency, currencyDisplay: 'code' } : {}),
  }).format(amount);
}

type Say = (day: string) => string;

/** Says spans as coarsely as they can be said: a whole year as its number, a whole month by name. */
function spanSayer(
  forms: SpanForms,
  day: Say,
  month: Say,
): { span: (span: Span) => string; during: (span: Span) => string } {
  const end = (iso: string, side: 'from' | 'to', partOfYear = false): string => {
    if (!partOfYear && iso.endsWith(side === 'from' ? '-01-01' : '-12-31')) return iso.slice(0, 4);
    const edge = side === 'from' ? 1 : daysInMonth(Number(iso.slice(0, 4)), Number(iso.slice(5, 7)));
    return Number(iso.slice(8)) === edge ? month(iso) : day(iso);
  };
  const ends = ({ from, to }: { from: string; to: string }): [string, string] => {
    const part = from.slice(0, 4) === to.slice(0, 4) && !(from.endsWith('-01-01') && to.endsWith('-12-31'));
    return [end(from, 'from', part), end(to, 'to', part)];
  };
  const plain = ({ from, to, precision }: Span): string => {
    if (from === null && to === null) return forms.any;
    if (from === null) return forms.upTo(end(to as string, 'to'));
    if (to === null) return forms.from(end(from, 'from'));
    if (precision === 'day' || from === to) return day(from);
    if (precision === 'week') return forms.weekOf(day(from));
    if (precision === 'month') return month(from);
    if (precision === 'decade' && from.endsWith('0-01-01') && to.endsWith('9-12-31'))
      return forms.decade(from.slice(0, 4));
    const [first, last] = ends({ from, to });
    return first === last ? first : forms.range(first, last);
  };
  const span = (one: Span) => (one.about ? forms.about(plain(one)) : plain(one));
  const during = (one: Span): string => {
    if (one.from === null || one.to === null || one.about) return span(one);
    const [first, last] = ends({ from: one.from, to: one.to });
    return first === last ? forms.during.one(span(one)) : forms.during.closed(first, last);
  };
  return { span, during };
}
