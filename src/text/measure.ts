import type { Measure } from '../listing/types';
import { anyLanguage, anyWithGaps } from './each-language';
import { type Folded, foldText, foldWords, sourceRange } from './fold';
import { isOtherThing, labelNear, labelsLead, lettersFor, templateNear, withoutLabels } from './measure-label';
import { readSize, type Size } from './measure-number';
import type { Dimension } from './measure-words';
import { isOfOther, isOfParcel, isWithHandles } from './measured-else';
import { aboutLength, asCross, lengthToLength, sideBySide, sizeHeading, unitWords } from './unit-words';

/** A measurement with its place: `text.slice(start, end)` is `measure.words`. */
export interface FoundMeasure {
  measure: Measure;
  start: number;
  end: number;
  words: string;
}

export type Unit = 'mm' | 'cm' | 'm' | 'in' | 'ft';
const unitMm: Record<Unit, number> = { mm: 1, cm: 10, m: 1000, in: 25.4, ft: 304.8 };

const signs: Record<Unit, string> = {
  mm: 'mm|㎜',
  cm: 'cms?|㎝',
  in: "ins?\\.?(?=$|[\\s,;.)x×*/]|[\\u3040-\\u9fff])|\"|''",
  ft: '',
  m: 'm',
};
/** In the order in which they are tried: a metre begins as a millimetre does. */
const unitNames: Unit[] = ['mm', 'cm', 'in', 'ft', 'm'];
const unitPattern = new RegExp(
  `\\s{0,2}\\(?(?:${unitNames
    .map((unit) => `(${[anyLanguage(unitWords[unit]), signs[unit]].filter(Boolean).join('|')})`)
    .join('|')})(?:(?<=["'])|(?=x\\s?\\d|\\P{Script=Latin}|$))`,
  'iuy',
);
const unitFirst = /(?:^|[^\p{L}\d])(cm|mm|in|inch(?:es)?)\.?[ :)]{1,3}$/iu;

/** One number of a measurement in the folded text, with the size of the step that it was stated to. */
export interface Term {
  start: number;
  end: number;
  value: number;
  step: number;
  unit: Unit | null;
  dimension: Dimension | null;
  /** Whether a label letter or word names the dimension. */
  letter: string | null;
}

/** "Carryall 30 in brown": before other words than these, "in" is no inch. */
const inAsWord = /^ +(?!(?:wide|high|tall|deep|long|across|strap|drop|handle|x|by|w|h|d|l|and|at|approx)\b)\p{L}/iu;

const rangeJoint = new RegExp(`^\\s?(?:[-–—~〜～]|${anyLanguage(lengthToLength)})\\s?(?=\\d)`, 'iu');

/** "110-120 cm": the middle, to half the way between the ends; only where a unit stands behind the upper one. */
function upTo(text: string, low: Size): Size | null {
  const joint = rangeJoint.exec(text.slice(low.end, low.end + 8));
  const high = joint ? readSize(text, low.end + joint[0].length) : null;
  if (!high || high.value <= low.value || high.value > 2 * low.value) return null;
  unitPattern.lastIndex = high.end;
  if (!unitPattern.test(text)) return null;
  return { value: (low.value + high.value) / 2, step: high.value - low.value + high.step, end: high.end };
}

/** "1 m 20": the centimetres behind the metres. */
const centimetresBehind = /^(?:(\d\d)(?![\d/]|[.,]\d|\s?[x×%€"])|\s(\d\d)(?![\d/]|[.,]\d|\s?(?:x|×|%|€|"|\p{L})))/u;

const quoted = /(?:^|[\s:(])"[^"\n]{0,20}$/;

/** The number and unit at `position`; null when no number of a size stands there. */
function readTerm(text: string, position: number): Term | null {
  const alone = readSize(text, position);
  if (!alone) return null;
  const { value, step, end } = upTo(text, alone) ?? alone;
  unitPattern.lastIndex = end;
  const found = unitPattern.exec(text);
  // A code in quotes ends with one that is no inch.
  const unit = found?.[0] === '"' && quoted.test(text.slice(Math.max(0, position - 24), position)) ? null : found;
  const behind = unit && /m/i.test(unit[5] ?? '') ? centimetresBehind.exec(text.slice(unitPattern.lastIndex)) : null;
  if (unit && behind && step === 1) {
    const metres = value + Number(behind[1] ?? behind[2]) / 100;
    const last = end + unit[0].length + behind[0].length;
    return { start: position, end: last, value: metres, step: 0.01, unit: 'm', dimension: null, letter: null };
  }
  const preposition =
    unit !== null &&
    /^\s*in$/i.test(unit[0]) &&
    inAsWord.test(text.slice(end + unit[0].length, end + unit[0].length + 12));
  const index = unit && !preposition ? unit.slice(1).findIndex((part) => part !== undefined) : -1;
  return {
    start: position,
    end: end + (unit && !preposition ? unit[0].length : 0),
    value,
    step,
    unit: unitNames[index] ?? null,
    dimension: null,
    letter: null,
  };
}

const between = new RegExp(
  `^(?:\\s?\\(?[a-z]{1,2}(?![a-z])\\)?)?[\\s,、;:.=)]{0,32}\\(?(?:(?:x|×|✕|\\*|${anyLanguage(sideBySide)})[\\s.]{0,32}|[/／])?[\\s(]{0,32}(?:[a-z]{1,2}[\\s.:=)]{0,3})?$`,
  'u',
);

/** Whether nothing but joints and label words stands between two numbers. `gap` is folded by `foldWords`. */
const joins = (gap: string) =>
  gap.length <= 32 &&
  !/\n\s*\n/.test(gap) &&
  !bareLineEnd.test(gap) &&
  between.test(withoutLabels(gap).replace(ofSide, ' '));
/** "30 de ancho y 22 de alto": what joined a number to the word for its side. */
const ofSide = /\sd[ei]\s{1,2}(?=\p{L}{0,4}\s?)/u;
/** "Ref. 7781-04\n32 x 24 cm": nothing but the end of a line leads from a number to the next. */
const bareLineEnd = /^[ ,;.]{0,4}\n\s{0,4}$/;

/** A number inside a code or an amount: "MX3015", "#12", "£40". One label letter ("L30") is no code. */
const glued = /[#£$€¥]\s?$|\d[.,]?$|(?<!\d)[a-z][a-z\d]$|[a-z]\d[a-z]$|(?<=\d)[a-wyz]$|(?<=[a-z])[a-z]$/u;

/** More numbers than this are a table and no statement of one size; a longer run begins anew. */
const mostTerms = 24;

/** Runs of terms that are one statement: "25 x 19 x 15 cm", "L30 H21 P17". */
function runs(text: string, plain: string): Term[][] {
  const found: Term[][] = [];
  let run: Term[] = [];
  const starts = /\d|[½¼¾⅓⅔⅛⅜⅝⅞⅕]/g;
  for (let match = starts.exec(text); match; match = starts.exec(text)) {
    const term = readTerm(text, match.index);
    if (!term) continue;
    const previous = run[run.length - 1];
    if (previous && (run.length >= mostTerms || !joins(plain.slice(previous.end, term.start)))) {
      found.push(run);
      run = [];
    }
    const joint = run.length > 0 && /^\s?[x×]\s?$/.test(plain.slice(run[run.length - 1]!.end, term.start));
    // "8 3 0 4": digits one by one are a code.
    const digit =
      term.end - term.start === 1 &&
      (/(?<!\d)\d $/.test(plain.slice(Math.max(0, term.start - 3), term.start)) ||
        /^ \d(?![\d.,])/.test(plain.slice(term.end, term.end + 3)));
    if (joint || (!digit && !glued.test(plain.slice(Math.max(0, term.start - 3), term.start)))) run.push(term);
    starts.lastIndex = Math.max(term.end, match.index + 1);
  }
  found.push(run);
  return found.filter((terms) => terms.length > 0);
}

/** "17D cm", "21 hoog cm": the unit behind the label. */
const unitBehindLabel = /^\s?\(?(\p{L}{1,12})\)?\s{0,2}(cm|mm|in(?!\s\p{L})|inches|")(?!\p{L})/iu;

/** Gives every term of a run the unit that the run states once, at its end or its start ("cm 30x20"). */
function spreadUnit(text: string, terms: Term[]): Unit | null {
  const stated = [...terms].reverse().find((term) => term.unit)?.unit ?? null;
  const first = unitFirst.exec(text.slice(Math.max(0, terms[0]!.start - 10), terms[0]!.start))?.[1]?.toLowerCase();
  const last = terms[terms.length - 1]!;
  const behind = stated ? null : unitBehindLabel.exec(text.slice(last.end, last.end + 28));
  if (behind && (behind[1]!.length <= 2 || withoutLabels(foldWords(behind[1]!).text) === '')) {
    const unit = behind[2]!.toLowerCase();
    return unit === 'cm' || unit === 'mm' ? unit : 'in';
  }
  // "In 96 she bought it": a lone number behind "in" is no inch.
  if (first === 'in' && terms.length < 2) return stated;
  return stated ?? (first === undefined ? null : first === 'cm' || first === 'mm' ? first : 'in');
}

/** A side of a bag in centimetres, where a number's unit is not said and only two stand together. */
const isSide = ({ value }: Term) => value >= 5 && value <= 80;

/**
 * Assumed centimetres: only for labelled runs, and two or three numbers behind a heading, two with a cross between them,
 * three in English too; English ones must be too large for inches (common practice).
 */
function assumesCm(terms: Term[], language: string | null, headed: boolean, crossed: boolean): boolean {
  // "30x21x17": three sides of a bag, where nobody measures in inches.
  const bare =
    crossed && language !== null && !/^en/i.test(language) && Math.max(...terms.map(({ value }) => value)) >= 10;
  const tripled = terms.length === 3 && (headed || bare) && (crossed || !/^en/i.test(language ?? 'en'));
  const paired = terms.length === 2 && headed && crossed && terms.every(isSide);
  if (!tripled && !paired && terms.filter((term) => term.letter ?? term.dimension).length < 2) return false;
  const tag = (language ?? '').toLowerCase();
  if (tag === 'en-us' || tag === 'en-ca') return false;
  return !tag.startsWith('en') || tag.includes('-') || Math.max(...terms.map((term) => term.value)) >= 20;
}

const heading = new RegExp(
  `(?:${anyLanguage(sizeHeading)})[\\s:(]{0,4}(?:${anyLanguage(aboutLength)})?[\\s):]{0,3}$`,
  'u',
);

const crossing = new RegExp(`^\\s?(?:[x×*]|${anyWithGaps(asCross)})\\s?$`, 'u');

const round = (value: number) => Math.round(value * 1000) / 1000;
const hedge = new RegExp(`(?:${anyLanguage(aboutLength)})\\s{0,2}$`, 'iu');

/**
 * Measurements of a text in order. Units may follow each number, the last one, or stand before the run; a labelled
 * run without a unit counts as centimetres. `precisionMm` is half of the last stated step, doubled after "circa".
 */
export function parseMeasures(text: string, language: string | null = null): FoundMeasure[] {
  const folded = foldText(text);
  const plain = foldWords(folded.text).text;
  const letters = lettersFor(language);
  return runs(folded.text, plain).flatMap((terms) => readRun(folded, plain, terms, letters, language));
}

function readRun(
  folded: Folded,
  plain: string,
  terms: Term[],
  letters: Set<string>,
  language: string | null,
): FoundMeasure[] {
  const text = folded.text;
  const template = templateNear(plain, terms[0]!.start, terms[terms.length - 1]!.end, terms.length);
  const lead = labelsLead(plain, terms[0]!, letters);
  terms.forEach((term, index) => {
    const label =
      template?.[index] ?? labelNear(plain, { ...term, closes: closesSentence(folded, term.end) }, letters, lead);
    term.dimension = label?.dimension ?? null;
    term.letter = label?.letter ?? null;
  });
  // `12" (30 cm) wide`: both say the same side.
  terms.forEach((term, index) => {
    const other = terms[index + 1];
    if (!other || !/^\s?[(/=]\s?$/.test(text.slice(term.end, other.start)) || template) return;
    if (term.unit === null || term.unit === other.unit) return;
    term.dimension ??= other.dimension;
    other.dimension = term.dimension;
  });
  const shared = spreadUnit(text, terms);
  const assumed =
    shared === null &&
    assumesCm(
      terms,
      language,
      heading.test(plain.slice(Math.max(0, terms[0]!.start - 32), terms[0]!.start)),
      terms.every(
        ({ value, dimension }, at) =>
          value >= 2 &&
          (at === 0 ||
            // "28 by 21, 9 deep": the third says its side.
            (at === 2 && dimension !== null) ||
            crossing.test(plain.slice(terms[at - 1]!.end, terms[at]!.start))),
      ),
    );
  if (shared === null && !assumed) return [];
  const written = terms.map((term) => term.letter);
  // "L x B x H": beside a length, the breadth is the depth. Common practice, no source.
  if (written.includes('l') && written.includes('b'))
    for (const term of terms) if (term.letter === 'b') term.dimension = 'depth';
  if (written.filter((letter) => letter === 'l').length === 2) terms[written.lastIndexOf('l')]!.dimension = 'depth';
  secondWidthIsDepth(terms);
  const lone = terms.length === 1 && terms[0]!.dimension === null;
  if (lone && isOtherThing(plain, terms[0]!)) return [];
  if (isOfParcel(plain, terms[0]!.start, terms[terms.length - 1]!.end)) return [];
  const about = hedge.test(text.slice(Math.max(0, terms[0]!.start - 16), terms[0]!.start));
  return terms.flatMap((term, index) => {
    const unit = term.unit ?? nextUnit(terms, index) ?? shared ?? 'cm';
    const mm = term.value * unitMm[unit];
    if (!(mm > 0) || mm > 5000) return [];
    if (terms.length === 1 && (isWithHandles(plain, term) || isOfOther(plain, { start: term.start, mm }))) return [];
    const precisionMm = round(((term.step * unitMm[unit]) / 2) * (about ? 2 : 1));
    const range = sourceRange(folded, term.start, term.end);
    const stated: Measure['unit'] = assumed
      ? 'assumed-cm'
      : unit === 'in' || unit === 'ft'
        ? 'in'
        : unit === 'mm'
          ? 'mm'
          : 'cm';
    return [
      {
        measure: {
          dimension: term.dimension ?? 'unknown',
          mm: round(mm),
          precisionMm,
          unit: stated,
          words: range.words,
        },
        ...range,
      },
    ];
  });
}

/** "3.9 in. Strap up to 47 in.": the full stop of the unit closes the sentence too. */
const closesSentence = (folded: Folded, end: number): boolean => {
  const next = sourceRange(folded, end - 1, end).end;
  return folded.text[end - 1] === '.' && /^\s+\p{Lu}/u.test(folded.source.slice(next, next + 8));
};

/** "Länge 30, Höhe 21, Breite 17": beside a length, a clearly smaller width is the depth. Common practice, no source. */
function secondWidthIsDepth(terms: Term[]): void {
  const widths = terms.filter((term) => term.dimension === 'width');
  if (widths.length !== 2 || terms.some((term) => term.dimension === 'depth')) return;
  const [first, second] = widths as [Term, Term];
  if (first.unit !== second.unit && first.unit && second.unit) return;
  if (Math.max(first.value, second.value) < Math.min(first.value, second.value) * 1.15) return;
  (first.value < second.value ? first : second).dimension = 'depth';
}

/** The unit of the nearest later term: in `12 x 8" (30 x 20 cm)` each half has its own. */
const nextUnit = (terms: Term[], index: number): Unit | null =>
  terms.slice(index).find((term) => term.unit)?.unit ?? null;
