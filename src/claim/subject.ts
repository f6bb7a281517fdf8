import {
  aheadInClause,
  aheadInSentence,
  anyLanguage,
  clauseAround,
  jointWords,
  partWords,
  phrasePattern,
  phraseTest,
  rightAhead,
  rightBehind,
  textPattern,
  topics,
  wordsOf,
} from '../text';
import { bagNouns, namesBag } from './goods';

/*
 * What a clause speaks of, where that is not the piece. Whatever is in doubt counts as something else: what is not said
 * plainly of the piece judges nothing.
 */

/** The piece itself may be called so in a title: "Ondrasse belt". */
const alsoParts = new Set([...Object.values(partWords).flat(), 'purse', 'cartera', 'watch']);
const things = phraseTest([
  ...wordsOf('comes-along', 'beside-the-piece'),
  ...wordsOf('small-thing').filter((word) => !alsoParts.has(word)),
]).source;
const thing = textPattern(things);
const accompanies = textPattern(`(?:${phrasePattern(wordsOf('with')).source})\\s(?:\\p{L}{1,20}\\s){0,3}$`);

/** "The box has scratches": said of what comes along. "With box, some scratches" is not, nor what the title names. */
export function isOfAccessory(text: string, start: number, title: string): boolean {
  const ahead = aheadInClause(text, start);
  const found = thing.exec(ahead);
  return found !== null && !title.includes(found[0]) && !accompanies.test(ahead.slice(0, found.index));
}

const thingBehind = textPattern(`^[\\s-]{1,2}(${things})(?![\\s-](?:${bagNouns.source}))`);

/** "With a faux leather pouch", "faux leather box": said of what stands right behind the words, if not of the piece. A belt bag is a bag. */
export function isBeforeAccessory(text: string, end: number, title: string): boolean {
  const found = thingBehind.exec(rightBehind(text, end));
  return found !== null && !title.includes(found[1] as string);
}

const parts = phraseTest(Object.entries(partWords).flatMap(([part, words]) => (part === 'body' ? [] : words))).source;
const link = phrasePattern(wordsOf('is', 'dates-from')).source;
const pictures = phrasePattern(wordsOf('photograph')).source;
const subjects = new RegExp(`(?<thing>${things}|${pictures})|${parts}`, 'gu');
const linked = textPattern(link);
/** "Dust bag of 2022", "pochon neuf de 2022": nothing but what joins them. */
const joined = /^(?:\s\p{L}{1,12}){1,3}\s?$/u;
/** "The box, made in 2012": a thing that is what its sentence speaks of, and goes on behind a comma. */
const asSubject = textPattern(
  `^\\s?(?:(?:${phrasePattern(wordsOf('article', 'possessive', 'an')).source})\\s?)?(?:\\p{L}{1,15}\\s)?$`,
);
const apposed = /^(?:\s\p{L}{1,12}){0,3},\s(?:\p{L}{1,12}\s){0,3}$/u;
/** "Beigegeben: ein Anhänger aus Leder, um 1990". */
const broughtAlong = textPattern(
  `^\\s?(?:${phrasePattern(wordsOf('goes-along')).source})(?:\\s\\p{L}{1,12})?:?\\s?(?:(?:${phrasePattern(wordsOf('article', 'an')).source})\\s?)?$`,
);
/** "The zip is of 2010": of a part only so near. */
const nearLink = textPattern(`^(?:\\s\\p{L}{1,15}){0,3}?\\s?(?:${link})`);
/** "I had a new strap made in 2016": right behind a part. */
const madeThen = textPattern(
  `^\\s(?:\\p{L}{1,12}\\s|(?:${anyLanguage(jointWords.doneBy)})\\s(?:\\p{L}{1,12}\\s){1,3})?(?:${phrasePattern(wordsOf('made-verb')).source})`,
);
const dated = /(?:1[89]|20)\d\d/;
const purchase = phraseTest(wordsOf('bought', 'gifted'));
/** Further behind its subject a date is not looked for. */
const longestAside = 64;
/** "2022年の新しい保存袋". */
const japaneseBehind = textPattern(
  `^の[^\\s、。]{0,6}?(${phrasePattern([...topics['comes-along'].ja, ...topics['small-thing'].ja]).source})`,
);

const whichIs = textPattern(
  `(?:${phrasePattern(wordsOf('article', 'possessive', 'an')).source})\\s?(\\p{L}{3,20})\\s?,?\\s(?:${anyLanguage(jointWords.which)})\\s(?:\\p{L}{1,12}\\s){0,3}?$`,
);
const ofPiece = phraseTest(wordsOf('bag', 'piece', 'kind-of-piece', 'code-noun', 'model-noun'));
/** "Bought along with the suitcase, which is of 1988": of what the relative clause stands behind, unless that is the piece. */
function isOfAntecedent(text: string, start: number, title: string): boolean {
  const noun = whichIs.exec(aheadInSentence(text, start).slice(-longestAside))?.[1];
  return noun !== undefined && !ofPiece.test(noun) && !title.includes(noun);
}

/** A part or a thing that a sentence names, and the words before and behind it. */
interface Subject {
  words: string;
  isThing: boolean;
  opening: string;
  rest: string;
}

/** The last part or thing that a sentence names ahead of a place, unless the title calls the piece so. */
function subjectAhead(text: string, start: number, title: string): Subject | null {
  const ahead = aheadInSentence(text, start);
  const last = Array.from(ahead.matchAll(subjects)).at(-1);
  if (!last || title.includes(last[0])) return null;
  return {
    words: last[0],
    isThing: last.groups?.thing !== undefined,
    opening: ahead.slice(0, last.index),
    rest: ahead.slice(last.index + last[0].length),
  };
}

/** "The dust bag is from 2019", "the wallet, which I keep, is of 1979": a date with a subject of its own, the last one before it. */
export function isDateOfThing(text: string, start: number, end: number, title: string): boolean {
  const behind = japaneseBehind.exec(rightBehind(text, end));
  if (behind !== null && !title.includes(behind[1] as string)) return true;
  if (isOfAntecedent(text, start, title)) return true;
  const subject = subjectAhead(text, start, title);
  if (!subject) return false;
  const { isThing, opening, rest } = subject;
  // "The dust bag is newer, the bag itself of 1994" is back at the piece; "the dust bag is lost, this one is of 2012" is not.
  if (rest.length > longestAside || namesBag(rest)) return false;
  // "The zip was replaced in 2016, I bought it in 1994": the part has its year, and what is bought is the piece.
  const own = aheadInClause(text, start);
  if (!isThing && dated.test(rest.slice(0, -own.length)) && purchase.test(own)) return false;
  if (!isThing) return nearLink.test(rest) || (madeThen.test(rest) && !accompanies.test(opening));
  // "With dust bag, it is of 1994".
  if (rest.includes(',') && accompanies.test(opening)) return false;
  return (
    linked.test(rest) ||
    joined.test(rest) ||
    (apposed.test(rest) && (asSubject.test(opening) || broughtAlong.test(opening)))
  );
}

const ofPaper = textPattern(
  `(?:${phrasePattern(wordsOf('paper-or-key')).source})[^.!?;]{0,48}?[\\s'](?:${phrasePattern(wordsOf('an')).source})\\s(\\p{L}{3,20})(?:\\s\\p{L}{1,12}){0,4}\\s?$`,
);
/** "レシートは1989年に買った傘のもの": the noun stands behind the verb. */
const japanesePaper = textPattern(`(?:${phrasePattern(topics['paper-or-key'].ja).source})は$`);
const japaneseThing = /^に?(?:買った|購入した|求めた)(?!バッグ|鞄|カバン|もの|品)[^。、]{1,8}の/u;
const ofPurchase = phraseTest(
  wordsOf('bag', 'piece', 'kind-of-piece', 'bought', 'gifted', 'shop', 'vintage', 'paper-or-key'),
);
/** "The receipt in the pocket is for a jumper bought in 1987": of what the paper is of. */
export function isOfPapersThing(text: string, start: number, end: number, title: string): boolean {
  const ahead = aheadInSentence(text, start).slice(-longestAside * 2);
  const noun = ofPaper.exec(ahead)?.[1];
  if (japanesePaper.test(ahead) && japaneseThing.test(rightBehind(text, end))) return true;
  return noun !== undefined && !ofPurchase.test(noun) && !title.includes(noun);
}

/** "The box has a label with KV0915": whether what comes along is what a clause tells of. Parts of the piece are none. */
export function isSaidOfThing(text: string, start: number, title: string): boolean {
  const subject = subjectAhead(text, start, title);
  if (!subject?.isThing || subject.rest.length > longestAside || namesBag(subject.rest)) return false;
  // A label is sewn in as often as it hangs on.
  if (onThePiece.test(subject.words)) return false;
  return tells.test(subject.rest) && !accompanies.test(subject.opening);
}
const onThePiece = phraseTest(wordsOf('inside-the-piece'));
/** A word that links right behind the thing: "the box is", "has", "measures". */
const tells = textPattern(
  `^(?:\\s\\p{L}{1,12}){0,2}?\\s(?:${anyLanguage(jointWords.measuresVerb)}|${phrasePattern(wordsOf('is', 'has-or-stays', 'reads-there')).source})`,
);

/** Whether a place of making is that of a part or of something that comes along. */
export function isMakingOfOther(text: string, start: number, title: string): boolean {
  if (hasLabelOfItsOwn(text, start, title)) return true;
  const subject = subjectAhead(text, start, title);
  return subject !== null && (subject.isThing ? isMakingOfThing(subject) : isMakingOfPart(subject));
}

/** "Dust bag made in China", "100% cotton pouch, made in Turkey": what comes along opens the sentence, and nothing else is named since. */
function isMakingOfThing({ words, opening, rest }: Subject): boolean {
  if (withWords.test(words) || !opensSentence.test(opening) || accompanies.test(opening)) return false;
  if (namesBag(rest) || saysSo.test(rest)) return false;
  const behindThing = closedByComma.exec(rest)?.[1];
  return behindThing === undefined ? fewWords.test(rest) : behindThing.trim() === '' || ofAnother.test(behindThing);
}
/** Words with one comma in them, up to it. */
const closedByComma = /^([^,]*),[^,]*$/;
const openingThing = textPattern(
  `^\\s?(?:[\\p{L}'-]{1,15}\\s){0,3}?(${phraseTest(wordsOf('comes-along', 'small-thing')).source})(?:[「」』]?(?:に|は|の)|\\s(?:${phrasePattern(wordsOf('has-or-stays', 'with')).source})\\s)`,
);
/** "The dust bag has a tag saying made in China": what is sewn into something that comes along. */
function hasLabelOfItsOwn(text: string, start: number, title: string): boolean {
  const found = openingThing.exec(aheadInSentence(text, start));
  if (found === null || withWords.test(found[1] as string) || title.includes(found[1] as string)) return false;
  return !namesBag(aheadInClause(text, start).slice(found[0].length));
}
/** What has words on it may tell where the piece was made. */
const withWords = phraseTest(wordsOf('inside-the-piece', 'paper-or-key'));
/** A thing with up to three words before it, and no list of things. */
const opensSentence = /^\s?(?:[\p{L}\p{N}%'-]{1,15}\s){0,3}$/u;
const fewWords = /^[」』]?(?:は|が)?(?:\s\p{L}{1,12}){0,5}\s?$/u;
/** "The card says", and a thing that is there, lost or not, of which no more is told. */
const saysSo = phraseTest(wordsOf('reads-there', 'lost', 'lacking', 'goes-along'));
const ofAnother = phraseTest(wordsOf('other-one'));

const opensWithPart = textPattern(
  `^\\s?(?:(?:${phrasePattern(wordsOf('article', 'possessive', 'an')).source})\\s?)?(?:\\p{L}{1,12}\\s)?(?:${parts})(?:\\s[\\p{L}']{1,12}){0,3}\\s?$`,
);
/** "Handle copied by the cobbler", "the strap was remade": a part opens the clause, and is not what the title calls the piece. */
export function isHeadedByPart(text: string, start: number, title: string): boolean {
  const subject = subjectAhead(text, start, title);
  if (!subject || subject.isThing) return false;
  return opensWithPart.test(aheadInClause(text, start));
}

/** "Está hecha en": a verb and what leads to the place. */
const fewWordsOn = /^(?:\s\p{L}{1,15}){1,4}\s?$/u;
/** "The zip is made in Japan", "ファスナーは日本製": nothing but a link stands between a part and where it was made. */
const isMakingOfPart = ({ opening, rest }: Subject): boolean =>
  asSubject.test(opening) && (fewWordsOn.test(rest) || nearLink.test(rest)) && !rest.includes(',');

/** Whether a sentence speaks of a part or of what comes along ahead of a place, and has not come back to the piece since. */
export function speaksOfThing(text: string, start: number, title: string): boolean {
  const subject = subjectAhead(text, start, title);
  return subject !== null && !accompanies.test(subject.opening) && !namesBag(subject.rest);
}

const shop = phraseTest(wordsOf('shop'));

/** "The saddler has been there since 1962": the house is old, and not the piece. */
export function isOfShop(text: string, start: number, end: number): boolean {
  const clause = clauseAround(text, start, end);
  return shop.test(text.slice(clause.start, clause.end));
}

const person = textPattern(
  `(?:${phrasePattern(wordsOf('people', 'others-kin', 'family')).source})(?:\\s[\\p{L}'-]{1,15}){0,2}\\s?[,([]\\s?$`,
);
const yearOfBirth = textPattern(`^\\s?(?:${anyLanguage(jointWords.ofAge)})\\s?$`);
/** "My aunt Hilde, vintage 1931", "Tante Hilde (Jahrgang 1931)": of whoever stands ahead of it. */
export const isOfPerson = (text: string, clauseStart: number, start: number): boolean =>
  yearOfBirth.test(text.slice(clauseStart, start)) && person.test(rightAhead(text, clauseStart));
