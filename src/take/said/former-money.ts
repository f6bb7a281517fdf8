import { foldWords } from '../../text';
import { type TellingTopic, tellingFinder } from '../words';

/** Money that is paid no more, named as it can only mean: "francs" alone were three countries'. */
const names = [
  'money-dem',
  'money-itl',
  'money-esp',
  'money-nlg',
  'money-frf',
  'money-ats',
] as const satisfies TellingTopic[];
const finder = tellingFinder(...names);

const numeral = String.raw`\d{1,3}(?:[.,' ]\d{3}){1,3}(?:,\d\d)?|\d{1,7}(?:[.,]\d\d)?`;
/** "298,-": what stands for no cents. */
const noCents = String.raw`(?:,-|,–|\.-)?`;
const before = new RegExp(String.raw`(?<![\d.,])(${numeral})\s?${noCents}\s?$`);
const behind = new RegExp(`^[.\\s]{0,2}(${numeral})(?![\\d]|[.,]\\d)`);

/** A sum as figures: what parts thousands goes, what parts the last two stays. */
function amountOf(text: string): number {
  const cents = /[.,](\d\d)$/.exec(text);
  const whole = (cents ? text.slice(0, -3) : text).replace(/\D/g, '');
  return Number(whole) + (cents ? Number(cents[1]) / 100 : 0);
}

const figures = new RegExp(`^(${numeral})${noCents}$`);

/** "money-esp" is of ESP. */
const currencyOf = (topic: (typeof names)[number]): string => topic.slice('money-'.length).toUpperCase();

/** The one former currency that words name without an amount: "Catalogue prices (pesetas)"; null for none and for several. */
function formerNamed(text: string): string | null {
  const [one, ...more] = new Set(finder(text).map(({ value }) => value));
  return one && more.length === 0 ? currencyOf(one) : null;
}

/** Bare figures in the former currency that the words around them name. */
export function formerIn(text: string, around: string): { amount: number; currency: string } | null {
  const sum = figures.exec(text.trim())?.[1];
  const currency = sum === undefined ? null : formerNamed(around);
  return sum !== undefined && currency !== null ? { amount: amountOf(sum), currency } : null;
}

export interface FormerAmount {
  amount: number;
  currency: string;
  start: number;
  end: number;
}

/** "14.500 pesetas", "DM 298": amounts beside the name of a former currency. */
export function formerAmounts(source: string): FormerAmount[] {
  const folded = foldWords(source);
  return finder(folded).flatMap(({ value, start, end }): FormerAmount[] => {
    const from = Math.max(0, start - 24);
    const ahead = before.exec(source.slice(from, start));
    const currency = currencyOf(value);
    if (ahead) return [{ amount: amountOf(ahead[1]!), currency, start: from + ahead.index, end }];
    const next = behind.exec(source.slice(end, end + 24));
    return next ? [{ amount: amountOf(next[1]!), currency, start, end: end + next[0].length }] : [];
  });
}
