import { anyLanguage, anyWithGaps } from './each-language';
import { afterLast, lastEnd } from './ends';
import { tableWords, wordsOf } from './lexicon';
import { anyOf, phrasePattern } from './phrases';
import { bodyHeight, hangingLength, inclusive, opened, opensUp, unitWords } from './unit-words';

/*
 * Lengths that are no side of the piece though nothing but its sentence tells so: what it is sent in, what lies beside it
 * for scale, how tall the seller is, and how high it stands with its handles up. Common practice, no source.
 */

/** How far a length's sentence is read ahead of it and behind it. */
const [ahead, behind] = [72, 48];
const stops = /[!?;。]|(?<!(?:in[ck]l|ca|approx|env|mit))\.(?=\s|$)/gu;
const sentenceAhead = (text: string, start: number): string =>
  afterLast(text.slice(Math.max(0, start - ahead), start).replace(stops, '\n'), /\n/u);
/** Behind the number before, in the same sentence. */
const nearAhead = (text: string, start: number): string => afterLast(sentenceAhead(text, start), /\d/u);

const clauseBehind = (text: string, end: number): string =>
  text.slice(end, end + behind).split(/[.,;。、\n]/u, 1)[0] as string;

const the = `(?:(?:${anyOf(wordsOf('article', 'possessive'))})\\s)?`;
const handles = anyOf(tableWords('part').handle);
const included = `${anyOf(wordsOf('with'))}|co[li]|${anyLanguage(inclusive)}`;
const withHandles = new RegExp(
  `(?<!\\p{L})(?:(?:${included})\\.?\\s${the}(?:${handles})(?!\\p{L})|(?:${handles})[をも]?\\s?(?:${anyLanguage(inclusive)}))`,
  'u',
);
/** "Mit aufgestellten Henkeln 33 cm", "with the handles up 33 cm". */
const withHandlesSo = new RegExp(
  `(?<!\\p{L})(?:${included})\\.?\\s${the}(?:\\p{L}{3,16}\\s)(?:${handles})(?!\\p{L})`,
  'u',
);
const hangs = new RegExp(anyLanguage(hangingLength), 'u');

/** "With the flap open", "mit offener Klappe", "フラップを開けると". */
const openedUp = new RegExp(
  `(?<!\\p{L})(?:${included})\\s${the}(?:(?:${anyWithGaps(opensUp)})\\s(?:${anyWithGaps(opened)})|(?:${anyWithGaps(opened)})\\s(?:${anyWithGaps(opensUp)}))|(?:${opensUp[6]})(?:${opened[6]})`,
  'u',
);

/** "38 cm high with the handles", "持ち手を含めると高さ38cm": higher than the piece, and no length of the handles. */
export function isWithHandles(text: string, { start, end }: { start: number; end: number }): boolean {
  const near = nearAhead(text, start);
  if (openedUp.test(near) || openedUp.test(clauseBehind(text, end))) return true;
  if (withHandles.test(near) || withHandlesSo.test(near)) return !hangs.test(near);
  return withHandles.test(clauseBehind(text, end));
}

const parcel = phrasePattern(wordsOf('parcel'), 'u');

/** "Parcel 45 x 35 x 20 cm": what the piece is sent in. */
export const isOfParcel = (text: string, start: number, end: number): boolean =>
  parcel.test(nearAhead(text, start)) || parcel.test(clauseBehind(text, end));

const besides = phrasePattern(wordsOf('scale-thing'));
const pieces = phrasePattern(wordsOf('bag', 'this-one', 'mine'), 'u');
const length = new RegExp(`\\d\\s?(?:[cm]m|"|${anyLanguage(unitWords.in, unitWords.cm)})`, 'u');
const sides = phrasePattern(Object.values(tableWords('dimension')).flat(), 'u');
const somebody = new RegExp(`(?<!\\p{L})(?:${anyLanguage(bodyHeight)})`, 'u');
const leastOfPerson = 1300;

/** "The phone in the photo is 15 cm tall", "ein Ordner, 32 cm hoch", "je mesure 1m62": of something or somebody else. */
export function isOfOther(text: string, { start, mm }: { start: number; mm: number }): boolean {
  const said = sentenceAhead(text, start);
  if (mm >= leastOfPerson && somebody.test(said)) return true;
  const last = lastEnd(besides, said);
  const since = said.slice(last);
  if (last === 0 || pieces.test(since) || length.test(since)) return false;
  // "Fits a laptop, width 38 cm": a label of its own behind a comma is one of the piece.
  return !/[,、]/.test(since) || !sides.test(since);
}
