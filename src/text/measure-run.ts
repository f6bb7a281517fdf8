import { anyLanguage } from './each-language';
import { withoutLabels } from './measure-label';
import { readTerm, type Term } from './measure-term';
import { dimensionLetters } from './measure-words';
import { sideBySide } from './unit-words';

const between = new RegExp(
  `^(?:\\s?\\(?[a-z]{1,2}(?![a-z])\\)?)?[\\s,、;:.=)]{0,32}\\(?(?:(?:x|×|✕|\\*|${anyLanguage(sideBySide)})[\\s.]{0,32}|[/／])?[\\s(]{0,32}(?:[a-z]{1,2}[\\s.:=)]{0,3})?$`,
  'u',
);

/** Whether nothing but joints and label words stands between two numbers. `gap` is folded by `foldWords`. */
const joins = (gap: string) =>
  gap.length <= 32 &&
  !/\n\s*\n/.test(gap) &&
  !bareLineEnd.test(gap) &&
  !closedBracket.test(gap) &&
  between.test(withoutLabels(gap).replace(ofSide, ' '));
/** "30 de ancho y 22 de alto": what joined a number to the word for its side. */
const ofSide = /\sd[ei]\s{1,2}(?=\p{L}{0,4}\s?)/u;
/** "Ref. 7781-04\n32 x 24 cm": nothing but the end of a line leads from a number to the next. */
const bareLineEnd = /^[ ,;.]{0,4}\n\s{0,4}$/;

/** "M3-214/98. 28 x 17 cm", "… 118/94. È 24 x 20": a number without a unit ends its sentence. */
const nextSentence = /^\s?\.\s{1,2}(?:e\s)?$/;
/** "(foto 4). 23x17x8": a full stop behind a bracket. */
const closedBracket = /\)\s?\.\s/;
/** "1B 220": a group of a code stands ahead, and no letter of a side. */
const codeAhead = /(?<!\d)\d[a-z] $/;
const leastInCode = 100;

/** A number inside a code or an amount: "MX3015", "#12", "£40", "T5-118". One label letter ("L30") is no code. */
const glued = /[#£$€¥]\s?$|\d[.,]?$|(?<!\d)[a-z][a-z\d]$|[a-z]\d[a-z]$|(?<=\d)[a-wyz]$|(?<=[a-z])[a-z]$|[a-z]\d-$/u;

/** "R20": a letter by itself that names no side. */
const loneLetter = /(?<![\p{L}\d])([a-z])$/u;
function isOfNoSide(ahead: string): boolean {
  const letter = loneLetter.exec(ahead)?.[1];
  return letter !== undefined && !(letter in dimensionLetters);
}

/** More numbers than this are a table and no statement of one size; a longer run begins anew. */
const mostTerms = 24;

/** Runs of terms that are one statement: "25 x 19 x 15 cm", "L30 H21 P17". */
export function runsOf(text: string, plain: string): Term[][] {
  const found: Term[][] = [];
  let run: Term[] = [];
  const starts = /\d|[½¼¾⅓⅔⅛⅜⅝⅞⅕]/g;
  for (let match = starts.exec(text); match; match = starts.exec(text)) {
    const term = readTerm(text, match.index);
    if (!term) continue;
    const previous = run[run.length - 1];
    const gap = previous ? plain.slice(previous.end, term.start) : '';
    if (previous && (run.length >= mostTerms || !joins(gap) || (!previous.unit && nextSentence.test(gap)))) {
      found.push(run);
      run = [];
    }
    const joint = run.length > 0 && /^\s?[x×]\s?$/.test(plain.slice(run[run.length - 1]!.end, term.start));
    // "8 3 0 4": digits one by one are a code.
    const digit =
      term.end - term.start === 1 &&
      (/(?<!\d)\d $/.test(plain.slice(Math.max(0, term.start - 3), term.start)) ||
        /^ \d(?![\d.,])/.test(plain.slice(term.end, term.end + 3)));
    const inCode = term.value >= leastInCode && codeAhead.test(plain.slice(Math.max(0, term.start - 4), term.start));
    const ahead = plain.slice(Math.max(0, term.start - 3), term.start);
    if (joint || (!digit && !inCode && !glued.test(ahead) && !isOfNoSide(ahead))) run.push(term);
    starts.lastIndex = Math.max(term.end, match.index + 1);
  }
  found.push(run);
  return found.filter((terms) => terms.length > 0);
}
