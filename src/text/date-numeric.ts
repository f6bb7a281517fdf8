import type { Span } from '../span';
import { type DateHints, dayOf, fullYears, type RawDate } from './date-parts';

type Order = 'dmy' | 'mdy' | 'ymd';

const threeNumbers = /(?<![\p{L}\d.,/-])(\d{1,2})(?:\s?([./-])\s?)(\d{1,2})(?:\s?\2\s?)(\d{4}|\d{2})(?![\d/-]|\.\d)/gu;
const monthFirstRegions = new Set(['us', 'ph', 'pr']);

/** Orders that a text of this language and separator may mean, likeliest first. Points are day first everywhere. */
function ordersOf(separator: string, yearDigits: number, language: string | null): Order[] {
  const tag = (language ?? '').toLowerCase();
  const main = tag.slice(0, 2);
  const region = /^[a-z]{2}-(?:[a-z]{4}-)?([a-z]{2})/.exec(tag)?.[1] ?? '';
  const short: Order[] = yearDigits === 2 && separator !== '.' ? ['ymd'] : [];
  if (main === 'ja') return yearDigits === 2 ? ['ymd'] : ['dmy', 'mdy'];
  if (separator === '.' || ['de', 'fr', 'it', 'es', 'nl'].includes(main)) return ['dmy', ...short];
  if (monthFirstRegions.has(region)) return ['mdy', ...short];
  if (main === 'en' && region && region !== 'ca' && region !== 'za') return ['dmy', ...short];
  return ['dmy', 'mdy', ...short];
}

function read(order: Order, [a, b, c]: [number, number, number], digits: number, now: string): Span[] {
  const [year, month, day] = order === 'dmy' ? [c, b, a] : order === 'mdy' ? [c, a, b] : [a, b, c];
  const years = digits === 2 ? fullYears(year, now) : [year];
  return years.flatMap((whole) => dayOf(whole, month, day) ?? []);
}

/** Days written as three numbers; every order that gives a day of the calendar is in `ambiguous`. */
export function numericDates(text: string, hints: DateHints): RawDate[] {
  const found: RawDate[] = [];
  for (const match of text.matchAll(threeNumbers)) {
    const numbers: [number, number, number] = [Number(match[1]), Number(match[3]), Number(match[4])];
    const digits = (match[4] as string).length;
    const spans: Span[] = [];
    for (const order of ordersOf(match[2] as string, digits, hints.language)) {
      for (const span of read(order, numbers, digits, hints.now))
        if (!spans.some((other) => other.from === span.from)) spans.push(span);
    }
    const [first] = spans;
    if (!first || (digits === 4 && (numbers[2] < 1600 || numbers[2] > 2199))) continue;
    const place = { start: match.index, end: match.index + match[0].length };
    found.push({ span: first, ...place, form: 'day', ...(spans.length > 1 ? { ambiguous: spans } : {}) });
  }
  return found;
}
