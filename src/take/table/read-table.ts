import { type Cell, headOf, textOfCell } from '../page/grid';
import type { Context } from '../propose';
import { plantCodes } from '../said/code';
import { exactDates } from '../said/example';
import { type Role, rolesNamed } from '../said/label';
import { formTold } from '../said/layout-referred';
import { namesMonth } from '../said/month';
import { partNamed } from '../said/part';
import { readPeriods } from '../said/period';
import type { Proposal } from '../types';
import { tellingFinder } from '../words';
import { byCells, columnRoles, isLetterColumn } from './columns';
import { withoutDitto } from './ditto';
import { areFacts, factsOfMaker, readFactsTable } from './facts';
import { rolesByCells } from './frames';
import { type Headed, headedRows, isHeader, isSection } from './heads';
import { systemsByPlaces } from './places';
import { pricedColumns, pricesOfRow, readPriceGrid } from './prices';
import { nothing, type Row } from './row';
import { readRow } from './rows';
import { partedTables, withoutMarks } from './sheet';
import { areOf, filledOf } from './sorts';
import { isSideways, isTurned, sideways, turned, withLabels } from './turned';
import { lettersOfSeries, unfolded } from './unfolded';

const plantWords = tellingFinder('plant');

export interface Table {
  rows: Cell[][];
  caption: string;
}

const isDay = (text: string): boolean =>
  /^(?:\p{L}{2,10}\.?,?\s)?\d{1,2}\.?(?:st|nd|rd|th|er)?\s(?:de\s)?\p{L}{3,10}\.?$/u.test(text) &&
  namesMonth(text.replace(/^.{0,16}\s/u, ''));
/** Days without a year, or all of one year, as a calendar has them. */
function isOfDays(texts: readonly string[]): boolean {
  if (texts.length < 2) return false;
  const years = new Set(texts.map((text) => (text.length <= longestDay ? dayOf(text)?.slice(0, 4) : undefined)));
  return texts.every(isDay) || (years.size === 1 && !years.has(undefined));
}
const longestDay = 24;
/** A day with its year (ISO 8601), and nothing less exact. */
const dayOf = (text: string): string | undefined =>
  exactDates(text, someDay).find(({ reads }) => reads.length === 10)?.reads;
const someDay = '2000-01-01';

/** What a table proposes: rows by their columns' roles, or facts of one model beside their labels. */
export function readTable({ rows: written, caption }: Table, around: Context, day: string): Proposal[] {
  const rows = withoutMarks(written);
  const parts = partedTables(rows);
  if (parts)
    return parts.flatMap((part) =>
      readTable({ rows: part.rows, caption: `${caption} ${part.caption}`.trim() }, around, day),
    );
  const context = caption === '' ? around : { ...around, above: `${caption} ${around.above}` };
  const body = withoutDitto(rows.filter((row) => row.length > 0));
  const width = Math.max(0, ...body.map((row) => row.length));
  const told = width === 2 ? toldAtSide(body, context) : null;
  if (told) return told;
  const byPlaces = systemsByPlaces(body, context, day);
  if (byPlaces) return byPlaces;
  const turnedRows = rowsAsTurned(body, context.makers);
  if (turnedRows) return readTable({ rows: turnedRows, caption }, around, day);
  const headed = headedRows(body, width);
  const prices = readPriceGrid((body[0] ?? []).map(textOfCell), body.slice(1), context);
  const isOnlyPrices = !headed.headers.some((header) => rolesNamed(header).some((role) => besidePrices.has(role)));
  if (prices && isOnlyPrices) return prices;
  const read = readRows(headed, width, context, day);
  return prices ? [...prices, ...read] : read;
}

/** Two columns of labels and what they say, of one model or of a maker; null where they are rows of a table. */
function toldAtSide(body: readonly Cell[][], context: Context): Proposal[] | null {
  const ofModel = body.every((row) => row[0]!.head && !row[1]?.head);
  const isHeaded = body[0] !== undefined && !isSection(body[0]) && isHeader(body[0]);
  const isOfFacts = ofModel || (!isHeaded && areFacts(body.map(([label]) => textOfCell(label))));
  const facts = isOfFacts ? readFactsTable(body, context) : [];
  const told = facts.length > 0 ? facts : factsOfMaker(body, context);
  return ofModel || told.length > 0 ? told : null;
}

/** A table that lies otherwise than in rows of one thing each, as such rows; null where it does not. */
function rowsAsTurned(body: Cell[][], makers: readonly string[]): Cell[][] | null {
  const letters = lettersOfSeries(body);
  if (letters) return letters;
  if (isTurned(body, makers)) return turned(body, makers);
  const matrix = unfolded(body);
  if (matrix) return matrix;
  const labelled = withLabels(body);
  return isSideways(labelled) ? sideways(labelled) : null;
}

/** Whether a head is of dates of codes: those may be of one year all. */
const tellsDates = (header: string): boolean =>
  rolesNamed(header).some((role) => role === 'reads' || role === 'example');

/** The columns of a table by what they tell. */
interface Columns {
  taken: (Role | null)[];
  /** Those of codes that are headed by the time in which they were used. */
  dated: ReadonlySet<number>;
  parts: ReadonlySet<number>;
  /** Those of prices, each with the year that heads it. */
  prices: ReadonlyMap<number, number>;
}

function columnsOf(
  { headers, above, known }: Headed,
  told: readonly Cell[][],
  width: number,
  context: Context,
): Columns {
  const ofPlants = plantWords(context.above).length > 0;
  const named = known ? columnRoles(headers, told, ofPlants) : headers.map(() => null);
  const dated = codesByPeriod(headers, told, named);
  for (const column of dated) named[column] = 'code';
  const texts = Array.from({ length: width }, (_, column) => told.map((row) => textOfCell(row[column])));
  // "Pattern: BMMJJ" is of a code.
  const areSigns = (column: number) => filledOf(texts[column]!).every((text) => /^[\p{Lu}\d\s/.-]{2,16}$/u.test(text));
  const parts = new Set(
    headers.flatMap((header, column) => (!named[column] && partNamed(header) && !areSigns(column) ? [column] : [])),
  );
  const prices = pricedColumns(headers, above, texts, named);
  const closed = new Set([...parts, ...prices.keys(), ...dated]);
  const hints = { ofPlants, ofPart: context.part !== null, ofPrices: prices.size > 0 };
  const isOpen = named.some((role, column) => role === null && !closed.has(column));
  const inferred = isOpen ? rolesByCells(texts, named, closed, hints) : null;
  const taken = withDepths(inferred ?? (known ? named : withoutHeader(texts, ofPlants)), above, texts);
  return { taken, dated, parts, prices };
}

/** Bare lengths under the head that sizes stand under as well are the side that those leave out. */
function withDepths(taken: (Role | null)[], above: readonly string[], columns: readonly string[][]): (Role | null)[] {
  const size = taken.indexOf('size');
  const over = above[size];
  if (!over || taken.includes('depth')) return taken;
  const beside = taken.flatMap((role, at) => (role === null && above[at] === over ? [at] : []));
  const [depth, ...more] = beside.filter((at) =>
    filledOf(columns[at]!).every((text) => /^\d{1,3}(?:[.,]\d)?$/.test(text)),
  );
  return depth === undefined || more.length > 0 ? taken : taken.with(depth, 'depth');
}

function readRows(headed: Headed, width: number, context: Context, day: string): Proposal[] {
  const { headers, above, data } = headed;
  const told = data.filter((row) => !isSection(row));
  // A calendar's codes are of its events.
  if (headers.some((head, column) => !tellsDates(head) && isOfDays(told.map((row) => textOfCell(row[column])))))
    return [];
  const { taken, dated, parts, prices } = columnsOf(headed, told, width, context);
  let section: string | null = null;
  let { earlier } = context;
  const ofTime = taken.indexOf('period');
  return data.flatMap((row, at): Proposal[] => {
    if (isSection(row)) {
      section = textOfCell(row.find(({ words }) => words !== null));
      return [];
    }
    const rowsOfOne = groupsOf(taken, dated).flatMap((columns) => {
      const known: Row = { cells: new Map(), headers: new Map(), parts: [], section, whole: row };
      const period = columns.find((column) => dated.has(column));
      if (period !== undefined) known.cells.set('period', [headOf(headers[period]!)]);
      for (const column of columns) {
        const role = taken[column]!;
        const cell = row[column];
        if (!cell) continue;
        known.cells.set(role, [...(known.cells.get(role) ?? []), cell]);
        const [header, over] = [headers[column] ?? '', above[column] ?? ''];
        known.headers.set(role, header === over ? header : `${over} ${header}`);
      }
      for (const [column, header] of headers.entries()) {
        const cell = row[column];
        if (!parts.has(column) || !cell || goesOn(data[at - 1], column, cell)) continue;
        const last = data.findLastIndex((other, index) => index >= at && goesOn(other, column, cell));
        known.parts.push({ header, cell, ...(last > at && ofTime !== -1 && { until: data[last]![ofTime]! }) });
      }
      const read = readRow(known, { ...context, earlier }, day);
      earlier = formTold(read) ?? earlier;
      return read;
    });
    return [...rowsOfOne, ...pricesOfRow(row, taken.indexOf('model'), prices, headed, context)];
  });
}

/** Whether a row has the cell of another one, which fills several: what it says is of all their times. */
const goesOn = (row: readonly Cell[] | undefined, column: number, { words, span }: Cell): boolean =>
  words !== null && span > 1 && row?.[column]?.words === words;

/** What may stand beside prices by year in one table. */
const besidePrices: ReadonlySet<Role> = new Set(['size', 'period', 'from', 'until', 'where']);

function withoutHeader(columns: readonly string[][], ofPlants: boolean): (Role | null)[] {
  const taken: (Role | null)[] = [];
  // "A | 1961 | E | 1965": they may repeat.
  for (const [column, all] of columns.entries()) {
    const texts = all.filter((text) => text !== '');
    const next = (columns[column + 1] ?? []).filter((text) => text !== '');
    taken.push(isLetterColumn(texts, next) ? 'letter' : byCells(texts, taken, ofPlants));
  }
  // Towns beside codes, of which it stays open which: the codes are theirs, and tell nothing without them.
  const isOpen = taken.some((role, column) => role === null && areOf('place', columns[column]!));
  return taken.includes('code') && !taken.includes('place') && isOpen ? taken.map(() => null) : taken;
}

/** Columns of codes that are headed by the period in which they were used: "1973–1990", "1991–2011". */
function codesByPeriod(
  headers: readonly string[],
  rows: readonly Cell[][],
  taken: readonly (Role | null)[],
): Set<number> {
  if (!taken.includes('plant') && !taken.includes('place')) return new Set();
  return new Set(
    headers.flatMap((header, column) => {
      const [period, ...more] = taken[column] && taken[column] !== 'code' ? [] : readPeriods(header);
      const texts = rows.map((row) => textOfCell(row[column])).filter((text) => !nothing.test(text));
      const ofCodes = texts.length > 0 && texts.every((text) => plantCodes(text) !== null);
      return period && period.form !== 'year' && more.length === 0 && ofCodes ? [column] : [];
    }),
  );
}

/** Columns that repeat ("Year, Letter, Year, Letter") are rows beside each other; a place may be told in two columns. */
function groupsOf(taken: readonly (Role | null)[], dated: ReadonlySet<number>): number[][] {
  const known = taken.flatMap((role, column) => (role ? [{ role, column }] : []));
  if (dated.size > 0) {
    const shared = known.flatMap(({ column }) => (dated.has(column) ? [] : [column]));
    return [...dated].map((column) => [...shared, column]);
  }
  const first = known[0]?.role;
  const again = known.findIndex(({ role }, index) => index > 0 && role === first);
  const repeats =
    again > 1 && known.length % again === 0 && known.every(({ role }, index) => role === known[index % again]!.role);
  if (!repeats) return [known.map(({ column }) => column)];
  return Array.from({ length: known.length / again }, (_, group) =>
    known.slice(group * again, (group + 1) * again).map(({ column }) => column),
  );
}
