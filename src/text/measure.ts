import type { Measure } from '../listing/types';
import { anyLanguage } from './each-language';
import { type Folded, foldText, foldWords, sourceRange } from './fold';
import { isOtherThing, lettersFor } from './measure-label';
import { runsOf } from './measure-run';
import { nameSides, settleDepth } from './measure-side';
import { type Term, type Unit, unitMm } from './measure-term';
import { assumesCm, nextUnit, statedUnit } from './measure-unit';
import { isOfOther, isOfParcel, isWithHandles } from './measured-else';
import { aboutLength } from './unit-words';

/** A measurement with its place: `text.slice(start, end)` is `measure.words`. */
export interface FoundMeasure {
  measure: Measure;
  start: number;
  end: number;
  words: string;
}

const round = (value: number) => Math.round(value * 1000) / 1000;
const hedge = new RegExp(`(?:${anyLanguage(aboutLength)})\\s{0,2}$`, 'iu');

/** The unit that a measurement is told in, by the one that it was written in. */
const toldIn: Record<Unit, Measure['unit']> = { mm: 'mm', cm: 'cm', m: 'cm', in: 'in', ft: 'in' };

/**
 * Measurements of a text in order. Units may follow each number, the last one, or stand before the run; a labelled
 * run without a unit counts as centimetres. `precisionMm` is half of the last stated step, doubled after "circa".
 */
export function parseMeasures(text: string | Folded, language: string | null = null): FoundMeasure[] {
  const folded = typeof text === 'string' ? foldText(text) : text;
  const plain = foldWords(folded.text).text;
  const letters = lettersFor(language);
  return runsOf(folded.text, plain).flatMap((terms) => readRun(folded, plain, terms, letters, language));
}

function readRun(
  folded: Folded,
  plain: string,
  terms: readonly Term[],
  letters: Set<string>,
  language: string | null,
): FoundMeasure[] {
  const [first, last] = [terms[0]!, terms.at(-1)!];
  nameSides(folded, plain, terms, letters);
  const shared = statedUnit(folded.text, terms);
  const isAssumed = shared === null && assumesCm(plain, terms, language);
  if (shared === null && !isAssumed) return [];
  settleDepth(terms);
  const isLone = terms.length === 1;
  if (isLone && first.dimension === null && isOtherThing(plain, first)) return [];
  if (isOfParcel(plain, first.start, last.end)) return [];
  const isAbout = hedge.test(folded.text.slice(Math.max(0, first.start - 16), first.start));
  return terms.flatMap((term, index) => {
    const unit = term.unit ?? nextUnit(terms, index) ?? shared ?? 'cm';
    const mm = term.value * unitMm[unit];
    if (!(mm > 0) || mm > 5000) return [];
    if (isLone && (isWithHandles(plain, term) || isOfOther(plain, { start: term.start, mm }))) return [];
    const range = sourceRange(folded, term.start, term.end);
    const measure: Measure = {
      dimension: term.dimension ?? 'unknown',
      mm: round(mm),
      precisionMm: round(((term.step * unitMm[unit]) / 2) * (isAbout ? 2 : 1)),
      unit: isAssumed ? 'assumed-cm' : toldIn[unit],
      words: range.words,
    };
    return [{ measure, ...range }];
  });
}
