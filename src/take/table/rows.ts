import type { Layout } from '../../maker/types';
import { unknownPlace } from '../../place';
import type { Inline } from '../page/inline';
import { type Context, doubtsOf, type OwnFields, propose, type Say } from '../propose';
import { deniesCode, isNothing } from '../prose/told-sentence';
import { isPlantNumber, plainCode, plantCodes } from '../said/code';
import { confirmedLayout } from '../said/confirmed';
import { doubtedBy } from '../said/doubted';
import { exactDates, plainExamples, readExamples, type SaidExample, unitsOfDate } from '../said/example';
import { doubtsOfForm, lookAlikes } from '../said/form-doubts';
import type { Role } from '../said/label';
import { readNotation, readsExamples } from '../said/layout';
import { yearsShown } from '../said/layout-added';
import { layoutTold } from '../said/layout-referred';
import type { SaidLayout } from '../said/layout-words';
import { readNumberRange } from '../said/number-range';
import { onePeriod, timeFrom } from '../said/one-period';
import { readPeriods, type Used, usedOf } from '../said/period';
import { countryAlone, readPlace, type SaidPlace } from '../said/place';
import { withoutPeriods } from '../said/used-text';
import { isOnPiece, opensPlaceOnPiece } from '../said/where';
import type { Doubt, Proposal, TakenPeriod } from '../types';
import { tellingFinder } from '../words';
import { constructionOf, modelOf, partsOf } from './model-row';
import { dated, has, nothing, type Row, said } from './row';
import { isWholeCode } from './sorts';

const letters = tellingFinder('letters');
const noCode = tellingFinder('no-code');

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

/** Columns in which a row may say that there was no code. */
const tellsNoCode: readonly Role[] = ['format', 'example', 'reads', 'code'];
const tellsOfNone = (text: string): boolean => deniesCode(text) || isNothing(text);

/** What one row of a table proposes. */
export function readRow(row: Row, context: Context, day: string): Proposal[] {
  const cells = [...row.cells.values()].flat();
  const inlines = cells.flatMap((cell): Inline[] => (cell.words ? [cell.words] : []));
  const words = row.whole.flatMap((cell) => (cell.own || cell.words ? [cell.words?.text ?? ''] : []));
  const noted = doubtsOf(inlines, context);
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
  if (tellsNoCode.some((role) => tellsOfNone(said(row, role))))
    return [...stampedOf(used, say), ...(used.used && !has(row, 'model', 'maker') ? partsOf(row, used, say) : [])];
  if (has(row, 'code')) {
    // A row may tell a workshop's letters and how its codes are built.
    const built = has(row, 'format') ? systemOf(row, used, context, day, say) : [];
    return [...plantsOf(row, used, say), ...built];
  }
  if (has(row, 'letter', 'year')) return letterOf(row, say);
  if (has(row, 'first') && (has(row, 'year') || has(row, 'period'))) return serialOf(row, say);
  if (has(row, 'part')) return constructionOf(row, used, say);
  if (has(row, 'model')) return modelOf(row, used, context, say);
  // The period in a column of a maker's facts is that of its codes; in a row of an era it is of all that is told of it.
  const time = has(row, 'maker') ? { backwards: false } : used;
  const systems = has(row, 'format') || has(row, 'example') ? systemOf(row, used, context, day, say) : [];
  const parts = time.used || has(row, 'maker') ? partsOf(row, time, say) : [];
  const where = said(row, 'where');
  const placed: Proposal[] =
    noCode(where).length > 0
      ? stampedOf(used, say)
      : opensPlaceOnPiece(where) || isNamedPlace(where)
        ? [say({ kind: 'carrier', where, ...dated(time) })]
        : [];
  return [...systems, ...placed, ...parts];
}

/** "革のタブ", "inner pocket": under a head that asks where, a part of the piece is enough. */
const isNamedPlace = (where: string): boolean => where.length <= longestPlace && !/\d/.test(where) && isOnPiece(where);
const longestPlace = 60;

/** "Until about 1985 | no code": from then on there was one. */
function stampedOf(used: Used, say: Say): Proposal[] {
  const stamped = timeFrom(onePeriod(used.used), used.about);
  return stamped ? [say({ kind: 'stamped', ...stamped })] : [];
}

function makerOf(row: Row, { makers }: Context): string | null | undefined {
  const named = said(row, 'maker');
  if (named !== '') return named;
  const section = row.section;
  return section !== null && makers.includes(section) ? section : undefined;
}

/** A place told in one column or two, or in the heading that the row stands under. */
function placeOf(row: Row): SaidPlace | null {
  const texts = [said(row, 'place'), said(row, 'plant')].filter((text) => !nothing.test(text));
  const own = texts.length > 0 ? readPlace(withoutPeriods(texts.join(', ')).text, 'cell') : null;
  const above = row.section === null ? null : readPlace(row.section, 'cell');
  if (above?.place && above.place !== unknownPlace && (own === null || own.place === unknownPlace))
    return { place: above.place, ...(own?.name && { name: own.name }) };
  // A remark that is a country and nothing else says where the town lies.
  const country = own?.place === unknownPlace ? countryAlone(said(row, 'note')) : null;
  return country !== null ? { ...own!, place: country } : own;
}

function plantsOf(row: Row, used: Used, say: Say): Proposal[] {
  const written = said(row, 'code');
  const number = isPlantNumber(written) ? [{ code: written, lookAlike: false, behind: null }] : null;
  const codes = plantCodes(written) ?? number;
  const place = placeOf(row);
  // "Works at Bentheim (1971–1985)".
  const beside = used.used ? used : usedOf(readPeriods(`${said(row, 'place')} ${said(row, 'plant')}`));
  // Letters beside a single year, and no more, may be those of years.
  const isOfYear = onePeriod(beside.used)?.[0] === onePeriod(beside.used)?.[1];
  if (!codes || (!place && (!beside.used || isOfYear))) return [];
  return codes.map(({ code, lookAlike, behind }) => {
    const own = behind === null ? beside : usedOf(readPeriods(behind));
    const doubts = [lookAlike && ('look-alike' as const), own.backwards && ('backwards' as const)];
    return say(
      { kind: 'plant', code, ...(place ?? { place: unknownPlace }), ...dated(own.used ? own : beside) },
      doubts,
    );
  });
}

function systemOf(row: Row, used: Used, context: Context, day: string, say: Say): Proposal[] {
  const format = said(row, 'format');
  const shown = said(row, 'example') || shownIn(format);
  const reads = dateIn(said(row, 'reads'), shown, day) || dateOf(format, shown, day);
  const told = reads === said(row, 'reads') ? format : `${format}. ${said(row, 'reads').replace(reads, '')}`;
  const text = [told.replace(`(${shown})`, ''), reads === '' ? shown : `${shown} = ${reads}`]
    .filter((one) => one !== '')
    .join('. ');
  const examples = readExamples(text, day);
  const bare = format.replace(/\s?\([^)]{0,80}\)/g, '');
  const notation = notationOf(bare, examples, context) ?? notationInPieces(bare, examples, context);
  const plain = plainExamples(examples);
  const settled = notation
    ? { layout: notation, fits: readsExamples(notation, plain), by: 'words' as const }
    : (layoutTold(text, examples, context.earlier) ?? (used.used ? formShown(examples) : null));
  if (!settled) return plain.map((example) => say({ kind: 'example', ...example }, [lookAlikes(examples)]));
  const doubts = doubtsOfForm(settled, examples, false);
  const all = plain.length > 0 ? plain : yearsShown(settled.layout, text);
  return [say({ kind: 'code-system', ...dated(used), layout: settled.layout, examples: all }, doubts)];
}

/** "1 lettre, 4 chiffres (ex. A0775)": the code that a form shows in brackets. */
const shownIn = (format: string): string => {
  const [, code] =
    /\((?:\p{L}{1,8}\.\s?|\p{Ll}{2,8}\s|例){1,2}[:：]?\s?([A-Z0-9][A-Z0-9 ./-]{1,11})\)/u.exec(format) ?? [];
  return code !== undefined && isWholeCode(code) ? code : '';
};
/** "Workshop, month, year: July 1975": of what a code is read as, its date, where it is the only one. */
function dateIn(reads: string, shown: string, day: string): string {
  const [date, ...more] = shown !== '' && /[:：]\s/u.test(reads) ? exactDates(reads, day) : [];
  return date && more.length === 0 ? reads.slice(date.start, date.end) : reads;
}

/** "Plant, month, year (March 1965)" beside "S 365": the one date of the words is that of the code. */
function dateOf(format: string, shown: string, day: string): string {
  if (!isWholeCode(shown)) return '';
  const [date, ...more] = exactDates(format, day);
  return date && more.length === 0 && readExamples(format, day).length === 0 ? format.slice(date.start, date.end) : '';
}

/** Beside a time and nothing else, a dated code shows a form, as far as it can be only one. */
function formShown(examples: readonly SaidExample[]): SaidLayout | null {
  const [first] = examples;
  const units = first ? unitsOfDate(first.reads) : [];
  const layout = confirmedLayout(examples, units, false);
  return layout && { layout, fits: true, by: 'examples', units };
}

/** "WWYY", and "WWYY + letters", whose number an example shows. */
function notationOf(format: string, examples: readonly { code: string }[], { legend }: Context): Layout | null {
  // "Lyyww": letters of any case, where a year is among them.
  const isSmall = /^[A-Za-z]{3,10}$/.test(format) && /yy|jj|aa/.test(format);
  const whole = readNotation(isSmall ? format.toUpperCase() : format, legend);
  const [, figures, rest] =
    /^([A-Z]{2,8})\s?[+,&]?\s(?:[a-z]{1,5}\s)?(\p{L}{3,30}(?:\s\p{L}{2,12})?)$/u.exec(format) ?? [];
  if (whole || figures === undefined || letters(rest!).length === 0) return whole;
  const runs = examples.map(({ code }) => /\d\s?([A-Z]{1,3})$/.exec(code)?.[1]?.length);
  const [length] = runs;
  const first = readNotation(figures, legend);
  return first && length !== undefined && runs.every((one) => one === length) ? [...first, { plant: length }] : null;
}

const plants = tellingFinder('plant', 'letters');
/** "works letter, YY, WW": each piece a unit by its signs, or the workshop's letters, whose number an example shows. */
function notationInPieces(format: string, examples: readonly { code: string }[], { legend }: Context): Layout | null {
  const pieces = format.split(/\s?[,+&/]\s?|\s[–-]\s/u);
  if (pieces.length < 2 || pieces.length > mostPieces) return null;
  const own = new Set(examples.map(({ code }) => code.replace(/[^A-Z]/g, '').length));
  const [length, ...others] = own;
  const plant = length && others.length === 0 ? { plant: length } : { plant: 1 };
  const ofLetters = (piece: string) => piece.length <= longestPiece && plants(piece).length > 0;
  if (pieces.filter(ofLetters).length > 1) return null;
  const signs = pieces.map((piece) => (ofLetters(piece) ? '' : piece)).join('');
  const units = readNotation(signs, legend);
  if (!units || units.length !== pieces.filter((piece) => !ofLetters(piece)).length) return null;
  let next = 0;
  return pieces.map((piece) => (ofLetters(piece) ? plant : units[next++]!));
}
const mostPieces = 5;
const longestPiece = 40;

function letterOf(row: Row, say: Say): Proposal[] {
  const { code, lookAlike } = plainCode(said(row, 'letter'));
  const years = readPeriods(said(row, 'year'));
  const single = years.every(({ used: [from, to] }) => from !== null && from === to);
  if (years.length === 0 || !single || !/^[A-Za-z0-9]$/.test(code)) return [];
  return years.map(({ used }) =>
    say({ kind: 'year-letter', letter: code, year: Number(used[0]) }, [lookAlike && 'look-alike']),
  );
}

function serialOf(row: Row, say: Say): Proposal[] {
  const numbers = readNumberRange(said(row, 'first'));
  const last = readNumberRange(said(row, 'last'))?.first ?? numbers?.last ?? null;
  const [period, ...more] = readPeriods(said(row, 'year') || said(row, 'period'));
  if (!numbers || !period || more.length > 0) return [];
  const { first, goesOn } = numbers;
  const made: TakenPeriod = goesOn && last === null ? [period.used[0], null] : period.used;
  return [say({ kind: 'serial', first, ...(last !== null && { last }), made }, [period.backwards && 'backwards'])];
}
