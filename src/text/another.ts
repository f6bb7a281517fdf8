import { anyLanguage } from './each-language';
import { lastEnd } from './ends';
import { theOne } from './joint-words';
import { type Topic, wordsOf } from './lexicon';
import { phrasePattern } from './phrases';

/*
 * Of what thing a sentence speaks at one place, after ConText (Harkema et al., J Biomed Inform 42(5), 2009, 839-851): a
 * trigger brings in another thing, and what follows it is said of that thing until words for this piece bring the
 * sentence back. Triggers are lists of ours by language. Common practice, no source.
 */

const sourceOf = (...topics: Topic[]) => phrasePattern(wordsOf(...topics), 'u').source;
const other = sourceOf('other-one');
const article = sourceOf('article', 'possessive');
const says = sourceOf('is', 'dates-from', 'has-or-stays');
const kin = `(?:${sourceOf('possessive')})\\s(?:${sourceOf('others-kin')})`;
const bag = `(?:${sourceOf('bag')}|ones?(?!\\p{L}))`;
/**
 * "My sister's is of 1986 and has pigskin, mine cotton"; "another bag", "une autre pochette"; "die andere ist", but not
 * "the other side".
 */
const anothers = new RegExp(
  [
    sourceOf('anothers-piece'),
    `(?:${other})\\s?(?:\\p{L}{1,15}\\s){0,2}?(?:${bag})`,
    `(?:${article})\\s?(?:${other})\\s(?:${says})`,
    // "My sister has a bag of 1990 as well".
    `(?:${kin})\\s(?:${sourceOf('has-or-stays')})\\s(?:${sourceOf('an')})\\s(?:\\p{L}{1,15}\\s){0,2}?(?:${bag})`,
    // "Mi prima tiene el de 2005", "ma cousine a celle de 1990".
    `(?:${kin})\\s(?:${sourceOf('has-or-stays')})\\s(?:${anyLanguage(theOne)})\\s`,
    `(?:${kin})'s\\s(?:\\p{L}{1,15}\\s){0,2}(?:${says})`,
    // "My previous one had", "mijn vorige was", "mon ancien sac avait".
    `(?:${sourceOf('possessive')})\\s(?:${sourceOf('previous-one')})\\s(?:(?:${bag})(?!\\s(?:${sourceOf('bag')}))|(?:${says}))`,
    `(?:${sourceOf('possessive', 'article')})\\s?(?:${bag})\\s(?:${sourceOf('previous-one')})\\s(?:${says})`,
    // "La mallette de mon oncle, elle, est de 1961".
    `(?:${sourceOf('article')})\\s?(?:\\p{L}{1,15}\\s)(?:\\p{L}{1,3}\\s)?(?:${kin})(?:,\\s\\p{L}{1,6},)?\\s(?:${says})`,
  ].join('|'),
  'gu',
);
/** "Mine", "this one"; "…, the bag" at the head of a clause of its own. */
const back = new RegExp(
  `${sourceOf('this-one', 'mine')}|[,;]\\s(?:(?:${sourceOf('and')})\\s)?(?:${sourceOf('article')})\\s?(?:${sourceOf('bag')})`,
  'gu',
);

/** Whether the words of a sentence ahead of a place speak of somebody's other piece there, and not of this one again. */
export function isOfAnothersPiece(ahead: string): boolean {
  const end = lastEnd(anothers, ahead);
  return end > 0 && !Array.from(ahead.matchAll(back)).some(({ index }) => index >= end);
}

const notOffered = sourceOf('not-offered');
const soSaid = new RegExp(notOffered, 'u');
/** "…, which I keep", "…, lo vendí": a clause behind with no subject of its own. */
const soSaidBehind = new RegExp(`^(?:\\p{L}{1,7}\\s){0,2}(?:${notOffered})`, 'u');
const named = new RegExp(sourceOf('bag', 'comes-along', 'small-thing', 'paper-or-key'), 'u');

/**
 * Whether the words behind a place, up to the end of its clause and in the clause behind that, say that what it speaks of
 * is not on offer: "from 2004 is not for sale", "of 1995, which I keep". "No box, it is not included" tells of the box.
 */
export function isNotOffered(rest: string, next: string): boolean {
  if (soSaid.test(rest)) return true;
  const found = soSaidBehind.exec(next);
  return found !== null && !named.test(found[0]);
}

/** Whether a sentence has spoken of somebody's other piece so far. */
export const namesAnothersPiece = (ahead: string): boolean => ahead.search(anothers) >= 0;
