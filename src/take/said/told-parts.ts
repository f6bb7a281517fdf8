import type { Layout, Slot } from '../../maker/types';
import { foldWords } from '../../text';
import { tellingFinder } from '../words';
import { asFolded } from './as-folded';
import { type DateUnit, isDateUnit, slotOf } from './layout';
import { readCounts } from './number';
import { unitsNamed } from './unit-words';

const numberWords = tellingFinder('number-1', 'number-2', 'number-3', 'number-4');
const positions = tellingFinder('ordinal-1', 'last-ones', 'put-before', 'put-behind');

type Unit = DateUnit | 'plant' | 'serial';
interface Token {
  start: number;
  end: number;
  unit?: Unit;
  count?: { of: 'digits' | 'letters'; count: number };
  /** Whether it is told by itself: what follows says nothing of it. */
  alone?: true;
}

/** A part of a code as a text tells it: what it is, how long, and where the text says that it stands. */
interface ToldPart {
  slot: Slot;
  start: number;
  /** First, last, or in the order in which it is told. */
  place: -1 | 0 | 1;
}

/** What is counted and what it is, in the order of the text. */
function tokensOf(folded: string): Token[] {
  const units = unitsNamed(folded).map(
    ({ value, foldedStart, foldedEnd }): Token => ({ start: foldedStart, end: foldedEnd, unit: value }),
  );
  const counts = readCounts(folded).map(({ of, count, start, end }): Token => ({ start, end, count: { of, count } }));
  const all = [...units, ...counts, ...lettersAlone(folded, counts)].sort((a, b) => a.start - b.start);
  return [...all, ...countsOnly(folded, all)].sort((a, b) => a.start - b.start);
}

/** "Letter, two digits of the week": one, where it is told in the singular and uncounted beside what is counted. */
function lettersAlone(folded: string, counts: readonly Token[]): Token[] {
  if (!counts.some(({ count }) => count?.of === 'digits') || counts.some(({ count }) => count?.of === 'letters'))
    return [];
  return oneLetter(asFolded(folded))
    .filter(({ foldedEnd }) => /^\s?[,、]/.test(folded.slice(foldedEnd, foldedEnd + 2)))
    .map(({ foldedStart, foldedEnd }) => ({
      start: foldedStart,
      end: foldedEnd,
      count: { of: 'letters', count: 1 },
      alone: true as const,
    }));
}
const oneLetter = tellingFinder('one-letter');

/** "Two digits for the week and two for the year": a number right before a unit counts what was counted before. */
function countsOnly(folded: string, tokens: readonly Token[]): Token[] {
  const numbers = numberWords(asFolded(folded));
  const first = tokens.find(({ count }) => count?.of === 'digits');
  return tokens.flatMap(({ unit, start }): Token[] => {
    const counted = tokens.some((one) => one.count && one.end <= start && start - one.end <= farthestUnit);
    const number = numbers.find(({ foldedEnd }) => foldedEnd <= start && start - foldedEnd <= farthestUnit);
    if (!unit || counted || !number || !first || number.foldedStart < first.end) return [];
    const count = Number(number.value.slice('number-'.length));
    return [{ start: number.foldedStart, end: number.foldedEnd, count: { of: 'digits', count } }];
  });
}
const farthestUnit = 12;

/** A count and what it is of, where so many signs can write it. */
function joined(one: Token | undefined, other: Token | undefined): Slot | null {
  const count = one?.count ?? other?.count;
  const unit = one?.unit ?? other?.unit;
  if (!count || !unit || one?.alone || (one?.count && other?.count)) return null;
  if (count.of === 'letters') return unit === 'plant' ? { plant: count.count } : letterOf(unit, count.count);
  if (unit === 'serial') return { serial: count.count };
  return isDateUnit(unit) ? slotOf(unit, count.count) : unit === 'plant' ? { plant: count.count } : null;
}

const letterOf = (unit: Unit, count: number): Slot | null =>
  unit === 'month' && count === 1 ? { month: 'letter' } : null;

const mostOver = 2;

/** Signs between two words that still tell of one thing. */
const nearest = 40;

/** Where the words of a part say that it stands. */
function placeOf(folded: string, from: number, to: number): -1 | 0 | 1 {
  const said = new Set(
    positions(folded.slice(from, to)).map(({ value }) => (value === 'ordinal-1' || value === 'put-before' ? -1 : 1)),
  );
  const [place] = said;
  return said.size === 1 ? (place as -1 | 1) : 0;
}

/**
 * The layout of a code whose parts are each told with their length: "two digits for the year, a letter for the workshop, two
 * digits for the month". Null where a part is told without one, or the same thing twice.
 */
export function toldParts(text: string): Layout | null {
  const folded = foldWords(text).text;
  const tokens = tokensOf(folded);
  const all = tokens.flatMap(({ count }) => (count?.of === 'digits' ? [count.count] : []));
  const [first, ...others] = all;
  // "Five digits: two for the week, …": the whole, before its parts.
  const counted = others.reduce((sum, one) => sum + one, 0);
  // "Three figures, the first two for the month and the last for the year": what is over is of the unit that is left.
  const tellsLast = positions(folded).some(({ value }) => value === 'last-ones');
  const over = first !== undefined && others.length === 1 && tellsLast ? first - counted : 0;
  const whole = (others.length > 1 && counted === first) || (over > 0 && over <= mostOver);
  const own = whole ? tokens.filter((_, at) => at !== tokens.findIndex(({ count }) => count?.of === 'digits')) : tokens;
  const parts: ToldPart[] = [];
  let taken = over <= 0;
  for (let at = 0; at < own.length; at += 1) {
    const [one, other] = [own[at]!, own[at + 1]];
    const near = other !== undefined && other.start - one.end <= nearest;
    const slot = near ? joined(one, other) : null;
    const start = parts.length === 0 ? 0 : own[at - 1]!.end;
    if (slot) {
      const end = own[at + 2]?.start ?? folded.length;
      parts.push({ slot, start: one.start, place: placeOf(folded, start, Math.min(end, other!.end + nearest / 2)) });
      at += 1;
    } else if (one.count?.of === 'letters')
      parts.push({ slot: { plant: one.count.count }, start: one.start, place: 0 });
    else {
      const left = one.unit && isDateUnit(one.unit) && !taken && over > 0 ? slotOf(one.unit, over) : null;
      if (!left) return null;
      taken = true;
      parts.push({ slot: left, start: one.start, place: placeOf(folded, start, one.end + nearest / 2) });
    }
  }
  const kinds = parts.map(({ slot }) => Object.keys(slot)[0]!);
  if (!taken || parts.length < 2 || new Set(kinds).size !== kinds.length) return null;
  if (!kinds.some((kind) => isDateUnit(kind) || kind === 'serial')) return null;
  return [...parts].sort((a, b) => a.place - b.place || a.start - b.start).map(({ slot }) => slot);
}
