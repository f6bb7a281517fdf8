import { andWords } from '../and-words';
import { type Cell, textOfCell } from '../page/grid';
import type { Context, Say } from '../propose';
import type { Role } from '../said/label';
import { onePeriod } from '../said/one-period';
import { partNamed } from '../said/part';
import { readPeriods, type SaidPeriod, type Used } from '../said/period';
import { readAmount } from '../said/price';
import { readSizes } from '../said/size';
import type { Proposal } from '../types';
import { tellingFinder } from '../words';
import { dated, has, nothing, type Row, said, saysNothing } from './row';

const joints = new RegExp(`,\\s{0,2}|\\s(?:${andWords})\\s`, 'u');

/** A part and what it is made of, each in a column: the models that it is said of stand in a third. */
export function constructionOf(row: Row, used: Used, say: Say): Proposal[] {
  const part = partNamed(said(row, 'part'));
  const is = said(row, 'is');
  if (!part || saysNothing(is)) return [];
  const models = said(row, 'model')
    .split(joints)
    .filter((name) => /^\p{Lu}/u.test(name));
  return [say({ kind: 'construction', part, is, ...dated(used), ...(models.length > 0 && { models }) })];
}

/** What the columns that are headed by a part say of it, of one model or of one period. */
export function partsOf(row: Row, of: { models: string[] } | Used, say: Say): Proposal[] {
  return row.parts.flatMap(({ header, cell, until }) => {
    const part = partNamed(header);
    const is = cell.words?.text ?? '';
    if (!part || saysNothing(is) || is.length > 80) return [];
    return [
      say({ kind: 'construction', part, is, ...('models' in of ? of : dated(until ? reaching(of, until) : of)) }),
    ];
  });
}

/** A time that goes on to the end of another one: "1970–1985" over a cell that fills "1986–1999" as well. */
function reaching(of: Used, until: Cell): Used {
  const [first, [last, ...more]] = [onePeriod(of.used), readPeriods(textOfCell(until))];
  return first && last && more.length === 0 ? { ...of, used: [first[0], last.used[1]] } : of;
}

/** "Inches" in the languages at hand; a bare "in" only in brackets. */
const inches = /[([]in\.?[)\]]|(?<!\p{L})(?:inch|zoll(?!\p{L})|pouces|pollici|pulgadas)/iu;

/** The size of a row, from one column or from one for each side. */
function sizeOf(row: Row) {
  // "Maße in cm" is in centimetres: a bare "in" is an inch only in brackets.
  const unitIn = (role: Role) => {
    const header = row.headers.get(role) ?? '';
    return /\b(cm|mm)\b/.exec(header)?.[1] ?? (inches.test(header) ? 'in' : '');
  };
  if (has(row, 'size')) {
    const text = said(row, 'size');
    // "29 × 22" in one column, and the depth in the next.
    const depth = /^\d[\d.,]{0,5}/.exec(said(row, 'depth'))?.[0];
    const whole = depth === undefined ? text : `${text.replace(/\s?(?:cm|mm|in)\.?$/, '')} x ${depth}`;
    const unit = unitIn('size') || /(?:cm|mm|in)\.?$/.exec(text)?.[0] || 'cm';
    return (readSizes(whole)[0] ?? readSizes(`${whole} ${unit}`)[0])?.size ?? null;
  }
  const unit = unitIn('width') || unitIn('height') || 'cm';
  const sides = (['width', 'height', 'depth'] as const)
    .map((role) => said(row, role))
    .filter((text) => /\d/.test(text));
  if (sides.length < 2) return null;
  return (
    readSizes(`${sides.map((side) => side.replace(/\s?(?:cm|mm|in)\.?$/, '')).join(' x ')} ${unit}`)[0]?.size ?? null
  );
}

/** A model's row: where its code sits, its size and years, what its parts are, and what it cost. */
export function modelOf(row: Row, used: Used, { above, francs }: Context, say: Say): Proposal[] {
  const name = said(row, 'model');
  if (nothing.test(name) || name.length > 60) return [];
  const size = sizeOf(row);
  const where = said(row, 'where');
  const placed = has(row, 'where') && !saysNothing(where);
  const made = onePeriod(used.used);
  // The years beside a place alone are those of the place.
  const ofModel = size !== null || (made && !has(row, 'price') && !has(row, 'where'));
  const found: Proposal[] = [];
  if (ofModel)
    found.push(
      say({
        kind: 'model',
        name,
        ...(made && { made }),
        ...(used.about && { about: used.about }),
        ...(size && { size }),
      }),
    );
  if (placed) found.push(say({ kind: 'carrier', model: name, where, ...(size ? {} : dated(used)) }));
  return [...found, ...partsOf(row, { models: [name] }, say), ...priceOf(row, name, above, francs, say)];
}

const prices = tellingFinder('column-price', 'new-price', 'cost');
/** "Price list, spring 1974" above a table: the one year of all its prices. */
function yearOfList(above: string): SaidPeriod | undefined {
  const [period, ...more] = prices(above).length > 0 ? readPeriods(above) : [];
  return period?.form === 'year' && more.length === 0 ? period : undefined;
}

function priceOf(row: Row, model: string, above: string, francs: string | null, say: Say): Proposal[] {
  const text = said(row, 'price');
  if (nothing.test(text)) return [];
  const header = row.headers.get('price') ?? '';
  const year = readPeriods(text)[0] ?? readPeriods(said(row, 'year'))[0] ?? readPeriods(header)[0] ?? yearOfList(above);
  const bare = text.replace(/[([][^)\]]{0,30}[)\]]/g, '').trim();
  const amount = readAmount(bare, header, francs) ?? readAmount(bare, above, francs);
  if (!amount || !year || year.used[0] === null || year.used[0] !== year.used[1]) return [];
  return [say({ kind: 'price', model, ...amount, year: Number(year.used[0]) })];
}
