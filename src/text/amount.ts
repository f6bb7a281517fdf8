import {
  type CurrencySign,
  decimalConvention,
  exponentOf,
  type PriceHints,
  settleCurrency,
  signAt,
  signBefore,
} from './currency';
import { type NumberHabits, readNumber, type WrittenNumber } from './number';
import { listOf } from './phrases';

/** A number of a folded text and the currency sign beside it; the range holds both. */
export interface Amount {
  number: WrittenNumber;
  sign: CurrencySign | null;
  start: number;
  end: number;
}

const numberStart = /[.,]?\d/g;
const notMoney =
  /^\s?(?:%|万|億|°|mm\b|cm\b|kg\b|g\b|ml\b|:\d|\/\d|(?:k|bn|mn|mio|mrd|millions?|billions?)(?!\p{L}))/iu;
/** Signs whose countries all write a point before the decimals. */
const pointSigns = new Set(listOf('$, £, ¥, US$, C$, CA$, A$, AU$, NZ$, HK$, S$, GBP, USD, JPY, ₹, 円'));

function habitsFor(sign: CurrencySign | null, hints: PriceHints, spacedDecimals: boolean): NumberHabits {
  const currency = sign ? settleCurrency(sign.codes, hints).currency : (hints.currency ?? null);
  const byPlace = decimalConvention(hints);
  return {
    convention: byPlace ?? (sign && pointSigns.has(sign.sign) ? '.' : null),
    decimals: exponentOf(currency ?? sign?.codes[0] ?? null),
    spacedDecimals,
  };
}

/** Past up to two spaces, and past the dash of "50,- Kč" and "1299.–". */
const skipSpaces = (text: string, number: number) => {
  const from = number + (/^[.,]\s?[-–—]{1,2}/.exec(text.slice(number, number + 4))?.[0].length ?? 0);
  let position = from;
  while (position < from + 2 && text[position] === ' ') position += 1;
  return position;
};

/** The sign before a number; a second, more exact one before it ("NZD $", "SGD$") names the currency. */
function leadingSign(text: string, numberAt: number, from: number, anySign: boolean): CurrencySign | null {
  let end = numberAt;
  while (end > from && numberAt - end < 2 && (text[end - 1] === ' ' || text[end - 1] === '.')) end -= 1;
  const near = signBefore(text, end, anySign);
  if (!near || near.start < from) return null;
  let outer = near.start;
  while (outer > from && near.start - outer < 2 && text[outer - 1] === ' ') outer -= 1;
  const wider = signBefore(text, outer, false);
  if (!wider || wider.start < from) return near;
  const exact = [near, wider].find((sign) => sign.codes.length === 1) ?? near;
  return { ...exact, start: wider.start, end: near.end };
}

/** "35€ 99": the sign stands where the decimals begin. */
function signAsPoint(text: string, number: WrittenNumber, sign: CurrencySign): WrittenNumber | null {
  const decimals = /^ ?(\d\d)(?![\d.,%]|\s?[\p{L}$£€¥])/u.exec(text.slice(sign.end, sign.end + 8));
  const whole = number.readings[0];
  if (
    !decimals ||
    !'€$£'.includes(sign.sign) ||
    number.readings.length !== 1 ||
    whole === undefined ||
    whole.includes('.')
  )
    return null;
  return { start: number.start, end: sign.end + decimals[0].length, readings: [`${whole}.${decimals[1]}`] };
}

/** Every way to read digits that a blank divides: the whole, with the last two as decimals, and the part with the sign. */
function wholeAnd(parts: [string, string], own: string): string[] {
  const [first, second] = parts;
  const cents = /^\d\d$/.test(second) ? [`${first}.${second}`] : [];
  return [...new Set([`${first}${second}`, ...cents, own])];
}

/**
 * "28 50 €", "2  850 €", "1, 250.00 €": digits before the amount that a blank divides from it may be its first ones. What
 * would be read without them is many times too small, so all readings are kept.
 */
function brokenBefore(text: string, number: WrittenNumber, from: number): WrittenNumber | null {
  const own = number.readings[0] as string;
  const left = /(?:^|[^\p{L}\d.,/:'x×*+-])(?<![\p{L}] )(\d{1,3}(?: \d{1,3}){0,2})( {1,3}| ?[.,] )$/u.exec(
    text.slice(Math.max(from, number.start - 16), number.start),
  );
  if (!left || !/^\d{1,3}(?:\.|$)/.test(own)) return null;
  const [, written, gap] = left as unknown as [string, string, string];
  if (written.startsWith('0')) return null;
  const digits = written.replaceAll(' ', '');
  const start = number.start - written.length - gap.length;
  const readings = wholeAnd([digits, own], own);
  // Three digits behind a blank are a group of thousands where nothing else stands before.
  const sure =
    written === digits && /^\d{3}(?:\.|$)/.test(own) && text.slice(Math.max(0, start - 3), start).trim() === '';
  return { start, end: number.end, readings: sure ? readings.slice(0, 1) : readings };
}

/** "€ 28 50", "£1,2 50": digits behind the amount that a blank divides from it. */
function brokenBehind(text: string, number: WrittenNumber): WrittenNumber | null {
  const own = number.readings[0] as string;
  const right = /^(?: {1,3}| ?[.,] | [.,])(\d{2,3})(?![\d.,/:%x×-]|\s?[\p{L}$£€¥])/u.exec(
    text.slice(number.end, number.end + 9),
  );
  if (!right || !/^\d{1,3}(?:\.\d)?$/.test(own)) return null;
  return {
    start: number.start,
    end: number.end + right[0].length,
    readings: wholeAnd([own.replace('.', ''), right[1] as string], own),
  };
}

/** "12万円", "1万5千円", "1.5万円": ten thousands, and what follows them; null where the number is none of these. */
function tenThousands(text: string, number: WrittenNumber): WrittenNumber | null {
  const behind = /^\s?万(?:\s?(\d)千|\s?(\d{4}|\d{1,3}(?=円)))?(?=\s?円)/u.exec(
    text.slice(number.end, number.end + 12),
  );
  const [whole] = number.readings;
  if (!behind || whole === undefined) return null;
  const value = Math.round(Number(whole) * 10_000) + Number(behind[1] ?? 0) * 1000 + Number(behind[2] ?? 0);
  return { start: number.start, end: number.end + behind[0].length, readings: [String(value)] };
}

/** All numbers of a folded text with their currency signs; numbers without one are kept with `sign: null`. */
export function findAmounts(text: string, hints: PriceHints, field: boolean): Amount[] {
  const amounts: Amount[] = [];
  let [from, signedEnd] = [0, 0];
  for (let match = numberStart.exec(text); match; match = numberStart.exec(text)) {
    const leading = leadingSign(text, match.index, from, field);
    // "kr.500", "S/.500": the point is part of the sign.
    const pointed = leading?.end === match.index && /[\p{L}/]$/u.test(leading.sign);
    const taken = leading ? !pointed : field;
    const start = taken || !/^[.,]/.test(match[0]) ? match.index : match.index + 1;
    const ahead = text[start - 1] ?? '';
    const glued = !leading && /[\p{L}\d_#]/u.test(ahead) && !/[\u3040-\u9fff]/.test(ahead);
    // A digit stands there, or a point before one.
    const readWith = (sign: CurrencySign | null) =>
      readNumber(text, start, habitsFor(sign, hints, field)) as WrittenNumber;
    let number = readWith(leading);
    const tens = tenThousands(text, number);
    number = tens ?? number;
    const trailing = signAt(text, skipSpaces(text, number.end), field);
    const takes =
      trailing &&
      (!leading || (trailing.codes.length === 1 && !/^\s?[.\d]/.test(text.slice(trailing.end, trailing.end + 3))));
    const sign = takes ? trailing : leading;
    if (trailing && sign === trailing) {
      number = tens ?? readWith(trailing);
      const joined = leading ? null : signAsPoint(text, number, trailing);
      if (joined) number = joined;
    }
    const end = sign && sign === trailing ? Math.max(sign.end, number.end) : number.end;
    const since = signedEnd;
    from = end;
    numberStart.lastIndex = end;
    if (
      number.readings.length === 0 ||
      (glued && !(field && sign)) ||
      (!(sign && sign === trailing) && notMoney.test(text.slice(number.end, number.end + 10)))
    )
      continue;
    const whole =
      sign === null ? null : sign === leading ? brokenBehind(text, number) : brokenBefore(text, number, since);
    if (whole) numberStart.lastIndex = from = Math.max(end, whole.end);
    while (whole && (amounts.at(-1)?.end ?? 0) > whole.start) amounts.pop();
    if (sign) signedEnd = from;
    amounts.push({
      number: whole ?? number,
      sign,
      start: leading?.start ?? whole?.start ?? start,
      end: from,
    });
  }
  return amounts;
}
