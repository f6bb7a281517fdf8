import { type Cell, headOf, textOfCell } from '../page/grid';
import { plantCodes } from '../said/code';
import { type Role, rolesNamed } from '../said/label';
import { readPlace } from '../said/place';
import { isPeriod } from '../said/used-text';
import { nothing } from './row';
import { isYear } from './sorts';

/** What all texts of a side or of the inside of a table are. */
type Sort = Extract<Role, 'code' | 'period' | 'place'>;
/** Heads as a page may write them: each is read as a column of its role. */
const headed: Record<Sort, string> = { code: 'Code', period: 'Period', place: 'Place' };

const isTown = (text: string): boolean => !isPeriod(text) && readPlace(text, 'cell') !== null;

/** The sorts that texts may be; a short word in capitals is a code and no place. */
function sortsOf(texts: readonly string[]): Sort[] {
  if (texts.length === 0) return [];
  if (texts.every((text) => plantCodes(text) !== null)) return ['code'];
  if (texts.every(isPeriod)) return ['period'];
  return texts.every(isTown) ? ['place'] : [];
}

const fewest = 2;

/** "196", "196-", "1960s": the figures of a year but its last. */
const decade = /^((?:1[6-9]|20)\d)(?:[-–_.…x*]|0(?:['’]?s|er|年代)?)?$/u;
/** Decades at one side and last figures at the other, as the year that both make; null where they are none. */
function yearsOfSides(
  top: readonly string[],
  side: readonly string[],
): ((head: string, label: string) => string) | null {
  const areFigures = (texts: readonly string[]) =>
    texts.every((text) => /^\d$/.test(text)) && new Set(texts).size === texts.length;
  const areDecades = (texts: readonly string[]) => texts.every((text) => decade.test(text));
  const yearOf = (tens: string, figure: string) => `${decade.exec(tens)![1]}${figure}`;
  if (areFigures(top) && areDecades(side)) return (head, label) => yearOf(label, head);
  return areDecades(top) && areFigures(side) ? (head, label) => yearOf(head, label) : null;
}

/** Years that follow one another down a column. */
const goOn = (years: readonly number[]): boolean =>
  years.length > 1 && years.every((year, at) => at === 0 || year - years[at - 1]! === 1);
const ofTime: readonly Role[] = ['from', 'until', 'period'];

/** "Letter | first series | second series": letters down the side, and beside each its year in every series, by what the cells are. */
export function lettersOfSeries([head = [], ...rows]: readonly Cell[][]): Cell[][] | null {
  const top = head.slice(1);
  if (top.length < fewest || rows.length < fewest) return null;
  const labels = rows.map(([label]) => textOfCell(label));
  const isOfTime = top.some((cell) => rolesNamed(textOfCell(cell)).some((role) => ofTime.includes(role)));
  if (isOfTime || new Set(labels).size < labels.length || !labels.every((text) => /^[A-Z]$/.test(text))) return null;
  const columns = top.map((_, at) => rows.map((row) => row[at + 1]).filter((cell) => !nothing.test(textOfCell(cell))));
  const areYears = columns.every(
    (cells) => cells.every((cell) => isYear(textOfCell(cell))) && goOn(cells.map((cell) => Number(textOfCell(cell)))),
  );
  if (!areYears) return null;
  const pairs = top.flatMap((_, at) =>
    rows.flatMap((row) => (nothing.test(textOfCell(row[at + 1])) ? [] : [[row[0]!, row[at + 1]!]])),
  );
  return [[headOf('Letter'), headOf('Year')], ...pairs];
}

/**
 * A table of two sides as one of rows: workshops along the top, years down the side, and their codes within, or any other
 * turn of the three. Null where a side or the inside is something else.
 */
export function unfolded(rows: readonly Cell[][]): Cell[][] | null {
  const [[, ...top] = [], ...others] = rows;
  if (top.length < fewest || others.length < fewest) return null;
  const cells = others.flatMap((row) =>
    top.flatMap((head, at) => {
      const cell = row[at + 1];
      return cell && !nothing.test(textOfCell(cell)) ? [[head, row[0]!, cell] as const] : [];
    }),
  );
  if (cells.length < fewest * 2) return null;
  const decades = yearsOfSides(
    top.map(textOfCell),
    others.map(([label]) => textOfCell(label)),
  );
  if (decades && cells.every(([, , cell]) => /^[A-Za-z0-9]$/.test(textOfCell(cell))))
    return [
      [headOf('Letter'), headOf('Year')],
      ...cells.map(([head, label, cell]) => [cell, headOf(decades(textOfCell(head), textOfCell(label)))]),
    ];
  const sorts = [
    sortsOf(top.map(textOfCell)),
    sortsOf(others.map(([label]) => textOfCell(label))),
    sortsOf(cells.map(([, , cell]) => textOfCell(cell))),
  ].flat();
  if (new Set(sorts).size !== 3) return null;
  return [sorts.map((sort) => headOf(headed[sort])), ...cells.map((cell) => [...cell])];
}
