import { type Cell, textOfCell } from '../page/grid';
import { type Context, propose } from '../propose';
import { type Role, rolesNamed } from '../said/label';
import { readPeriods } from '../said/period';
import { readAmount, type SaidAmount } from '../said/price';
import type { Proposal } from '../types';
import { yearNamed } from './columns';
import type { Headed } from './heads';
import { filledOf } from './sorts';

/** A grid of prices, models beside years either way. Null when neither side is years, or the cells are no amounts. */
export function readPriceGrid(
  headers: readonly string[],
  rows: readonly Cell[][],
  context: Context,
): Proposal[] | null {
  const [corner = ''] = headers;
  const years = headers.map(yearNamed);
  const across = years.filter((year) => year !== null).length >= 2 && rolesNamed(corner).includes('model');
  const down =
    rolesNamed(corner).includes('year') && headers.slice(1).every((header) => rolesNamed(header).length === 0);
  if (!across && !down) return null;
  const found = rows.flatMap((row): Proposal[] => {
    const first = row[0]?.words;
    if (!first) return [];
    return row.slice(1).flatMap((cell, index) => {
      const header = headers[index + 1] ?? '';
      const [model, year] = across ? [first.text, yearNamed(header)] : [header, yearNamed(first.text)];
      const amount = year !== null && cell.words ? readAmount(cell.words.text, context.above, context.francs) : null;
      if (!amount || year === null || model === '') return [];
      const said = { words: `${first.text} | ${header} | ${cell.words!.text}`, selector: cell.words!.selector };
      return [propose(context, { kind: 'price', model, ...amount, year }, said)];
    });
  });
  return found.length > 0 ? found : null;
}

/** The one year that a head names, whatever stands beside it: "cat. 1981", "Price in 1990". */
function yearIn(header: string): number | null {
  const [period, ...more] = readPeriods(header);
  const [first, last] = period?.used ?? [null, null];
  return first !== null && first === last && more.length === 0 && header.length <= longestHead ? Number(first) : null;
}
const longestHead = 30;

const figures = /^\p{Sc}?\s?\p{L}{0,4}\.?\s?\d[\d.,' \u00a0]{0,12}\s?(?:\p{Sc}|\p{L}{1,4})?\.?[-–]?$/u;

/** Columns of amounts that are each headed by a year, with it. */
export function pricedColumns(
  headers: readonly string[],
  above: readonly string[],
  columns: readonly string[][],
  taken: readonly (Role | null)[],
): Map<number, number> {
  const found = headers.flatMap((header, at): [number, number][] => {
    const filled = filledOf(columns[at]!);
    const isOpen = taken[at] === null || taken[at] === 'price' || taken[at] === 'year';
    const year = yearIn(header) ?? yearIn(above[at] ?? '');
    return isOpen && year !== null && filled.length > 0 && filled.every((text) => figures.test(text))
      ? [[at, year]]
      : [];
  });
  return new Map(found.length > 1 ? found : []);
}

/** What a model cost in each of the years that head its columns. */
export function pricesOfRow(
  row: readonly Cell[],
  ofModel: number,
  priced: ReadonlyMap<number, number>,
  { headers, above }: Headed,
  context: Context,
): Proposal[] {
  const model = textOfCell(row[ofModel]);
  if (model === '') return [];
  return [...priced].flatMap(([at, year]) => {
    const words = row[at]?.words;
    const [header, over] = [headers[at] ?? '', above[at] ?? ''];
    const amount = words ? amountIn(words.text, [header, over, context.above], context.francs) : null;
    if (!amount) return [];
    const said = { words: `${model} | ${header} | ${words!.text}`, selector: words!.selector };
    return [propose(context, { kind: 'price', model, ...amount, year }, said)];
  });
}

/** An amount with its own sign, or with that of the first of the words around that names one. */
const amountIn = (text: string, around: readonly string[], francs: string | null): SaidAmount | null =>
  around.reduce<SaidAmount | null>(
    (found, sign) => found ?? readAmount(text, sign, francs),
    readAmount(text, null, francs),
  );
