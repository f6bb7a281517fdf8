import { type Folded, foldWords, isNegated } from '../../text';
import { andWords } from '../and-words';
import { blanked } from '../said/blanked';
import { readExamples, type SaidExample } from '../said/example';
import { readCounts } from '../said/number';
import type { SaidPeriod } from '../said/period';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder, wholeWords } from '../words';
import type { Sentence } from './sentences';
import { deniesFigures, stampedSince } from './stamped';

const words = tellingFinder('code', 'no-code');
const order = tellingFinder('plant', 'letters', 'then');
const positions = tellingFinder('ordinal-1', 'ordinal-2', 'put-before', 'put-behind', 'last-ones');
const dateUnits = tellingFinder('year', 'month', 'week', 'day', 'quarter');
const units = tellingFinder('year', 'month', 'week', 'day', 'quarter', 'ordinal-1', 'ordinal-2', 'last-ones');

/** What a sentence says by itself of a code's form and time. */
export interface Told {
  sentence: Sentence;
  periods: SaidPeriod[];
  examples: SaidExample[];
  counts: number;
  units: number;
  noCode: boolean;
  /** Whether it tells in which order a code is written, without counting its digits. */
  describes: boolean;
  /** Whether it tells since when there are codes, and no more of them than that. */
  begins: boolean;
  /** Whether its example is a code that the page showed before: one only where its description reads it so. */
  assumed?: boolean;
}

/** Looks at a sentence read on a day (ISO 8601). */
export function look(sentence: Sentence, day: string): Told {
  const examples = readExamples(sentence.text, day);
  const inExample = (at: number) => examples.some(({ start, end }) => at >= start && at < end);
  // "From 1980 …, for instance 0585G for May 1985": the date of the code ends no time.
  const { text, periods } = withoutPeriods(blanked(sentence.text, examples));
  return {
    sentence,
    examples,
    periods: periods.filter(
      ({ start }) => !inExample(start) && start < legendIn(sentence.text) && !isInLegend(sentence.text, start),
    ),
    counts: readCounts(sentence.text).length,
    units: units(sentence.text).filter(({ start }) => !inExample(start)).length,
    noCode: deniesCode(sentence.text) || isNothing(text) || deniesAll(text) || bearsNoFigures(sentence.text, periods),
    describes: describesOrder(sentence.text),
    begins: stampedSince(sentence.text, day) !== null,
  };
}

const codesInBracket = /^(?:\p{Lu}{1,3}\s(?:=\s?)?(?:\p{Ll}{1,12}\s|[dl]['’]){0,2}\p{Lu}\p{Ll}|\p{Lu}{1,3}\s?[=:])/u;
/** Whether a place stands in brackets that tell what letters stand for: "the workshop (E for Elda and, from 1993, M for Morocco)". */
function isInLegend(text: string, at: number): boolean {
  const open = text.lastIndexOf('(', at);
  return (
    open > text.lastIndexOf(')', at) &&
    (codesInBracket.test(text.slice(open + 1, open + 60)) || townBefore.test(text.slice(Math.max(0, open - 60), open)))
  );
}

/** "S for Stade or C for Cuxhaven (…": what stands in the bracket is of the town. */
const townBefore =
  /(?<![\p{L}\d])\p{Lu}{1,3}\s(?:=|for|für|pour|per|para|voor|is|ist|est|è|es)\s(?:[dl]['’]|\p{Ll}{1,4}\s)?\p{Lu}\p{Ll}[\p{L}’'-]{1,30}\s?$/u;

const legend = /[:：]\s(?=\p{Lu}{1,3}\s(?:=\s?)?(?:\p{Ll}{2,12}\s)?\p{Lu}\p{Ll}|\p{Lu}{1,3}\s\()/u;
/** Where a sentence turns to what its letters stand for: "a letter in front: B Bern, since 1984 also T for Turkey". */
function legendIn(text: string): number {
  const at = text.search(legend);
  return at < 0 ? text.length : at;
}

const stamping = tellingFinder('stamping');
const nothing = tellingFinder('nothing-said');
/** "Nothing was stamped", "hat gar nicht gestempelt". */
function deniesStamping(folded: Folded): boolean {
  const [verb] = stamping(folded);
  if (!verb) return false;
  const near = nothing(folded).some(({ start }) => Math.abs(start - verb.start) <= reach);
  return near || isNegated(folded.text, verb.foldedStart, verb.foldedEnd);
}

/** Letters before a word for a code in which a denial is one of it: "there was not yet any code". */
const reach = 24;

const none = wholeWords('none-at-all');
/** "Bags without figures were made before 1966." */
const bearsNoFigures = (text: string, periods: readonly SaidPeriod[]): boolean =>
  periods.length === 1 && periods[0]!.form === 'until' && deniesFigures(text) && readCounts(text).length === 0;

/** "Before 1965, nothing." */
export const isNothing = (text: string): boolean => none.has(foldWords(text.replace(/[^\p{L}\s]/gu, ' ')).text.trim());

const nones = tellingFinder('none-at-all');
const bears = tellingFinder('bears-code', 'stamping');
const thereWas = tellingFinder('there-was');
/** "There were none before 1962", "le borse non portavano nulla": that pieces bore nothing, and nothing more behind it. */
function deniesAll(text: string): boolean {
  const last = nones(text).at(-1);
  const behind = last === undefined ? '' : text.slice(last.end).replace(onIt, '');
  const closes = last !== undefined && !/[\p{L}\d]/u.test(behind);
  return closes && text.length <= longestDenial && (bears(text).length > 0 || thereWas(text).length > 0);
}
const longestDenial = 70;
/** "Vóór 1972 stond er niets in": on the piece, or in it. */
const onIt =
  /^\s(?:in|on|op|erin|erop|drin|drauf|darin|darauf|dessus|dedans|dentro|sopra|encima)(?:\s(?:it|them))?(?!\p{L})/iu;

/** "Without a code", "keine Codes", "non c'era alcun codice": by its own phrase, or by a denial right before the code. */
export function deniesCode(text: string): boolean {
  const folded = foldWords(text);
  if (deniesStamping(folded)) return true;
  return words(folded).some(({ value, foldedStart, foldedEnd }) => {
    if (value === 'no-code') return true;
    const from = foldedStart <= reach ? 0 : folded.text.indexOf(' ', foldedStart - reach);
    const near = folded.text.slice(from, foldedEnd);
    return from >= 0 && order(near).length === 0 && isNegated(near, foldedStart - from, foldedEnd - from);
  });
}

/** "The month, then the year, then the letter of the workshop": two units at least, and that they follow each other. */
const describesOrder = (text: string): boolean =>
  new Set(dateUnits(text).map(({ value }) => value)).size >= 2 &&
  (order(text).length > 0 || positions(text).length > 0 || adjoin(text));

/** "Week and year", "month + year": two units of a date with nothing but what joins them between. */
function adjoin(text: string): boolean {
  const hits = dateUnits(text);
  return hits.some(({ end, value }, at) => {
    const next = hits[at + 1];
    return next !== undefined && next.value !== value && joined.test(text.slice(end, next.start));
  });
}
const joined = new RegExp(
  `^\\s?(?:[,、+&/]|(?:${andWords})(?!\\p{L})|[とや])\\s?(?:(?:the|le|la|das|den|der|die|il|lo|el|het|de)\\s|l['’])?$`,
  'iu',
);
