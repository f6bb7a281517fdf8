import type { Cell } from '../page/grid';
import { type Context, propose } from '../propose';
import { rolesNamed } from '../said/label';
import { readAmount } from '../said/price';
import type { Proposal } from '../types';
import { yearNamed } from './columns';

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
