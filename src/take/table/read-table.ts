import { type Cell, headOf, nobody, textOfCell } from '../page/grid';
import type { Context } from '../propose';
import { plantCodes } from '../said/code';
import { isLabel, type Role, rolesNamed } from '../said/label';
import { namesMonth } from '../said/month';
import { partNamed } from '../said/part';
import { readPeriods } from '../said/period';
import { isPeriod } from '../said/used-text';
import { opensPlaceOnPiece } from '../said/where';
import type { Proposal } from '../types';
import { tellingFinder } from '../words';
import { byCells, columnRoles, isLetterColumn, yearNamed } from './columns';
import { areFacts, factsOfMaker, readFactsTable } from './facts';
import { readPriceGrid } from './prices';
import { nothing, type Row } from './row';
import { readRow } from './rows';
import { unfolded } from './unfolded';

const plantWords = tellingFinder('plant');

export interface Table {
  rows: Cell[][];
  caption: string;
}

/** One cell over the whole row: a heading inside the table. */
const isSection = (row: readonly Cell[]): boolean => {
  const own = row.filter(({ own: first, words }) => first && words);
  return own.length === 1 && own[0]!.span >= Math.max(2, row.length - 1);
};

function isHeader(row: readonly Cell[]): boolean {
  const filled = row.filter(({ words }) => words !== null);
  if (filled.length < 2 || opensAsData(textOfCell(filled[0]))) return false;
  const named = filled.filter(
    (cell) => isLabel(textOfCell(cell)) || yearNamed(textOfCell(cell)) !== null || isPeriod(textOfCell(cell)),
  ).length;
  // Two columns that the page itself heads: "No. | Workshop".
  const fewest = filled.length === 2 && filled.every(({ head }) => head) ? 1 : 2;
  return named >= fewest && named >= filled.length / 2;
}

const isDay = (text: string): boolean =>
  /^(?:\p{L}{2,10}\.?,?\s)?\d{1,2}\.?(?:st|nd|rd|th|er)?\s(?:de\s)?\p{L}{3,10}\.?$/u.test(text) &&
  namesMonth(text.replace(/^.{0,16}\s/u, ''));
/** Days without a year, as a calendar has them. */
const isOfDays = (texts: readonly string[]): boolean => texts.length > 1 && texts.every(isDay);

/** A period, a code or a number opens a row of data. */
const opensAsData = (text: string): boolean =>
  isPeriod(text) || /^(?:[A-Z]{1,2}\d?|\d{1,3}|[A-Z]{0,3}\d{3,8}[A-Z]{0,3})$/.test(text);

/** What a table proposes: rows by their columns' roles, or facts of one model beside their labels. */
export function readTable({ rows, caption }: Table, around: Context, day: string): Proposal[] {
  const context = caption === '' ? around : { ...around, above: `${caption} ${around.above}` };
  const body = rows.filter((row) => row.length > 0);
  const at = body.slice(0, 4).findIndex((row) => !isSection(row) && isHeader(row));
  const width = Math.max(0, ...body.map((row) => row.length));
  if (width === 2) {
    const ofModel = body.every((row) => row[0]!.head && !row[1]?.head);
    const labels = body.map(([label]) => textOfCell(label));
    const facts = ofModel || (at !== 0 && areFacts(labels)) ? readFactsTable(body, context) : [];
    const told = facts.length > 0 ? facts : factsOfMaker(body, context);
    if (ofModel || told.length > 0) return told;
  }
  if (isTurned(body, context.makers)) return readTable({ rows: turned(body, context.makers), caption }, around, day);
  const matrix = unfolded(body);
  if (matrix) return readTable({ rows: matrix, caption }, around, day);
  const labelled = withLabels(body);
  if (isSideways(labelled)) return readTable({ rows: sideways(labelled), caption }, around, day);
  const above = at < 0 ? [] : body[at]!.map(textOfCell);
  // A heading over several columns is told apart below it: "Size" over "Width", "Height".
  const below = at >= 0 && isSecondHeader(body[at]!, body[at + 1]) ? body[at + 1]!.map(textOfCell) : null;
  const headers =
    at < 0 ? Array.from({ length: width }, () => '') : above.map((text, column) => below?.[column] || text);
  const data = body.slice(at + (below ? 2 : 1));
  const prices = readPriceGrid((body[0] ?? []).map(textOfCell), body.slice(1), context);
  const isOnlyPrices = !headers.some((header) => rolesNamed(header).some((role) => besidePrices.has(role)));
  if (prices && isOnlyPrices) return prices;
  const told = data.filter((row) => !isSection(row));
  const ofPlants = plantWords(context.above).length > 0;
  const taken = at < 0 ? withoutHeader(told, width, ofPlants) : columnRoles(headers, told, ofPlants);
  // A calendar's codes are of its events.
  if (headers.some((_, column) => isOfDays(told.map((row) => textOfCell(row[column]))))) return [];
  const dated = codesByPeriod(headers, told, taken);
  for (const column of dated) taken[column] = 'code';
  const parts = new Set(headers.flatMap((header, column) => (!taken[column] && partNamed(header) ? [column] : [])));
  let section: string | null = null;
  const read = data.flatMap((row): Proposal[] => {
    if (isSection(row)) {
      section = textOfCell(row.find(({ words }) => words !== null));
      return [];
    }
    return groupsOf(taken, dated).flatMap((columns) => {
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
      for (const [column, header] of headers.entries())
        if (parts.has(column) && row[column]) known.parts.push({ header, cell: row[column] });
      return readRow(known, context, day);
    });
  });
  return prices ? [...prices, ...read] : read;
}

/** What heads stand for, as a page may head them: makers, workshops by their codes, or models. */
function subjectOf(heads: readonly Cell[], makers: readonly string[]): 'Maker' | 'Code' | 'Model' {
  if (heads.every((cell) => makers.includes(textOfCell(cell)))) return 'Maker';
  return heads.every((cell) => plantCodes(textOfCell(cell))?.length === 1) ? 'Code' : 'Model';
}

/** Labels down the side, and along the top what they are told of: models, or makers. */
function isTurned(rows: readonly Cell[][], makers: readonly string[]): boolean {
  const [[, ...top] = [], ...others] = rows;
  if (top.length < 2 || others.length < 2) return false;
  if (
    top.some((cell) => isLabel(textOfCell(cell)) || yearNamed(textOfCell(cell)) !== null || isPeriod(textOfCell(cell)))
  )
    return false;
  const ofOthers = subjectOf(top, makers) !== 'Model';
  // What has a form of the code, or an example of it, is a time and no model.
  const ofEras = others.some(([label]) =>
    rolesNamed(textOfCell(label)).some((role) => role === 'format' || role === 'example'),
  );
  if (ofEras && !ofOthers) return false;
  const labels = others.filter((row) => (ofOthers ? isLabel(textOfCell(row[0])) : isFactOfModel(row))).length;
  return labels >= others.length * 0.6;
}

/** A label at the side that tells something of each model: a size, years, a part, where the code sits. */
function isFactOfModel([label, ...cells]: readonly Cell[]): boolean {
  const named = rolesNamed(textOfCell(label));
  if (named.some((role) => turnable.has(role)) || partNamed(textOfCell(label)) !== null) return true;
  return named.includes('code') && cells.every((cell) => !cell.words || opensPlaceOnPiece(textOfCell(cell)));
}

/** Rows by their labels: a first row without one heads the columns by periods, or only numbers them ("First series"). */
function withLabels(rows: readonly Cell[][]): readonly Cell[][] {
  const [[label, ...cells] = [], ...others] = rows;
  if (textOfCell(label) !== '') return rows;
  const dated = cells.length > 0 && cells.every((cell) => readPeriods(textOfCell(cell)).length === 1);
  return dated ? [[headOf('Period'), ...cells.map((cell) => ({ ...cell, head: false }))], ...others] : others;
}

const isHeadedAtSide = ([label]: readonly Cell[]): boolean => label?.head === true;

/** The heads of the rows say what stands beside them, and no row says it of the columns. */
const isSideways = (rows: readonly Cell[][]): boolean =>
  rows.length >= 2 &&
  (rows[0]?.length ?? 0) >= 3 &&
  isLabel(textOfCell(rows[0]![0])) &&
  rows.filter(([label]) => isLabel(textOfCell(label))).length >= rows.length * (rows.every(isHeadedAtSide) ? 0.6 : 1) &&
  !rows.some(([, ...cells]) => cells.some((cell) => cell.head)) &&
  // A lone letter may be one of dates as well.
  !rows[0]!.slice(1).some((cell) => textOfCell(cell).length > 2 && isLabel(textOfCell(cell)));

const sideways = (rows: readonly Cell[][]): Cell[][] =>
  Array.from({ length: Math.max(...rows.map((row) => row.length)) }, (_, column) =>
    rows.map((row) => row[column] ?? nobody),
  );

function isSecondHeader(first: readonly Cell[], second: readonly Cell[] | undefined): boolean {
  if (!second || !isHeader(second)) return false;
  return first.some(
    ({ span, own }, at) => own && span > 1 && second[at] !== undefined && second[at].words !== first[at]!.words,
  );
}

/** What may stand beside prices by year in one table. */
const besidePrices: ReadonlySet<Role> = new Set(['size', 'period', 'from', 'until', 'where']);

const turnable = new Set<Role>(['size', 'period', 'from', 'until', 'width', 'height', 'depth', 'where', 'price']);

/** Models, makers or workshops down the side, headed in the corner. */
function turned(rows: readonly Cell[][], makers: readonly string[]): Cell[][] {
  const [[, ...labels] = [], ...models] = sideways(rows);
  const subject = subjectOf(
    models.map(([name]) => name!),
    makers,
  );
  return [[headOf(subject), ...labels], ...models];
}

function withoutHeader(rows: readonly Cell[][], width: number, ofPlants: boolean): (Role | null)[] {
  const columns = Array.from({ length: width }, (_, column) =>
    rows.map((row) => textOfCell(row[column])).filter((text) => text !== ''),
  );
  const taken: (Role | null)[] = [];
  // "A | 1961 | E | 1965": they may repeat.
  for (const [column, texts] of columns.entries())
    taken.push(isLetterColumn(texts, columns[column + 1] ?? []) ? 'letter' : byCells(texts, taken, ofPlants));
  return taken;
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
