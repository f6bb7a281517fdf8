import { unknownPlace } from '../../place';
import type { Cell } from '../page/grid';
import { plainCode, plantCodes } from '../said/code';
import { readExamples } from '../said/example';
import { type Role, rolesNamed } from '../said/label';
import { readNumberRange } from '../said/number-range';
import { readPeriods } from '../said/period';
import { readPlace } from '../said/place';
import { isPeriod } from '../said/used-text';
import { opensPlaceOnPiece } from '../said/where';
import { tellingFinder } from '../words';
import { areOf, isDated, isNotation, isWholeCode, isYear } from './sorts';

/** Years at the head of a column: the column tells what was so in that year. */
export const yearNamed = (header: string): number | null =>
  /^\s{0,3}(?:1[89]|20)\d\d\s?年?\s{0,3}$/.test(header) ? Number.parseInt(header, 10) : null;

const textsOf = (column: readonly (Cell | undefined)[]): string[] =>
  column.flatMap((cell) => (cell?.words ? [cell.words.text] : [])).slice(0, 40);
const share = (texts: readonly string[], holds: (text: string) => boolean): number =>
  texts.length === 0 ? 0 : texts.filter(holds).length / texts.length;

const isCode = (text: string): boolean => plantCodes(text) !== null;
const units = tellingFinder('year', 'month', 'week', 'no-code', 'serial');
/** "month and year", "no code": how a code is built, under a header that calls it the code. */
const tellsForm = (text: string): boolean => isNotation(text) || (units(text).length > 0 && !isWholeCode(text));
const isYears = (text: string): boolean => readPeriods(text).length > 0 || /^\??[-–—]?$/.test(text);
/** "1966–2005", "since 1979": a time that goes on, whatever stands above it. */
const isSpan = (text: string): boolean => isPeriod(text) && readPeriods(text)[0]!.form !== 'year';
const numberSign = /^(?:n[.º°]?|no\.?|nr\.?|num\.?|#|№)$/iu;
const isOrdinal = (text: string): boolean => /^\d{1,2}$/.test(text);
const isLength = (text: string): boolean => /^\d{1,3}(?:[.,]\d{1,2})?(?:\s|$|["”′]|cm|mm|in)/.test(text);
const isSingle = (text: string): boolean => /^[A-Za-z0-9]$/.test(plainCode(text).code);
const isNumber = (text: string): boolean => readNumberRange(text) !== null;

/** Whether a column's cells can be what its header may mean. */
const fits: Partial<Record<Role, (texts: readonly string[]) => boolean>> = {
  code: (texts) => share(texts, isCode) > 0.6,
  // "Where" is a town, or a place on the piece.
  place: (texts) => share(texts, isCode) < 0.5 && share(texts, opensPlaceOnPiece) < 0.5,
  // "In Betrieb": a time is no workshop, whatever its head is called.
  plant: (texts) => share(texts, isCode) < 0.5 && share(texts, isSpan) < 0.5,
  period: (texts) => share(texts, isYears) > 0.4,
  from: (texts) => share(texts, isYears) > 0.3,
  until: () => true,
  year: (texts) => share(texts, (text) => readPeriods(text).length > 0) > 0.6,
  letter: (texts) => share(texts, isSingle) > 0.8,
  first: (texts) => share(texts, isNumber) > 0.6,
  last: (texts) => share(texts, (text) => isNumber(text) || text.length < 3) > 0.6,
  example: (texts) => share(texts, isWholeCode) > 0.4,
  where: (texts) => share(texts, isCode) < 0.3,
  maker: (texts) => share(texts, (text) => /\d/.test(text)) < 0.5,
  width: (texts) => share(texts, isLength) > 0.6,
  height: (texts) => share(texts, isLength) > 0.6,
  depth: (texts) => share(texts, isLength) > 0.6,
};

/** The role of each column by its header and its cells; null where neither tells. */
export function columnRoles(headers: readonly string[], rows: readonly Cell[][], ofPlants = false): (Role | null)[] {
  const columns = headers.map((_, at) => textsOf(rows.map((row) => row[at])));
  const taken = headers.map((header, at): Role | null => {
    const texts = columns[at]!;
    const named = rolesNamed(header);
    // "Workshop" and "Letters" name codes as well as places: the cells say which.
    if (named.some((role) => ['plant', 'code', 'letter'].includes(role)) && share(texts, isSpan) < 0.5) {
      if (named.includes('letter') && share(texts, isSingle) > 0.8) return 'letter';
      if (named.includes('code') && share(texts, tellsForm) > 0.6) return 'format';
      if (share(texts, isCode) > 0.6) return 'code';
      if (share(texts, isWholeCode) > 0.6 && share(texts, isYear) < 0.6) return 'example';
      if (share(texts, opensPlaceOnPiece) > 0.6) return 'where';
    }
    // "From 4,201 to 9,800": ends of numbers and no years.
    const ofNumbers = (['from', 'until'] as const).find((role) => named.includes(role));
    if (ofNumbers && share(texts, isNumber) > 0.6 && share(texts, isYears) < 0.4)
      return ofNumbers === 'from' ? 'first' : 'last';
    return named.find((role) => fits[role]?.(texts) ?? true) ?? null;
  });
  const placed = taken.includes('place') || taken.includes('plant');
  // "No. | Workshop": numbers of workshops, which the page's codes have to hold.
  const numbers =
    taken.indexOf('first') >= 0 ? taken.indexOf('first') : headers.findIndex((header) => numberSign.test(header));
  if (
    placed &&
    numbers >= 0 &&
    !taken.includes('code') &&
    !taken.includes('last') &&
    share(columns[numbers]!, isOrdinal) > 0.9
  )
    taken[numbers] = 'code';
  // "First | Last" beside a model or a workshop: its years, and no numbers.
  if (placed || taken.includes('model'))
    for (const [role, end] of [
      ['first', 'from'],
      ['last', 'until'],
    ] as const) {
      const at = headers.findIndex((header) => rolesNamed(header)[0] === role);
      if (
        at >= 0 &&
        (taken[at] === role || taken[at] === null) &&
        !taken.includes(end) &&
        share(columns[at]!, isYears) > 0.6
      )
        taken[at] = end;
    }
  // The year right behind a price is that of its list.
  const price = taken.indexOf('price');
  const next = columns[price + 1] ?? [];
  if (price >= 0 && taken[price + 1] === null && !taken.includes('year') && next.length > 0 && next.every(isYear))
    taken[price + 1] = 'year';
  const shown = codesBesideDates(columns, taken);
  if (shown !== null) taken[shown] = 'example';
  const spans = yearsInOrder(columns, taken);
  if (placed && spans) [taken[spans[0]], taken[spans[1]]] = ['from', 'until'];
  const towns = townsOfLetters(columns, taken);
  if (towns !== null) [taken[taken.indexOf('letter')], taken[towns]] = ['code', 'place'];
  const hasPeriod = (['period', 'from', 'until', 'year'] as const).some((role) => taken.includes(role));
  return taken.map((role, at) => {
    const isOfThings = taken.includes('model') || (placed && (taken.includes('code') || taken.includes('letter')));
    if (role === null && !hasPeriod && isOfThings && share(columns[at]!, isSpan) > 0.8) return 'period';
    if (role === null && headers[at] === '') return byCells(columns[at]!, taken, ofPlants);
    // "Letter | Town | Country": a workshop's, where no years stand beside it.
    return role === 'letter' && placed && !taken.includes('year') && !taken.includes('code') ? 'code' : role;
  });
}

/** "Letter | Commune | Opened | Closed": the one open column of places beside letters with their times; theirs are workshops. */
function townsOfLetters(columns: readonly string[][], taken: readonly (Role | null)[]): number | null {
  const isDated = (['period', 'from', 'until'] as const).some((role) => taken.includes(role));
  if (
    !isDated ||
    !taken.includes('letter') ||
    ['year', 'code', 'place', 'plant'].some((role) => taken.includes(role as Role))
  )
    return null;
  const open = columns.flatMap((texts, at) =>
    taken[at] === null && texts.length > 1 && areOf('place', texts) ? [at] : [],
  );
  return open.length === 1 ? open[0]! : null;
}

const beforeDates: ReadonlySet<Role | null> = new Set<Role | null>([null, 'code', 'first', 'letter']);
/** The column of codes beside one of what they mean: each of its cells is dated by the cell beside it. */
function codesBesideDates(columns: readonly string[][], taken: readonly (Role | null)[]): number | null {
  const reads = taken.indexOf('reads');
  if (reads < 0 || taken.includes('example') || taken.includes('format') || taken.includes('model')) return null;
  const dates = columns[reads]!;
  const isDatedBy = (texts: readonly string[]) =>
    texts.length === dates.length &&
    texts.every((code, row) => readExamples(`${code} = ${dates[row]}`, someDay)[0]?.start === 0);
  const found = columns.findIndex((texts, at) => beforeDates.has(taken[at]!) && texts.length > 0 && isDatedBy(texts));
  return found < 0 ? null : found;
}
const someDay = '2000-01-01';

/** Two columns of single years under heads that say nothing known, the first never after the second: a beginning and an end. */
function yearsInOrder(columns: readonly string[][], taken: readonly (Role | null)[]): [number, number] | null {
  const ofTime: readonly (Role | null)[] = ['period', 'from', 'until', 'year'];
  if (taken.some((role) => role !== null && ofTime.includes(role))) return null;
  const open = columns.flatMap((texts, at) =>
    taken[at] === null && texts.length > 1 && texts.every(isYear) ? [{ texts, at }] : [],
  );
  const [first, second, ...more] = open;
  if (!first || !second || more.length > 0 || first.texts.length !== second.texts.length) return null;
  return first.texts.every((year, row) => year <= second.texts[row]!) ? [first.at, second.at] : null;
}

const plants = tellingFinder('plant');
const isKnownPlace = (text: string): boolean => (readPlace(text)?.place ?? unknownPlace) !== unknownPlace;
/** "Works at Bentheim": a town, and that things are made there. */
const isWorkshop = (text: string): boolean => plants(text).length > 0 && readPlace(text, 'cell') !== null;

/** Whether a column without a header is of single signs, and the next one of years: letters of years. */
export const isLetterColumn = (texts: readonly string[], next: readonly string[]): boolean =>
  texts.length > 1 && share(texts, isSingle) > 0.9 && share(next, isYear) > 0.9;

/**
 * What a column without a header tells, by its cells; `ofPlants` is whether the words above the table name workshops: then
 * bare names beside codes are towns.
 */
export function byCells(texts: readonly string[], taken: readonly (Role | null)[], ofPlants = false): Role | null {
  const free = (role: Role) => !taken.includes(role);
  if (texts.length < 2) return null;
  if (taken.at(-1) === 'letter' && share(texts, isYear) > 0.9) return 'year';
  if (free('code') && share(texts, isCode) > 0.8) return 'code';
  if (free('example') && share(texts, isDated) > 0.8) return 'example';
  if (free('format') && share(texts, tellsForm) > 0.8) return 'format';
  if (free('period') && share(texts, isYears) > 0.7) return 'period';
  if (!free('place')) return null;
  if (share(texts, isKnownPlace) > 0.6 || share(texts, isWorkshop) > 0.6) return 'place';
  const towns = ofPlants && taken.includes('code') && share(texts, (text) => readPlace(text, 'cell') !== null) > 0.9;
  return towns ? 'place' : null;
}
