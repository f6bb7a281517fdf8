import type { CarrierKind } from '../../maker/types';
import { type Folded, foldWords } from '../../text';
import { andWords } from '../and-words';
import { tellingFinder } from '../words';
import { namesCarrier } from './carrier';
import { readCounts } from './number';
import { partsIn } from './part';

const onAny = tellingFinder('sits-on');
/** "An" is where something is in German, where an article follows, and an article in English. */
const english = /^an\s(?!(?:der|dem|den|die|das|eine[mnr]?|jede[mnr]?)\s)/u;
const on = (text: string): ReturnType<typeof onAny> =>
  onAny(text).filter(({ start }) => !english.test(text.slice(start, start + 8)));
const sits = tellingFinder('sits');
const isAt = tellingFinder('is-at');
const itSits = tellingFinder('it-sits');
const lookAt = tellingFinder('look-at');
/** "Look under the inside pocket": what bids to look opens its sentence. */
export const bidsToLook = (sentence: string): ReturnType<typeof lookAt> =>
  lookAt(sentence.slice(0, 40)).filter(({ start }) => start <= 4);
const code = tellingFinder('code');
const serial = tellingFinder('serial', 'digits');
const letters = tellingFinder('letters');
const bagPlace = tellingFinder('bag-place');
const intoLeather = tellingFinder('into-leather');

/** Whether words begin as a place on a piece does: "on a leather tab", "sous le rabat". */
export const opensPlaceOnPiece = (text: string): boolean => {
  const [first] = on(text);
  return first !== undefined && first.start <= 10 && text.length <= 160;
};

/** "コードは内ポケットに刻印", "革タグに番号があります", and of what was spoken of before "場所は内ポケットの裏です". */
const japanese = [
  /(?:コード|刻印|番号|記号)は(.{2,40}?)に(?:刻印|あり|ある|あっ|押|入|付|見)/u,
  /(?:^|[、。]\s?)([^、。「」]{2,40}?)に「[^」]{2,12}」(?:と|が)(?:\p{Script=Han}{0,2})?(?:あり|あっ|ある|刻印|押)/u,
  /(?:^|[、。はの：:]\s?)([^、。]{2,40}?)に(?:\p{Script=Han}{0,4}番号|コード|刻印|記号)が(?:あり|刻印|押|入|付)/u,
];
const ofBag = /^.{0,30}(?:バッグ|鞄|かばん|カバン|財布)の(?=.)/u;
const timeAhead = /^(?:1[6-9]|20)\d\d年(?:代)?(?:頃|ごろ)?(?:から|以降|より|まで)(?:は|、)?/u;
/** "内側の革タグにG7405とあります": what it says, and on what. */
const japaneseOfWritten = /(?:^|[、。])([^、。]{2,40}?)に[「『]?[A-Z]{0,3}\d{2,6}[A-Z]{0,3}[」』]?(?:と|が)/u;
/** "内ポケットの革タグの番号は": the number of what it is on. */
const japaneseOfCarrier = /(?:^|[、。])([^、。]{4,30}?)の(?:番号|コード|刻印|記号)は/u;
const japanesePlace = /(?:場所|位置)は([^、。]{2,40}?)(?:です|になります|。|$)/u;

/** What stands further on in a sentence is not looked at. */
const longestHead = 400;

export interface SaidWhere {
  where: string;
  /** What carries the code, where it is named before the place: "it is a sticker in the pocket". */
  on?: CarrierKind;
  /** Where in the sentence the words begin. */
  start: number;
}

/**
 * Where a sentence says that the code sits, in its own words; null when it says nothing of that. `ofCodes` is whether the
 * sentence before spoke of the code: "it" and a verb without a subject mean it then.
 */
export function readWhere(sentence: string, ofCodes: boolean): SaidWhere | null {
  const head = sentence.slice(0, longestHead);
  const inJapanese = japanese.map((one) => one.exec(head)).find((match) => match !== null);
  if (inJapanese && (!/[「」]/u.test(inJapanese[0]) || isOnPiece(inJapanese[1]!))) {
    // "1971年から内ポケットに": since when is no part of where.
    const where = inJapanese[1]!.replace(timeAhead, '').replace(ofBag, '');
    return { where, start: inJapanese.index + inJapanese[0].indexOf(where) };
  }
  const ofWritten = japaneseOfWritten.exec(head)?.[1]?.replace(ofBag, '');
  if (ofWritten !== undefined && isOnPiece(ofWritten)) return { where: ofWritten, start: head.indexOf(ofWritten) };
  const ofCarrier = japaneseOfCarrier.exec(head)?.[1];
  if (ofCarrier !== undefined && isOnPiece(ofCarrier)) return { where: ofCarrier, start: head.indexOf(ofCarrier) };
  const meantPlace = ofCodes ? japanesePlace.exec(head) : null;
  if (meantPlace && isOnPiece(meantPlace[1]!)) return { where: meantPlace[1]!, start: meantPlace.index };
  const folded = foldWords(sentence);
  const fronted = frontedPlace(sentence, folded);
  if (fronted) return fronted;
  const borne = borneAt(head);
  if (borne) return borne;
  const [noun] = code(folded);
  const verb = sits(folded).find((one) => noun !== undefined && Math.abs(one.start - noun.start) <= 90);
  if (noun && verb) {
    const from = Math.max(noun.end, verb.end);
    return (
      whereFrom(sentence, behindCounts(sentence, from), 24) ??
      whereFrom(sentence, noun.end, 8) ??
      placeInClause(sentence, noun.end, verb.start)
    );
  }
  // "They bear a code on the inside of the flap".
  const isCode = noun && namesCarrier(sentence.slice(noun.start, noun.end)) === null;
  const isBorne = isCode && bears(folded).some(({ end }) => end <= noun.start && noun.start - end <= farthestBorne);
  const behind = isBorne ? whereFrom(sentence, noun.end, 1) : null;
  if (behind && isOnPiece(behind.where)) return behind;
  // "The code is on a tab": right behind the code, and the place right behind that.
  const copula = noun && isAt(folded).find(({ start }) => start >= noun.end && start - noun.end <= 2);
  if (copula) return whereFrom(sentence, copula.end, 2);
  const ofLetter = noun ? null : letterPlace(sentence, folded);
  if (ofLetter) return ofLetter;
  // "It is a sticker in the pocket": what carries the code is no other subject.
  const subject = noun && namesCarrier(sentence.slice(noun.start, noun.end)) === null;
  const [meant] = ofCodes && !subject ? [...itSits(folded), ...bidsToLook(sentence)] : [];
  const told = meant ? whereFrom(sentence, meant.end, 24) : null;
  // "Look inside" is everywhere.
  if (told && /[\s’'\u3040-\u9fff]/u.test(told.where) && (told.on || isOnPiece(told.where))) return told;
  const beside = serial(folded).length > 0 || readCounts(folded).length > 0 ? besideNumber(sentence) : null;
  return beside ?? besideCode(head) ?? beforeCode(head);
}

/** "A stamp that one usually finds under the inner pocket", in German and Dutch: the place stands before its verb. */
function placeInClause(sentence: string, from: number, verb: number): SaidWhere | null {
  const clause = sentence.slice(0, Math.max(from, verb)).trimEnd();
  const [usually] = mostly(clause).filter(({ start }) => start >= from);
  const told = relative.test(clause.slice(from)) ? placeFrom(clause, usually?.end ?? from, farthestInClause) : null;
  return told && isOnPiece(told.where) ? told : null;
}
const mostly = tellingFinder('mostly');
const relative = /^,\s(?:den|der|die|das|dat|welche[nrs]?)\s/iu;
const farthestInClause = 16;

/** More codes than these in a sentence are a list of them. */
const mostCodes = 4;
const written =
  /(?<![\p{L}\d])(?:\p{Lu}{1,3}[ ./-]\d{1,2}[ ./-]\d{2}|\p{Lu}{1,3}[ ./-]?\d{2,6}|\d{1,2}[ ./-]\d{2}[ ./-]\p{Lu}{1,2}|\d{1,2}[ ./-]\p{Lu}{1,2}[ ./-]\d{2}|\d{2,6}[ ./-]?\p{Lu}{1,3}|\d{1,2}\/\d{2}(?:\s\p{Lu})?)["”“»']?[,.?!]?(?=\s)/gu;
/** "Mine has T0682 on the tab inside": a code, and right behind it a place on the piece. */
export function besideCode(sentence: string): SaidWhere | null {
  const head = sentence.slice(0, longestHead);
  for (const { 0: code, index } of [...head.matchAll(written)].slice(0, mostCodes)) {
    const end = index + code.length;
    // "There is T0682 stamped on the tab".
    const verb = sits(head.slice(end, end + 24)).find(({ start }) => start <= 1);
    const told = whereFrom(head, end + (verb?.end ?? 0), 2);
    const where = told?.where.replace(/,\s[^,]{1,80}$/u, (tail) => (isOnPiece(tail) ? tail : ''));
    if (told && where !== undefined && isOnPiece(where) && where.split(' ').length > 2) return { ...told, where };
  }
  return null;
}

/** "I have one with 0974B under the flap" the other way round: "with on the tab 3 71 M", "steht unter der Innentasche „0974B“". */
export function beforeCode(sentence: string): SaidWhere | null {
  const head = sentence.slice(0, longestHead);
  for (const { 0: code, index } of [...` ${head} `.matchAll(written)].slice(0, mostCodes)) {
    const at = index - 1;
    const ahead = head.slice(Math.max(0, at - farthestAhead), at).replace(/[\s„“"«'‘:]{1,4}$/u, '');
    const first = on(ahead).findLast(({ end }) => end < ahead.length);
    const where = first && ahead.slice(first.start);
    const isPlain = where !== undefined && where.split(' ').length > 1 && !/[\d,;:.(]/.test(where);
    const isClause = where === undefined || saysIt.test(where) || sits(where).length > 0 || ofOwner(where).length > 0;
    if (isPlain && !isClause && code !== '' && (bagPlace(where).length > 0 || namesCarrier(where) !== null))
      return { where, start: head.indexOf(where) };
  }
  return null;
}
/** "Inside the pocket it says": what stands there is a clause. */
const saysIt = /(?:^|\s)(?:it|il|elle|es|er|sie|man|on|se|si|hij|ze|c['’]è)\s/iu;
const farthestAhead = 50;

const bears = tellingFinder('bears-code');
const farthestCode = 40;
/** "Sous le rabat il y a": what any sentence has. */
const auxiliary =
  /^(?:has|have|had|get|got|ont|a|hat|haben|hatte|ha|hanno|tiene|tienen|heeft|hebben|date|dates|dated|marks?|marque)$/iu;
const codeOrSigns = tellingFinder('code', 'letters', 'digits');
const finds = tellingFinder('finds');
/** A code right behind the verb: "auf der Lasche steht 3268T". */
const opensCode = /^[\s:„“"«]{1,4}(?:\p{Lu}{1,3}[ ./-]?\d{2}|\d{1,2}[ ./-]?\p{Lu}{1,2}|\d{3,6}(?!\d))/u;
/** "Auf der Innenseite des Bügels trägt sie die Prägung": a place at the head of a sentence, what bears the code, and the code behind. */
function frontedPlace(sentence: string, folded: Folded): SaidWhere | null {
  const [first] = on(sentence.slice(0, farthestPlace));
  if (!first || first.start > 0) return null;
  const shown = sits(folded).find(({ start, end }) => start > first.end && opensCode.test(sentence.slice(end)));
  const verb =
    shown ??
    finds(folded).find(({ start }) => start > first.end) ??
    bears(folded).find(({ start, words }) => start > first.end && !auxiliary.test(words));
  if (!verb || verb.start > farthestPlace) return null;
  const noun = shown ?? codeOrSigns(folded).find(({ start }) => start >= verb.end && start - verb.end <= farthestCode);
  const where = sentence.slice(0, verb.start).trim();
  const isPlain = where.length >= 6 && !/[\d,;:(]/.test(where) && ofOwner(where).length === 0;
  return noun && isPlain && isOnPiece(where) ? { where, start: 0 } : null;
}
const ofOwner = tellingFinder('owner-of-piece');
const farthestBorne = 30;
const farthestPlace = 80;

const articleLast = /\s(?:the|an?|le|la|les|une?|den|die|das|einen?|eine|il|lo|el|het|een)$/iu;
/** "Sie trägt unter dem Spiegelfach den Stempel": a place between what bears the code and the code. */
function borneAt(head: string): SaidWhere | null {
  const [places, nouns] = [on(head), code(head)];
  for (const verb of bears(head)) {
    const first = places.find(({ start }) => start >= verb.end && start - verb.end <= 1);
    const noun = first && nouns.find(({ start }) => start > first.end && start - first.end <= farthestCode);
    const where = noun && head.slice(first.start, noun.start).trim().replace(articleLast, '');
    if (where && isOnPiece(where) && where.split(' ').length > 2 && !/[\d,;:(]/.test(where))
      return { where, start: first!.start };
  }
  return null;
}

/** "The letter is stamped under the flap": the letter and its verb at the head of a sentence, and the place right behind. */
function letterPlace(sentence: string, folded: Folded): SaidWhere | null {
  const [letter] = letters(folded);
  const verb = letter && letter.start <= 8 ? sits(folded).findLast(({ start }) => start - letter.end <= 8) : undefined;
  const told = verb ? whereFrom(sentence, verb.end, 2) : null;
  return told && isOnPiece(told.where) ? told : null;
}

/** Whether words name a part of a bag, or what carries a code. */
export const isOnPiece = (where: string): boolean =>
  bagPlace(where).length > 0 || namesCarrier(where) !== null || partsIn(where).length > 0;

/** "A running number of seven digits, on a sticker in the pocket". */
function besideNumber(sentence: string): SaidWhere | null {
  for (const { index } of sentence.matchAll(/,\s/gu)) {
    const told = whereFrom(sentence, index + 1, 2);
    if (told && namesCarrier(told.where) !== null) return told;
  }
  return null;
}

/** "A code of two letters and four digits under the flap": the end of what is counted right behind a place. */
function behindCounts(sentence: string, from: number): number {
  return readCounts(sentence).reduce(
    (reached, { start, end }) => (start >= reached && start - reached <= 24 ? end : reached),
    from,
  );
}

/** "Sewn into the base, good luck": what follows a comma is kept where it is of the place as well. */
function ofPlace(where: string): string {
  const [first = '', ...others] = where.split(/,\s/);
  const until = others.findIndex(
    (piece) => !opensPlaceOnPiece(piece) && !isOnPiece(piece) && /\s/.test(piece.trim()) && !inside.test(piece),
  );
  return [first, ...(until < 0 ? others : others.slice(0, until))].join(', ');
}

const bearsOrConsists = tellingFinder('bears-code', 'made-up-of', 'is-at');
const nextClause = new RegExp(`,\\s(?:${andWords})\\s.{0,2000}$`, 'su');
const joint = new RegExp(`\\s(?:${andWords})\\s`, 'gu');
/** "On the base of the pocket and comprises a letter and four digits": what is said of the code behind its place. */
function withoutNext(where: string): string {
  const next = [...where.matchAll(joint)].find(({ 0: and, index }) => {
    const [verb] = bearsOrConsists(where.slice(index + and.length));
    return verb?.start === 0;
  });
  return next ? where.slice(0, next.index) : where;
}
const inside =
  /^(?:por dentro|par l['’]intérieur|à l['’]intérieur|all['’]interno|von innen|aan de binnen\p{L}*|on the inside|near|just|close|close to|nahe|knapp|près|vicino|cerca|vlak)/iu;

/** The place that begins at most so many letters behind a point of the sentence. */
function whereFrom(sentence: string, from: number, farthest: number): SaidWhere | null {
  // "It stands in the same place on all of them: on the back of the pocket".
  const colon = sentence.slice(from, from + farthestColon).search(/[:：]\s/u);
  const behind = colon < 0 ? null : placeFrom(sentence, from + colon + 1, 2);
  return behind ?? placeFrom(sentence, from, farthest);
}
const farthestColon = 64;

function placeFrom(sentence: string, from: number, farthest: number): SaidWhere | null {
  const hits = on(sentence);
  const first = hits.find(({ start }) => start >= from && start - from <= farthest);
  if (!first) return null;
  // "Into the leather behind the pocket": the leather is no place.
  const leather = intoLeather(sentence).find(({ start }) => start === first.start);
  const begins = (leather && hits.find(({ start }) => start === leather.end + 1)?.start) ?? first.start;
  let where = sentence
    .slice(begins)
    .replace(/[.;:!?].{0,2000}$/su, '')
    .replace(nextClause, '')
    .replace(/\s?\([^)]{0,60}\)$/, '')
    .trim();
  where = withoutNext(ofPlace(where));
  const closing = sits(where).at(-1);
  // In German and Dutch the verb closes the sentence: "auf der Rückseite eingeprägt".
  if (closing && closing.end === where.length) where = where.slice(0, closing.start).trim();
  if (where.length < 6 || where.length > 140 || /\d{3}/.test(where)) return null;
  const named = namesCarrier(sentence.slice(from, first.start));
  return { where, start: begins, ...(named && { on: named }) };
}
