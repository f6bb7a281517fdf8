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
const notMoney = /^\s?(?:%|°|mm\b|cm\b|kg\b|g\b|ml\b|:\d|\/\d)/;
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
  const near = signBefore(text, end, anySign) ?? (text[end] === '.' ? signBefore(text, end + 1, anySign) : null);
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

/** All numbers of a folded text with their currency signs; numbers without one are kept with `sign: null`. */
export function findAmounts(text: string, hints: PriceHints, field: boolean): Amount[] {
  const amounts: Amount[] = [];
  numberStart.lastIndex = 0;
  let from = 0;
  for (let match = numberStart.exec(text); match; match = numberStart.exec(text)) {
    const leading = leadingSign(text, match.index, from, field);
    const start = leading || !/^[.,]/.test(match[0]) || field ? match.index : match.index + 1;
    const glued =
      !leading && /[\p{L}\d_#]/u.test(text[start - 1] ?? '') && !/[\u3040-\u9fff]/.test(text[start - 1] ?? '');
    let number = readNumber(text, start, habitsFor(leading, hints, field));
    if (!number) continue;
    numberStart.lastIndex = number.end;
    const trailing = signAt(text, skipSpaces(text, number.end), field);
    const next = trailing ? text.slice(trailing.end, trailing.end + 3) : '';
    const takes = trailing && (!leading || trailing.codes.length === 1) && !(leading && /^\s?[.\d]/.test(next));
    const sign = takes && !(leading && leading.codes.length === 1 && trailing.codes.length > 1) ? trailing : leading;
    if (trailing && sign === trailing) {
      number = readNumber(text, start, habitsFor(trailing, hints, field)) ?? number;
      const joined = leading ? null : signAsPoint(text, number, trailing);
      if (joined) number = joined;
    }
    const end = sign && sign === trailing ? Math.max(sign.end, number.end) : number.end;
    from = end;
    numberStart.lastIndex = end;
    if (
      number.readings.length === 0 ||
      (glued && !(field && sign)) ||
      notMoney.test(text.slice(number.end, number.end + 4))
    )
      continue;
    amounts.push({ number, sign, start: leading?.start ?? start, end });
  }
  return amounts;
}
