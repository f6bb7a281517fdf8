import { foldWords } from '../../text';
import type { Cell } from '../page/grid';
import type { Inline } from '../page/inline';
import { type Context, doubtsOf, type OwnFields, propose } from '../propose';
import { plainCode, plantCodes } from '../said/code';
import { doubtedBy } from '../said/doubted';
import { readExamples } from '../said/example';
import { readNotation, readsExamples } from '../said/layout';
import { readLayoutWords } from '../said/layout-words';
import { partNamed } from '../said/part';
import { readPeriods, usedOf } from '../said/period';
import { readPlace, type SaidPlace } from '../said/place';
import { readAmount } from '../said/price';
import { readSizes } from '../said/size';
import { opensPlaceOnPiece } from '../said/where';
import type { Doubt, Proposal, TakenPeriod } from '../types';
import { wholeWords } from '../words';
import type { Role } from './columns';

/** A row by what its columns tell. */
export interface Row {
  cells: Map<Role, Cell[]>;
  headers: Map<Role, string>;
  /** The heading inside the table that the row stands under. */
  section: string | null;
  whole: readonly Cell[];
}

const said = (row: Row, role: Role): string =>
  (row.cells.get(role) ?? []).flatMap((cell) => cell.words?.text ?? []).join(', ');
const has = (row: Row, ...wanted: Role[]): boolean => wanted.every((role) => row.cells.has(role));
const nothing = /^[\s\-–—/.?]{0,6}$/;
const unknown = wholeWords('unknown');

interface Used {
  used?: TakenPeriod | TakenPeriod[];
  about?: ('from' | 'to')[];
  backwards: boolean;
}

/** The period of a row, from one column or from two. */
function usedIn(row: Row): Used {
  if (has(row, 'period') || !(has(row, 'from') || has(row, 'until'))) return usedOf(readPeriods(said(row, 'period')));
  const [from, until] = [readPeriods(said(row, 'from')), readPeriods(said(row, 'until'))];
  if (from.length === 1 && from[0]!.form === 'range') return usedOf(from);
  const first = from[0]?.used[0] ?? null;
  const last = until[0]?.used[1] ?? null;
  if (first === null && last === null) return { backwards: false };
  const about = [
    ...(from[0]?.about.length ? (['from'] as const) : []),
    ...(until[0]?.about.length ? (['to'] as const) : []),
  ];
  const backwards = first !== null && last !== null && first > last;
  return { used: backwards ? [last, first] : [first, last], ...(about.length > 0 && { about }), backwards };
}

const dated = ({ used, about }: Used) => ({ ...(used && { used }), ...(about && { about }) });

/** What one row of a table proposes. */
export function readRow(row: Row, context: Context, day: string): Proposal[] {
  const cells = [...row.cells.values()].flat();
  const inlines = cells.flatMap((cell): Inline[] => (cell.words ? [cell.words] : []));
  const words = row.whole.flatMap((cell) => (cell.own || cell.words ? [cell.words?.text ?? ''] : []));
  const noted = doubtsOf(inlines, context, doubtedBy);
  const inNote = doubtedBy(words.join(' | '));
  const used = usedIn(row);
  const doubts: (Doubt | false)[] = [...noted, ...inNote, used.backwards && 'backwards'];
  const maker = makerOf(row, context);
  const selector = inlines[0]?.selector ?? '';
  const say = (own: OwnFields, more: readonly (Doubt | false)[] = []) =>
    propose(context, own, {
      words: words.filter((text) => text !== '').join(' | '),
      selector,
      doubts: [...doubts, ...more],
      ...(maker !== undefined && { maker }),
    });
  if (has(row, 'code')) return plantsOf(row, used, say);
  if (has(row, 'format') || has(row, 'example')) return systemOf(row, used, context, day, say);
  if (has(row, 'letter', 'year')) return letterOf(row, say);
  if (has(row, 'first') && (has(row, 'year') || has(row, 'period'))) return serialOf(row, say);
  if (has(row, 'part')) return constructionOf(row, used, say);
  if (has(row, 'model')) return modelOf(row, used, say);
  if (has(row, 'where') && opensPlaceOnPiece(said(row, 'where')))
    return [say({ kind: 'carrier', where: said(row, 'where'), ...dated(used) })];
  return [];
}

type Say = (own: OwnFields, doubts?: readonly (Doubt | false)[]) => Proposal;

function makerOf(row: Row, { makers }: Context): string | null | undefined {
  const named = said(row, 'maker');
  if (named !== '') return named;
  const section = row.section;
  return section !== null && makers.includes(section) ? section : undefined;
}

/** A place told in one column or two, or in the heading that the row stands under. */
function placeOf(row: Row): SaidPlace | null {
  const texts = [said(row, 'place'), said(row, 'plant')].filter((text) => !nothing.test(text));
  const own = texts.length > 0 ? readPlace(texts.join(', ')) : null;
  const above = row.section === null ? null : readPlace(row.section);
  if (above?.place && above.place !== 'ZZ' && (own === null || own.place === 'ZZ'))
    return { place: above.place, ...(own?.name && { name: own.name }) };
  return own;
}

function plantsOf(row: Row, used: Used, say: Say): Proposal[] {
  const codes = plantCodes(said(row, 'code'));
  const place = placeOf(row);
  if (!codes || (!place && !used.used)) return [];
  return codes.map(({ code, lookAlike, behind }) => {
    const own = behind === null ? used : usedOf(readPeriods(behind));
    const doubts = [lookAlike && ('look-alike' as const), own.backwards && ('backwards' as const)];
    return say({ kind: 'plant', code, ...(place ?? { place: 'ZZ' }), ...dated(own.used ? own : used) }, doubts);
  });
}

function systemOf(row: Row, used: Used, context: Context, day: string, say: Say): Proposal[] {
  const format = said(row, 'format');
  const reads = said(row, 'reads');
  const shown = said(row, 'example');
  const text = [format, reads === '' ? shown : `${shown} = ${reads}`].filter((one) => one !== '').join('. ');
  const examples = readExamples(text, day);
  const notation = readNotation(format.replace(/\s?\([^)]{0,80}\)/g, ''), context.legend);
  const plain = examples.map(({ code, reads: date }) => ({ code, reads: date }));
  const alike = examples.some(({ lookAlike }) => lookAlike) && ('look-alike' as const);
  const settled = notation ? null : readLayoutWords(text, examples);
  const layout = notation ?? settled?.layout;
  if (!layout) return plain.map((example) => say({ kind: 'example', ...example }, [alike]));
  const fits = notation ? readsExamples(notation, plain) : settled!.fits;
  const doubts = [
    alike,
    !fits && ('examples-disagree' as const),
    settled?.by === 'examples' && ('by-examples-only' as const),
  ];
  return [say({ kind: 'code-system', ...dated(used), layout, examples: plain }, doubts)];
}

function letterOf(row: Row, say: Say): Proposal[] {
  const { code, lookAlike } = plainCode(said(row, 'letter'));
  const years = readPeriods(said(row, 'year'));
  const single = years.every(({ used: [from, to] }) => from !== null && from === to);
  if (years.length === 0 || !single || !/^[A-Za-z0-9]$/.test(code)) return [];
  return years.map(({ used }) =>
    say({ kind: 'year-letter', letter: code, year: Number(used[0]) }, [lookAlike && 'look-alike']),
  );
}

const numberOf = (text: string): number | null => {
  const digits = /^(?:no\.?\s?)?(\d{1,3}(?:[.,' ]?\d{3}){0,4})(?!\d)/i.exec(text)?.[1]?.replace(/\D/g, '');
  return digits === undefined ? null : Number(digits);
};

function serialOf(row: Row, say: Say): Proposal[] {
  const first = numberOf(said(row, 'first'));
  const last = numberOf(said(row, 'last'));
  const [period, ...more] = readPeriods(said(row, 'year') || said(row, 'period'));
  if (first === null || !period || more.length > 0) return [];
  return [
    say({ kind: 'serial', first, ...(last !== null && { last }), made: period.used }, [
      period.backwards && 'backwards',
    ]),
  ];
}

function constructionOf(row: Row, used: Used, say: Say): Proposal[] {
  const part = partNamed(said(row, 'part'));
  const is = said(row, 'is');
  if (!part || nothing.test(is)) return [];
  const models = said(row, 'model')
    .split(/,\s{0,2}|\s(?:and|und|et|y|e|en)\s/)
    .filter((name) => /^\p{Lu}/u.test(name));
  return [say({ kind: 'construction', part, is, ...dated(used), ...(models.length > 0 && { models }) })];
}

/** The size of a row, from one column or from one for each side. */
function sizeOf(row: Row) {
  // "Maße in cm" is in centimetres: a bare "in" is an inch only in brackets.
  const unitIn = (role: Role) => {
    const header = row.headers.get(role) ?? '';
    return /\b(cm|mm)\b/.exec(header)?.[1] ?? (/[([]in\.?[)\]]|\binch/.test(header) ? 'in' : '');
  };
  if (has(row, 'size')) {
    const text = said(row, 'size');
    return (readSizes(text)[0] ?? readSizes(`${text} ${unitIn('size') || 'cm'}`)[0])?.size ?? null;
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

function modelOf(row: Row, used: Used, say: Say): Proposal[] {
  const name = said(row, 'model');
  if (nothing.test(name) || name.length > 60) return [];
  if (has(row, 'where')) {
    const where = said(row, 'where');
    return nothing.test(where) || unknown.has(foldWords(where).text)
      ? []
      : [say({ kind: 'carrier', model: name, where, ...dated(used) })];
  }
  const size = sizeOf(row);
  const made = Array.isArray(used.used?.[0]) ? undefined : (used.used as TakenPeriod | undefined);
  const model = size || (made && !has(row, 'price'));
  const own =
    model &&
    say({
      kind: 'model',
      name,
      ...(made && { made }),
      ...(used.about && { about: used.about }),
      ...(size && { size }),
    });
  return [...(own ? [own] : []), ...priceOf(row, name, say)];
}

function priceOf(row: Row, model: string, say: Say): Proposal[] {
  const text = said(row, 'price');
  if (nothing.test(text)) return [];
  const header = row.headers.get('price') ?? '';
  const year = readPeriods(text)[0] ?? readPeriods(said(row, 'year'))[0] ?? readPeriods(header)[0];
  const amount = readAmount(text.replace(/[([][^)\]]{0,30}[)\]]/g, '').trim(), header);
  if (!amount || !year || year.used[0] === null || year.used[0] !== year.used[1]) return [];
  return [say({ kind: 'price', model, ...amount, year: Number(year.used[0]) })];
}
