import { dayOfYearSpan, daySpan, isoWeekSpan, monthSpan, quarterSpan, type Span, yearSpan } from '../../../src/span';
import { chanceFrom } from '../../reference/number-systems';
import type { DrawnList } from './lists';
import { drawPiece, type Piece, type Truth } from './systems';

/*
 * Whether a list leaves open which system wrote it: some other way of writing a date, at whatever places of the code,
 * reads all of its right examples as well and as exactly as the truth, and further codes otherwise. Plain enumeration,
 * with none of the teacher's code, and no thought of which is likelier.
 */

type Code = string;
type Row = DrawnList['rows'][number];
const bare = (code: string): Code => code.replace(/[^A-Z0-9]/g, '');

interface YearWay {
  places: number[];
  means(code: Code, year: number): boolean;
}
interface PartWay {
  places: number[];
  spanOf(code: Code, year: number): Span | null;
}

const number = (code: Code, places: readonly number[]): number => {
  const text = places.map((place) => code[place] ?? '?').join('');
  return /^[0-9]+$/.test(text) ? Number(text) : -1;
};
const spans = new Map<string, Span | null>();
/** A part's span, worked out once: the same ones are asked for again and again. */
function once(part: 'week' | 'month' | 'quarter' | 'day', year: number, value: number): Span | null {
  const key = `${part} ${year} ${value}`;
  const known = spans.get(key);
  if (known !== undefined) return known;
  const make = { week: isoWeekSpan, month: monthSpan, quarter: quarterSpan, day: dayOfYearSpan }[part];
  const span = make(year, value);
  spans.set(key, span);
  return span;
}

const inRange = (value: number, last: number) => value >= 1 && value <= last;

function yearWays(length: number, codes: readonly Code[], truth: Truth): YearWay[] {
  const ways: YearWay[] = [];
  const at = [...Array(length).keys()];
  for (const one of at) {
    for (const other of at)
      if (one !== other)
        ways.push({ places: [one, other], means: (code, year) => number(code, [one, other]) === year % 100 });
    ways.push({ places: [one], means: (code, year) => number(code, [one]) === year % 10 });
    const four = [one, one + 1, one + 2, one + 3];
    if (one + 4 <= length) ways.push({ places: four, means: (code, year) => number(code, four) === year });
    if (!codes.every((code) => /[A-Z]/.test(code[one] ?? '1'))) continue;
    const usual = [
      'ABCDEFGHIJKLMNOPQRSTUVWXYZ',
      'ABCDEFGHJKLMNPRSTUVWXYZ',
      'ABCDEFGHKLMNPRSTVWXY',
      'ABCDEFGHIJKLMNOPQRSTU',
    ];
    for (const letters of truth.cycle ? [...usual, truth.cycle] : usual)
      for (let start = 0; start < letters.length; start++)
        ways.push({
          places: [one],
          means: (code, year) =>
            letters.includes(code[one]!) && letters.indexOf(code[one]!) === (year + start) % letters.length,
        });
  }
  return ways;
}

function partWays(length: number): PartWay[] {
  const ways: PartWay[] = [{ places: [], spanOf: (_, year) => yearSpan(year) }];
  const listed = ['123456789', '123456789OND', 'ABCDEFGHIJKL', 'ABCDEFGHJKLM', 'ABCDEFGHKLMN'];
  for (let one = 0; one < length; one++) {
    for (const list of listed)
      ways.push({
        places: [one],
        spanOf: (code, year) => (list.includes(code[one]!) ? once('month', year, list.indexOf(code[one]!) + 1) : null),
      });
    for (const list of ['1234', 'ABCD'])
      ways.push({
        places: [one],
        spanOf: (code, year) =>
          list.includes(code[one]!) ? once('quarter', year, list.indexOf(code[one]!) + 1) : null,
      });
    const three = [one, one + 1, one + 2];
    if (one + 3 <= length) ways.push({ places: three, spanOf: (code, year) => once('day', year, number(code, three)) });
    for (let other = 0; other < length; other++) {
      if (one === other) continue;
      const places = [one, other];
      const month = (code: Code) => number(code, places);
      ways.push({
        places,
        spanOf: (code, year) => (inRange(month(code), 12) ? once('month', year, month(code)) : null),
      });
      ways.push({ places, spanOf: (code, year) => once('week', year, month(code)) });
    }
  }
  return ways;
}

function dayWays(length: number): PartWay[] {
  const pairs = Array.from({ length }, (_, one) => Array.from({ length }, (_, other) => [one, other] as const)).flat();
  const apart = pairs.filter(([one, other]) => one !== other);
  return apart.flatMap((month) =>
    apart.flatMap((day): PartWay[] => {
      if (day.some((place) => month.includes(place))) return [];
      const spanOf = (code: Code, year: number) => {
        const [m, d] = [number(code, month), number(code, day)];
        if (!inRange(m, 12) || !inRange(d, 28)) return null;
        return daySpan(`${year}-${String(m).padStart(2, '0')}-${String(d).padStart(2, '0')}`);
      };
      return [{ places: [...month, ...day], spanOf }];
    }),
  );
}

const length = ({ from, to }: Span) => Date.parse(to!) - Date.parse(from!);
const meets = ([from, to]: Row['stated'], span: Span) =>
  (to === null || span.from! <= to) && (from === null || span.to! >= from);

/** Years round an era, because codes of one digit may be of several. */
const yearsOf = ({ from, to }: Truth) => Array.from({ length: to - from + 3 }, (_, step) => from - 1 + step);

/** Whether another way to write the date explains as much of the era as the truth, and reads other codes otherwise. */
function eraIsOpen(truth: Truth, right: readonly Row[], all: readonly Row[], seed: number): boolean {
  if (right.length < 3 || truth.running) return right.length < 5;
  const rows = all.filter(({ code }) => code !== '');
  const codes = rows.map(({ code }) => bare(code));
  const size = Math.min(...codes.map((code) => code.length));
  const years = yearsOf(truth);
  const daily = truth.layout.some((slot) => 'day' in slot);
  const parts = daily ? [...partWays(size), ...dayWays(Math.min(size, 7))] : partWays(size);
  const chance = chanceFrom(seed + 77_000_000);
  const probes: (Piece & { day: string })[] = Array.from({ length: 40 }, () => drawPiece(truth, chance));
  const spanOf = (year: YearWay, part: PartWay, code: Code) =>
    years.flatMap((one) => {
      const span = year.means(code, one) ? part.spanOf(code, one) : null;
      return span ? [span] : [];
    });
  const explains = (year: YearWay, part: PartWay, row: Row) =>
    spanOf(year, part, bare(row.code)).some(
      (span) => meets(row.stated, span) && length(span) <= length(row.piece.span),
    );
  for (const year of yearWays(size, codes, truth)) {
    const plausible = rows.filter((row) => years.some((one) => year.means(bare(row.code), one))).length;
    if (plausible < right.length) continue;
    for (const part of parts) {
      if (part.places.some((place) => year.places.includes(place))) continue;
      let missed = 0;
      for (const row of rows) {
        if (!explains(year, part, row)) missed++;
        if (missed > rows.length - right.length) break;
      }
      if (missed > rows.length - right.length) continue;
      // One that says the same and something besides (a year of one digit for one of two) is no other system.
      const same = probes.every(({ code, span }) =>
        spanOf(year, part, bare(code)).some((one) => one.from === span.from && one.to === span.to),
      );
      if (!same) return true;
    }
  }
  return cycleIsOpen(truth, right);
}

/** Whether letters between two known ones may be skipped in more than one way, in a cycle of the maker's own. */
function cycleIsOpen(truth: Truth, right: readonly Row[]): boolean {
  if (
    !truth.cycle ||
    ['ABCDEFGHIJKLMNOPQRSTUVWXYZ', 'ABCDEFGHJKLMNPRSTUVWXYZ', 'ABCDEFGHKLMNPRSTVWXY'].includes(truth.cycle)
  )
    return false;
  const seen = [...new Set(right.map(({ piece }) => piece.letter!))].sort();
  return seen.slice(1).some((letter, at) => {
    const between = letter.charCodeAt(0) - seen[at]!.charCodeAt(0) - 1;
    const steps = truth.cycle!.indexOf(letter) - truth.cycle!.indexOf(seen[at]!) - 1;
    return steps !== between && steps !== 0;
  });
}

/** Whether the truth itself leaves the list open. */
export function isOpenList({ eras, rows, seed }: DrawnList): boolean {
  return eras.some((truth, era) => {
    const own = rows.filter((row) => row.era === era);
    const right = own.filter(({ wrong }) => !wrong);
    return eraIsOpen(truth, right, own, seed);
  });
}
