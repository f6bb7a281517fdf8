import { type Cell, headOf, nobody, textOfCell } from '../page/grid';
import { plantCodes } from '../said/code';
import { isLabel, type Role, rolesNamed } from '../said/label';
import { partNamed } from '../said/part';
import { readPeriods } from '../said/period';
import { isPeriod } from '../said/used-text';
import { opensPlaceOnPiece } from '../said/where';
import { yearNamed } from './columns';

/** What heads stand for, as a page may head them: makers, workshops by their codes, or models. */
function subjectOf(heads: readonly Cell[], makers: readonly string[]): 'Maker' | 'Code' | 'Model' {
  if (heads.every((cell) => makers.includes(textOfCell(cell)))) return 'Maker';
  return heads.every((cell) => plantCodes(textOfCell(cell))?.length === 1) ? 'Code' : 'Model';
}

/** Labels down the side, and along the top what they are told of: models, or makers. */
export function isTurned(rows: readonly Cell[][], makers: readonly string[]): boolean {
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
  // "Open since 1949" is a time and labels none.
  if (readPeriods(textOfCell(label)).length > 0) return false;
  if (named.some((role) => turnable.has(role)) || partNamed(textOfCell(label)) !== null) return true;
  return named.includes('code') && cells.every((cell) => !cell.words || opensPlaceOnPiece(textOfCell(cell)));
}

/** Rows by their labels: a first row without one heads the columns by periods, or only numbers them ("First series"). */
export function withLabels(rows: readonly Cell[][]): readonly Cell[][] {
  const [[label, ...cells] = [], ...others] = rows;
  const dated = cells.length > 0 && cells.every((cell) => readPeriods(textOfCell(cell)).length === 1);
  // "Part | 1963–1977 | 1978–1994".
  const isCorner = textOfCell(label) === '' || (dated && rolesNamed(textOfCell(label)).includes('part'));
  if (!isCorner) return rows;
  return dated ? [[headOf('Period'), ...cells.map((cell) => ({ ...cell, head: false }))], ...others] : others;
}

const isHeadedAtSide = ([label]: readonly Cell[]): boolean => label?.head === true;

/** The heads of the rows say what stands beside them, and no row says it of the columns. */
export const isSideways = (rows: readonly Cell[][]): boolean =>
  rows.length >= 2 &&
  (rows[0]?.length ?? 0) >= 3 &&
  isLabel(textOfCell(rows[0]![0])) &&
  // "A | 1966", "D | 1969": letters of years, and no sides of a size.
  rows.some(([label]) => textOfCell(label).length > 1) &&
  rows.filter(([label]) => isLabel(textOfCell(label))).length >= rows.length * (rows.every(isHeadedAtSide) ? 0.6 : 1) &&
  !rows.some(([, ...cells]) => cells.some((cell) => cell.head)) &&
  // A lone letter may be one of dates as well.
  !rows[0]!.slice(1).some((cell) => textOfCell(cell).length > 2 && isLabel(textOfCell(cell)));

export const sideways = (rows: readonly Cell[][]): Cell[][] =>
  Array.from({ length: Math.max(...rows.map((row) => row.length)) }, (_, column) =>
    rows.map((row) => row[column] ?? nobody),
  );

const turnable = new Set<Role>(['size', 'period', 'from', 'until', 'width', 'height', 'depth', 'where', 'price']);

/** Models, makers or workshops down the side, headed in the corner. */
export function turned(rows: readonly Cell[][], makers: readonly string[]): Cell[][] {
  const [[, ...labels] = [], ...models] = sideways(rows);
  const subject = subjectOf(
    models.map(([name]) => name!),
    makers,
  );
  return [[headOf(subject), ...labels], ...models];
}
