import { anyLanguage } from './each-language';
import { readSize, type Size } from './measure-number';
import type { Dimension } from './measure-words';
import { lengthToLength, unitWords } from './unit-words';

export type Unit = 'mm' | 'cm' | 'm' | 'in' | 'ft';
export const unitMm: Record<Unit, number> = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 };

const signs: Record<Unit, string> = {
  mm: 'mm|㎜',
  cm: 'cms?|㎝',
  in: "ins?\\.?(?=$|[\\s,;.)x×*/]|[\\u3040-\\u9fff])|\"|''",
  ft: '',
  m: 'm',
};
/** In the order in which they are tried: a metre begins as a millimetre does. */
const unitNames: Unit[] = ['mm', 'cm', 'in', 'ft', 'm'];
const unitPattern = new RegExp(
  `(?:-?ish)?\\s{0,2}\\(?(?:${unitNames
    .map((unit) => `(${[anyLanguage(unitWords[unit]), signs[unit]].filter(Boolean).join('|')})`)
    .join('|')})(?:(?<=["'])|(?=x\\s?\\d|\\P{Script=Latin}|$))`,
  'iuy',
);

/** One number of a measurement in the folded text, with the size of the step that it was stated to. */
export interface Term {
  start: number;
  end: number;
  value: number;
  step: number;
  unit: Unit | null;
  dimension: Dimension | null;
  /** Whether a label letter or word names the dimension. */
  letter: string | null;
}

/** "Carryall 30 in brown": before other words than these, "in" is no inch. */
const inAsWord = /^ +(?!(?:wide|high|tall|deep|long|across|strap|drop|handle|x|by|w|h|d|l|and|at|approx)\b)\p{L}/iu;

const rangeJoint = new RegExp(`^\\s?(?:[-–—~〜～]|${anyLanguage(lengthToLength)})\\s?(?=\\d)`, 'iu');

/** "110-120 cm": the middle, to half the way between the ends; only where a unit stands behind the upper one. */
function upTo(text: string, low: Size): Size | null {
  const joint = rangeJoint.exec(text.slice(low.end, low.end + 8));
  const high = joint ? readSize(text, low.end + joint[0].length) : null;
  if (!high || high.value <= low.value || high.value > 2 * low.value) return null;
  unitPattern.lastIndex = high.end;
  if (!unitPattern.test(text)) return null;
  return { value: (low.value + high.value) / 2, step: high.value - low.value + high.step, end: high.end };
}

/** "1 m 20": the centimetres behind the metres. */
const centimetresBehind = /^(?:(\d\d)(?![\d/]|[.,]\d|\s?[x×%€"])|\s(\d\d)(?![\d/]|[.,]\d|\s?(?:x|×|%|€|"|\p{L})))/u;

const quoted = /(?:^|[\s:(])"[^"\n]{0,20}$/;

/** The number and unit at `position`; null when no number of a size stands there. */
export function readTerm(text: string, position: number): Term | null {
  const alone = readSize(text, position);
  if (!alone) return null;
  const { value, step, end } = upTo(text, alone) ?? alone;
  unitPattern.lastIndex = end;
  const found = unitPattern.exec(text);
  // A code in quotes ends with one that is no inch.
  const unit = found?.[0] === '"' && quoted.test(text.slice(Math.max(0, position - 24), position)) ? null : found;
  const behind = unit && /m/i.test(unit[5] ?? '') ? centimetresBehind.exec(text.slice(unitPattern.lastIndex)) : null;
  if (unit && behind && step === 1) {
    const metres = value + Number(behind[1] ?? behind[2]) / 100;
    const last = end + unit[0].length + behind[0].length;
    return { start: position, end: last, value: metres, step: 0.01, unit: 'm', dimension: null, letter: null };
  }
  const preposition =
    unit !== null &&
    /^\s*in$/i.test(unit[0]) &&
    inAsWord.test(text.slice(end + unit[0].length, end + unit[0].length + 12));
  const index = unit && !preposition ? unit.slice(1).findIndex((part) => part !== undefined) : -1;
  return {
    start: position,
    end: end + (unit && !preposition ? unit[0].length : 0),
    value,
    step,
    unit: unitNames[index] ?? null,
    dimension: null,
    letter: null,
  };
}
