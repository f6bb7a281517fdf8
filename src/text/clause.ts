import { isNotOffered, isOfAnothersPiece } from './another';
import { anyLanguage } from './each-language';
import { lastEnd } from './ends';
import { looksSo } from './joint-words';
import { topics, wordsOf } from './lexicon';
import { anyOf, phrasePattern, phraseTest } from './phrases';

/** How far a clause is followed: longer ones say nothing reliable of a word in their middle. */
const reach = 160;
/** The stop that ends a sentence: "receipt no. 209934", "ca. 1945", "3. Quartal" go on behind their own. */
const fullStop =
  '(?<!(?<!\\d)\\d(?=\\.\\s(?:quartal|halbjahr|kwartaal|trimestre|jahrhundert|jh|drittel|viertel|halfte)))(?<!(?<![a-z])(?:no|nr|num|jg|ca|env|aprox|approx)(?=\\.\\s\\d))\\.(?=\\s|$)';
const sentenceBreak = new RegExp(`[!?;。、\\n\\r|•·]|${fullStop}|,(?=\\s)|\\s[-–—/]\\s|[()[\\]]`, 'gu');
/** Italian "but" is French "my" behind these. */
const frenchMy =
  "(?<!(?<!\\p{L})(?:a|par|pour|dans|de|avec|et|chez|sur|que|qui|est|sont|sans|depuis|vends|vend|donne|ai|ete|fut|contre|vers|comme|toute|suite a|c'etait) )ma(?!\\p{L})";
const softBreak = new RegExp(
  `${phrasePattern(wordsOf('but').filter((word) => word !== 'ma')).source}|(?<!\\p{L})${frenchMy}`,
  'gu',
);
const hardBreak = new RegExp(`[!?;。\\n\\r|•·]|${fullStop}`, 'gu');

const clauseBreaks = [sentenceBreak, softBreak];
const sentenceBreaks = [hardBreak];

/** Where the clause or sentence begins that a place stands in, or that ends there. */
function opening(text: string, place: number, breaks: readonly RegExp[]): number {
  const from = Math.max(0, place - reach);
  const ahead = text.slice(from, place);
  const ends = breaks.flatMap((stop) =>
    Array.from(ahead.matchAll(stop), ({ index, 0: found }) => index + found.length),
  );
  return from + Math.max(0, ...ends);
}

/** Where the clause or sentence ends that a place stands in, or that begins there. */
function closing(text: string, place: number, breaks: readonly RegExp[]): number {
  const behind = text.slice(place, place + reach);
  const stops = breaks.map((stop) => behind.search(stop)).filter((at) => at >= 0);
  return place + Math.min(behind.length, ...stops);
}

/** The clause around a range of folded text: up to a comma, bracket, "but" or the end of the sentence. */
export const clauseAround = (text: string, start: number, end: number) => ({
  start: opening(text, start, clauseBreaks),
  end: closing(text, end, clauseBreaks),
});

/** The sentence around a range of folded text. */
export const sentenceAround = (text: string, start: number, end: number) => ({
  start: opening(text, start, sentenceBreaks),
  end: closing(text, end, sentenceBreaks),
});

/** What stands ahead of a place in its clause, and behind it; the same in its sentence. */
export const aheadInClause = (text: string, place: number): string =>
  text.slice(opening(text, place, clauseBreaks), place);
export const behindInClause = (text: string, place: number): string =>
  text.slice(place, closing(text, place, clauseBreaks));
export const aheadInSentence = (text: string, place: number): string =>
  text.slice(opening(text, place, sentenceBreaks), place);
export const behindInSentence = (text: string, place: number): string =>
  text.slice(place, closing(text, place, sentenceBreaks));

/** The clause that a comma parts from the one that starts at a place; null where no comma does. */
export const clauseBeforeComma = (text: string, clauseStart: number): { start: number; end: number } | null =>
  text[clauseStart - 1] === ',' ? clauseAround(text, clauseStart - 1, clauseStart - 1) : null;

const opensWithBut = new RegExp(`^[,;.]?\\s?(?:${softBreak.source})`, 'u');
/** Whether "but" stands where the clause around a range of folded text ends: "said 1983, but she said that of everything". */
export function isSetAgainst(text: string, start: number, end: number): boolean {
  const { end: closes } = clauseAround(text, start, end);
  return opensWithBut.test(text.slice(closes, closes + 16));
}

const seems = new RegExp(
  `(?<!\\p{L})(?:${anyLanguage(looksSo)})(?!\\p{L})|${phrasePattern(wordsOf('looks-like')).source}`,
  'u',
);
/** "Looks unused in the pictures, but the corners are rubbed", "looks like KV0975 in the photo but says KV0915". */
export function isOnlySeeming(text: string, start: number, end: number): boolean {
  return seems.test(aheadInClause(text, start)) && isSetAgainst(text, start, end);
}

/** Longer than any phrase together with what may stand behind it. */
const near = 100;
/** What stands right ahead of a place, for a pattern that ends there: it is looked for no further back. */
export const rightAhead = (text: string, place: number): string => text.slice(Math.max(0, place - near), place);
/** What stands right behind a place, for a pattern that begins there. */
export const rightBehind = (text: string, place: number): string => text.slice(place, place + near);

const { ja: behind, ...before } = topics.negation;
const negations = phrasePattern(Object.values(before).flat());
const notNegating = phrasePattern(wordsOf('no-negation'));
/** A Japanese denial right behind ("傷なし", not "なくす"), or a field's own "no" ("Scratches: none"). */
const negatedAfter = new RegExp(
  `^\\s?[」』]?(?:品|製|物|もの|色|系)?(?:では|でも|は|が|も|じゃ|で|に)?(?:${anyOf(behind)})(?!(?<=なく)[なす])|^\\s{0,2}(?:-|:)?\\s{0,2}(?:${anyOf(wordsOf('refused-in-field'))})(?=$|[\\s,.;!])`,
  'u',
);

/** "No code because it is old", "jamais portée donc comme neuve": reason and consequence are not denied; "not so new" is. */
const reasons = phrasePattern(wordsOf('because', 'it-follows').filter((word) => word !== 'so'));

/**
 * Whether the words from `start` to `end` (folded text) are denied: a negation of the seven languages at most four
 * words before them in the same clause, or a Japanese one right after.
 */
export function isNegated(text: string, start: number, end: number): boolean {
  const ahead = aheadInClause(text, start);
  const reason = Math.max(0, ...Array.from(ahead.matchAll(reasons), ({ index }) => index));
  const before = ahead.slice(reason).replace(notNegating, (found) => ' '.repeat(found.length));
  const last = lastEnd(negations, before);
  if (last > 0 && (before.slice(last).match(/[\p{L}\p{N}]+/gu) ?? []).length <= 4) return true;
  if (negatedAfter.test(text.slice(end, end + 16)) || closesDenied.test(behindInClause(text, end))) return true;
  return saidWrongly.test(behindInSentence(text, end));
}

/** "Somebody told me that it is of Spain, which is not true", "current ones have satin, this one does not". */
const saidWrongly = new RegExp(
  `(?:${phrasePattern(wordsOf('said-wrongly', 'denied-behind'), 'u').source})(?=\\s?(?:[.!;,)…。、\\n]|$))`,
  'u',
);

/** "Outlet-Ware ist das nicht": the denial ends the clause. */
const closesDenied = new RegExp(
  `^(?:[\\s-]\\p{L}{1,12})?\\s(?:${phrasePattern(wordsOf('denied-behind'), 'u').source})\\s?$`,
  'u',
);

/** Whether words are a denial by themselves: "no patina". */
export const isDenial = (words: string): boolean => words.search(negations) === 0;

const others = phrasePattern(wordsOf('another-piece'), 'u');
/** "Aに似た", "Aに比べ": in Japanese the comparison stands right behind. */
const othersBehind = new RegExp(
  `^\\s?(?:${anyOf(topics['another-piece'].ja.filter((words) => /^[にと]/.test(words)))})`,
  'u',
);

/** "未使用のものをもう一つ持っています": Japanese has the verb last. */
const ownsAnother = /^[^。、]{0,8}もう(?:[一1１]|ひと)(?:つ|個|点)[^。、]{0,4}(?:持|あり|所有)/u;

/** "A suede lining only the later ones have", "newer models have satin": the clause tells of them. */
const laterOnes = phraseTest(wordsOf('later-ones'));

/**
 * Whether the words at `start` are said of another piece: the clause speaks of one before them ("similar to the 1990s
 * model"), or the sentence of somebody's ("my sister's is of 1986, and has pigskin"), or what they are said of is not on
 * offer ("that of 1995 is not for sale").
 */
export function isAboutAnother(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  return (
    others.test(text.slice(Math.max(clause.start, start - 60), start)) ||
    laterOnes.test(text.slice(Math.max(clause.start, start - 60), Math.min(clause.end, end + 60))) ||
    othersBehind.test(text.slice(end, end + 8)) ||
    ownsAnother.test(text.slice(end, end + 32)) ||
    isOfAnothersPiece(aheadInSentence(text, start)) ||
    isNotOffered(text.slice(end, clause.end), nextClause(text, clause.end))
  );
}

/** The words of a sentence that stand in the clause behind a comma, or behind the bracket that a place stands in. */
function nextClause(text: string, at: number): string {
  const joint = /^[)\]]?,?\s?(?<=[,)\]]\s?)|^[([]\s?|^\s[-–—]\s/.exec(text.slice(at, at + 4));
  if (!joint) return '';
  const start = at + joint[0].length;
  return behindInClause(text, start);
}
