import { foldWords } from '../text';
import { carriersOf, opensInTime } from './entry-carrier';
import { codeAndPlaceOf, eraOf, timeOfCode } from './entry-era';
import { modelOf, modelsOfLabel, partsOfModel, pricesOf, pricesOfModel } from './entry-model';
import { constructionOf } from './entry-part';
import { isRow, plantInBracket, plantOf, plantsOfCountry, plantsOfLabel, plantsOfRow } from './entry-plant';
import { beginningOf, systemOf, systemOfHead } from './entry-system';
import type { Inline } from './page/inline';
import { type Context, type Say, sayerOf } from './propose';
import { isAsked } from './prose/sentences';
import { deniesCode } from './prose/told-sentence';
import { isPlantCode, plainCode, plantCodes } from './said/code';
import { readExamples } from './said/example';
import { rolesNamed } from './said/label';
import { readCounts } from './said/number';
import { readNumberRange } from './said/number-range';
import { partNamed, partsIn } from './said/part';
import { readPeriods } from './said/period';
import { readSizes } from './said/size';
import { isPeriod, withoutPeriods } from './said/used-text';
import { isOnPiece, opensPlaceOnPiece } from './said/where';
import type { Proposal } from './types';
import { tellingFinder, wholeWords } from './words';

/** One entry of a list: what it is of, and what it says of it. */
export interface Entry {
  head: string;
  body: string;
  whole: Inline;
}

/** A colon, an equals sign or a dash; dots that lead the eye, or an arrow. */
const joint = /\s?[:：=＝→⇒]\s?|\s[-–—]>?\s|\s?(?:\.{3,80}|…{1,20}|·{3,80})\s?/g;
const longestHead = 60;

/** Whether a place stands within brackets: "the stamp reads letter, month, year (P0461 = April 1961)". */
const isInBracket = (text: string, at: number): boolean =>
  text.lastIndexOf('(', at) > text.lastIndexOf(')', at) && text.indexOf(')', at) > 0;

/** An item as head and body, around what joins them first; null where nothing does. */
export function splitEntry(item: Inline): Entry | null {
  const { text } = item;
  // "1961 through 1974. Three figures".
  const [, time, rest] = /^(.{4,60}?)\.\s(?=\p{Lu})(.{2,3000})$/su.exec(text.slice(0, 3000)) ?? [];
  const isAlone = time !== undefined && isPeriod(time) && readPeriods(rest!).every(({ form }) => form === 'year');
  if (isAlone) return { head: time, body: rest!, whole: item };
  const model = modelItem(text);
  if (model) return { ...model, whole: item };
  const joints = [...text.slice(0, longestHead + 4).matchAll(joint)].filter(({ index }) => !isInBracket(text, index));
  // "1984 – 1985: four digits": a period at the head holds a dash of its own.
  const [first] = joints;
  const chosen = joints.find(({ index }) => isPeriod(text.slice(0, index))) ?? first;
  if (!chosen || chosen.index === 0) {
    const placed = placeInTime(text);
    return placed && { ...placed, whole: item };
  }
  const range = joints.find((one) => one.index > chosen.index && isPeriod(text.slice(0, one.index))) ?? chosen;
  return {
    head: text.slice(0, range.index).trim(),
    body: text.slice(range.index + range[0].length).trim(),
    whole: item,
  };
}

const namedItem = /^(\p{Lu}[\p{L}\d’'.-]{1,24}(?:\s[\p{Lu}\d][\p{L}\d’'.-]{0,24}){0,2})(?:\s(?=\()|,\s)(.{8,300})$/su;
/** "Nagold (from 1966), 25 × 18 × 8 cm, new in 1972: 210 DM": a name, and its time and its size with no sign between. */
function modelItem(text: string): Pick<Entry, 'head' | 'body'> | null {
  const [, head, body] = namedItem.exec(text.slice(0, 400)) ?? [];
  if (head === undefined || body === undefined || readSizes(body).length !== 1) return null;
  // "The Bailey, 40 × 30 cm" is a sentence's, which leaves the article out.
  if (/^(?:The|L[aeo]s?|Il|E[ln]|De|Het|D(?:ie|er|as))\s/u.test(head)) return null;
  const isLabel = rolesNamed(head).length > 0 || partNamed(head) !== null || isPeriod(head);
  return isLabel || /\.\s\p{Lu}/u.test(body) ? null : { head, body };
}

/** "Until 1985 under the flap": a time, and right behind it a place on the piece. */
function placeInTime(text: string): Pick<Entry, 'head' | 'body'> | null {
  const [period, ...more] = text.length <= longestPlace ? readPeriods(text) : [];
  if (!period || more.length > 0 || period.start > 0 || period.form === 'year') return null;
  const body = text.slice(period.end).replace(/^[\s,]{1,4}/u, '');
  return /^\p{L}/u.test(body) && !/。$/u.test(body) && opensPlaceOnPiece(body) && isOnPiece(body)
    ? { head: text.slice(0, period.end), body }
    : null;
}
const longestPlace = 80;

const asksMaterial = tellingFinder('asks-material');

/** "What is the lining made of?"; a question that only names a part ("Can you change the lining?") asks for something else. */
const partAsked = (head: string, body: string): ReturnType<typeof partNamed> => {
  // "Which lining is original?" "Until 1970 moleskin, …"
  const dated = readPeriods(body).some(({ form }) => form !== 'year');
  const [part, ...more] = isAsked(head) && (dated || asksMaterial(head).length > 0) ? partsIn(head) : [];
  return part && more.length === 0 ? part.value : null;
};

const codeWords = tellingFinder('code');
const plantNouns = wholeWords('plant');
const numbered = /^(\p{L}{2,20})\s?(?:no\.?|nr\.?|n[º°])?\s?(\d{1,2})$/iu;

/** What an entry proposes; null when it is none that this reader knows. */
export function readEntry(entry: Entry, context: Context, day: string): Proposal[] | null {
  const { head, body, whole } = entry;
  const say = sayerOf(whole, body, context);
  const codes = plantCodes(head.replace(/[*†]$/, ''));
  if (codes && codes.length > 1 && isRow(body)) return plantsOfRow(codes, body, say);
  if (codes?.every(({ behind }) => behind === null) && !isPeriod(body)) {
    const plants = codes.map(({ code, lookAlike }) => plantOf(code, lookAlike, body, say, [], context.about.plants));
    return plants.some((one) => one === null) ? null : plants.flatMap((one) => one!);
  }
  const bracketed = plantInBracket(head, body, say);
  if (bracketed) return bracketed;
  // "From 1967 N: Northwich".
  const ofHeadTime = codes?.every(({ behind }) => behind === null) ? null : withoutPeriods(head);
  const dated =
    ofHeadTime?.periods.length === 1 ? plainCode(ofHeadTime.text.replace(/[()[\],:\s]{1,80}/g, ' ').trim()) : null;
  if (dated && isPlantCode(dated.code)) return plantOf(dated.code, dated.lookAlike, body, say, ofHeadTime!.periods);
  // "Workshop 2": kept where the page's codes hold a workshop's number.
  const [, noun, number] = numbered.exec(head) ?? [];
  if (number !== undefined && plantNouns.has(foldWords(noun!).text)) return plantOf(number, false, body, say);
  const listed = plantsOfLabel(head, body, say) ?? modelsOfLabel(head, body, say);
  if (listed) return listed;
  const byCountry = plantsOfCountry(head, body, say);
  if (byCountry) return byCountry;
  const serial = context.about.numbers ? serialOf(head, body, say) : null;
  if (serial) return serial;
  const letter = letterOf(head, body, say);
  if (letter) return letter;
  if (isPeriod(head)) {
    const era = context.part === null ? eraOf(head, body, day, say, context.earlier) : null;
    if (era) return era;
    if (opensPlaceOnPiece(body) && isOnPiece(body) && readCounts(body).length === 0)
      return carriersOf(null, body, say, readPeriods(head));
    const isOfPart = context.part !== null && readCounts(body).length === 0 && readExamples(body, day).length === 0;
    return isOfPart
      ? constructionOf(context.part!, body, say, readPeriods(head))
      : systemOf(head, body, day, say, context.earlier);
  }
  const ofCode = rolesNamed(head).includes('code') ? codeAndPlaceOf(body, day, say, context.earlier) : null;
  if (ofCode) return ofCode;
  const ofPart = withoutPeriods(head);
  const datedPart = ofPart.periods.length > 0 ? partNamed(ofPart.text) : null;
  if (datedPart) return constructionOf(datedPart, body, say, ofPart.periods);
  const began = beginningOf(head, body, say);
  if (began) return began;
  const ofCodeTime = timeOfCode(head);
  const eraOfCode = ofCodeTime && eraOf(ofCodeTime, body, day, say, context.earlier, deniesCode(head) ? head : '');
  if (eraOfCode) return eraOfCode;
  const ofHead = systemOfHead(head, body, day, say, context.earlier);
  if (ofHead) return ofHead;
  // "Where the code is: on a leather tab".
  const told = rolesNamed(head.replace(/[¿?]/g, ''));
  if (told.some((role) => role === 'where' || role === 'place') && opensInTime(body)) {
    const placed = (told.includes('where') && codeWords(head).length > 0) || isOnPiece(body);
    return placed ? carriersOf(null, body, say) : null;
  }
  const examples = readExamples(`${head} = ${body}`, day);
  if (examples.length > 0 && examples[0]!.start === 0)
    return examples
      .slice(0, 1)
      .map((one) => say({ kind: 'example', code: one.code, reads: one.reads }, [one.lookAlike && 'look-alike']));
  const part = partNamed(head);
  if (part) return constructionOf(part, body, say);
  const asked = partAsked(head, body);
  if (asked) return constructionOf(asked, body, say);
  if (!/^[\p{Lu}\p{Script=Katakana}\p{Script=Han}]/u.test(head)) return null;
  const prices = context.about.prices ? pricesOf(head, body, context.francs, say) : [];
  if (prices.length > 0) return prices;
  const model = modelOf(head, body, say);
  return (
    (model && [...model, ...partsOfModel(head, body, say), ...pricesOfModel(head, body, context.francs, say)]) ??
    (context.about.carriers && opensInTime(body) && isOnPiece(body) ? carriersOf(head, body, say) : null)
  );
}

/** "1980: 1 – 1,200", on a page of running numbers. */
function serialOf(head: string, body: string, say: Say): Proposal[] | null {
  const range = isPeriod(head) ? readNumberRange(body) : null;
  const [period] = readPeriods(head);
  if (!range || !period) return null;
  const { first, last } = range;
  return [say({ kind: 'serial', first, ...(last !== null && { last }), made: period.used })];
}

/** "A = 1990", either way round; a letter that came again has several years. */
function letterOf(head: string, body: string, say: Say): Proposal[] | null {
  const [written, told] = isPeriod(head) ? [body, head] : [head, body];
  const { code, lookAlike } = plainCode(written);
  const years = readPeriods(told);
  const single = years.every(({ used: [from, to] }) => from !== null && from === to);
  const rest = years.reduceRight((text, { start, end }) => text.slice(0, start) + text.slice(end), told);
  if (!/^[A-Za-z0-9]$/.test(code) || years.length === 0 || !single || /[\p{L}\d]{3}/u.test(rest)) return null;
  return years.map(({ used }) =>
    say({ kind: 'year-letter', letter: code, year: Number(used[0]) }, [lookAlike && 'look-alike']),
  );
}
