import { foldWords, isNegated } from '../../text';
import type { OwnFields } from '../propose';
import { namesCarrier } from '../said/carrier';
import { readExamples } from '../said/example';
import { readCounts } from '../said/number';
import { withoutPeriods } from '../said/used-text';
import { tellingFinder } from '../words';

const codeWords = tellingFinder('code');
const bears = tellingFinder('bears-code');
const began = tellingFinder('began-code');
const stamping = tellingFinder('stamping');
const toStamp = tellingFinder('to-stamp');
/** What tells of a later form, of a place or of a part of the code, and not of codes as such. */
const ofElse = tellingFinder('code-changed', 'serial', 'letters', 'plant', 'month', 'week', 'no-code');

const figures = tellingFinder('digits');
/** "In the early years the mark was a shield without figures": what was stamped was no code. */
export function deniesFigures(text: string): boolean {
  const folded = foldWords(text);
  return figures(folded).some(({ foldedStart, foldedEnd }) => isNegated(folded.text, foldedStart, foldedEnd));
}

const articles = new Set('a an un une ein eine einen una uno een'.split(' '));
/** Whether a code is spoken of for the first time: "a small date code", "un codice". */
const speaksOfSome = (text: string): boolean =>
  codeWords(text).some(
    ({ start, end }) =>
      namesCarrier(text.slice(start, end)) === null &&
      (text
        .slice(Math.max(0, start - 30), start)
        .trim()
        .split(/\s/)
        .slice(-3)
        .some((word) => articles.has(word.toLowerCase())) ||
        // In Japanese the particle says it.
        text[end] === 'が'),
  );

/**
 * "Its bags carry a date code from 1958", "they began to stamp them in 1966": since when there are codes, where a sentence
 * says no more of them than that. A page that tells of earlier ones means a change of them.
 */
export function stampedSince(
  sentence: string,
  day: string,
  placed = false,
): Extract<OwnFields, { kind: 'stamped' }> | null {
  const { text, periods } = withoutPeriods(sentence);
  const [period, ...more] = periods;
  const begins = period?.form === 'since' || began(text).length > 0;
  const isStamping = (stamping(text).length > 0 || toStamp(text).length > 0) && begins;
  if (!period || more.length > 0 || period.used[0] === null || (codeWords(text).length === 0 && !isStamping))
    return null;
  // "Since 1961 they bear a code, under the flap": the code, and not a code, would be one that was before.
  if (placed && !speaksOfSome(text)) return null;
  if (
    (!placed && namesCarrier(text) !== null) ||
    ofElse(text).some(({ start, end }) => text.slice(start, end) !== '製造番号') ||
    readCounts(text).length > 0 ||
    readExamples(sentence, day).length > 0
  )
    return null;
  const told = period.form === 'since' ? isStamping || bears(text).length > 0 || begins : begins;
  if (!told || (period.form !== 'since' && period.form !== 'year')) return null;
  return {
    kind: 'stamped',
    used: [period.used[0], null],
    ...(period.about.includes('from') && { about: ['from'] }),
  };
}
