import { foldWords } from '../../text';
import { wholeWords, wordsFor } from '../words';
import { japaneseNames } from './japanese';
import { elidedParticle, mayBeFrom, particleOf } from './particles';
import { adjectives, authored, isCommon, type Shape, things } from './words';

/** By their first word: what joins a family to its name ("& Sons"), and what stands before one ("Maison"). */
function byFirstWord(phrases: readonly string[]): Map<string, string[]> {
  const found = new Map<string, string[]>();
  for (const phrase of phrases) {
    const [first] = phrase.split(' ');
    found.set(
      first!,
      [...(found.get(first!) ?? []), phrase].sort((a, b) => b.length - a.length),
    );
  }
  return found;
}
const joints = byFirstWord(wordsFor('name-joint'));
const houses = byFirstWord(wordsFor('name-house'));
const makerNouns = wholeWords('maker-noun');

const token = /&|\p{Script=Latin}[\p{Script=Latin}\p{M}\d'’-]{0,40}\.?/gu;
const capital = /^\p{Lu}/u;
const initial = /^\p{Lu}\.$/u;
const possessive = /['’]s?$/iu;
const elided = /^(?:d|l|dell|all|un|sull)['’](?=\p{Lu})/iu;

interface Word {
  text: string;
  start: number;
  end: number;
}

/** Whether a sentence or a piece of a heading begins at a place. */
export const opensAt = (text: string, at: number): boolean =>
  at === 0 || /(?:[.!?:»”"|–—]\s{1,3}|\n\s{0,3})$/u.test(text.slice(Math.max(0, at - 4), at));

/** Whether a name is all that a text says. */
const isWhole = (text: string, start: number, end: number): boolean =>
  start <= 2 && text.length - end <= 2 && text.slice(0, start).trim() + text.slice(end).trim() === '';

/** "D’Arvenzo" with its own capital is a name, but where any word would have one. */
const isOwnElision = (text: string, word: string, at: number): boolean =>
  /^\p{Lu}['’]/u.test(word) && (isWhole(text, at, at + word.length) || !opensAt(text, at));

const wordsOf = (text: string): Word[] =>
  [...text.matchAll(token)].map((match) => {
    // "d’Orvanne", and a full stop that ends a sentence.
    const whole = isOwnElision(text, match[0], match.index);
    const gone = whole ? 0 : (elided.exec(match[0])?.[0].length ?? 0);
    const word = match[0].slice(gone);
    const plain = initial.test(word) ? word : word.replace(/\.$/, '');
    return { text: plain, start: match.index + gone, end: match.index + gone + plain.length };
  });

/** Which of some phrases the text has at a place, as a whole. */
function phraseAt(text: string, at: Word, phrases: Map<string, string[]>): string | null {
  const found = phrases.get(at.text)?.find((phrase) => text.startsWith(phrase, at.start));
  return found !== undefined && !/^[\p{L}\d]/u.test(text.slice(at.start + found.length)) ? found : null;
}

/** More capitals in a row than these are no name. */
const mostWords = 6;

/** Words follow each other with one space and nothing else between. */
const adjoin = (text: string, before: Word, next: Word) => text.slice(before.end, next.start) === ' ';

/** How many words stand from one on before a place. */
function wordsUntil(words: readonly Word[], from: number, end: number): number {
  let at = from;
  while (at < words.length && words[at]!.start < end) at += 1;
  return at - from;
}

/** Names that the page joins to one. */
type Known = ReadonlySet<string>;
const none: Known = new Set();
const isKnown = (text: string, first: Word, last: Word, known: Known): boolean =>
  known.size > 0 && known.has(text.slice(first.start, last.end).replace(possessive, ''));
const enlarged = (name: string) => name[0]!.toUpperCase() + name.slice(1);

export const ands = new Set(['y', 'e', 'et', 'und', 'and', 'en']);
const ofOne = new Set(
  'a an my your this un une mon ma votre ce cette ein eine einen einer mein meine una mia mio mi este esta een mijn deze'.split(
    ' ',
  ),
);
/** "Un Cuesta y Roldán": behind a word for one thing, two names are of one house; so are those that the page never parts. */
function isPair(text: string, words: readonly Word[], at: number, run: readonly Word[], known: Known): boolean {
  if (!ands.has(words[at]!.text)) return false;
  // A run of names has no gap: its first word is so many before.
  const before = words[at - run.length - 1];
  const behind = words[at + 1];
  const isName = behind !== undefined && capital.test(behind.text) && !isCommon(behind.text);
  if (!isName) return false;
  return isKnown(text, run[0]!, behind, known) || (before !== undefined && ofOne.has(before.text.toLowerCase()));
}

const notJoined = new Set([...wholeWords('article'), ...wholeWords('column-model'), ...things]);

/**
 * How many words a particle has that joins a run of names to the next one: "Anselme de la Rivaudière". "La Marisma di Robledana"
 * and "Datation de Morvandelle" are no names, unless the page has them as one elsewhere.
 */
function particleInside(text: string, words: readonly Word[], at: number, run: readonly Word[], known: Known): number {
  const particle = particleOf(words.slice(at, at + 2).map((word) => word.text));
  const behind = particle && words[at + particle.words];
  if (!behind || !capital.test(behind.text) || isCommon(behind.text.replace(possessive, ''))) return 0;
  if (!adjoin(text, words[at + particle.words - 1]!, behind)) return 0;
  if (particle.sure || isKnown(text, run[0]!, behind, known)) return particle.words;
  return isOwnName(text, words[at - run.length - 1], run) ? particle.words : 0;
}

/** Whether a run of names before a particle is no thing of which is said whose it is, and no word with a sentence's capital. */
function isOwnName(text: string, before: Word | undefined, run: readonly Word[]): boolean {
  const isOfThing = before !== undefined && notJoined.has(foldWords(before.text).text);
  return !isOfThing && !opensAt(text, run[0]!.start);
}

/** "Jean d’Orvanne" */
const goesOnElided = (text: string, words: readonly Word[], at: number, run: readonly Word[], known: Known): boolean =>
  elidedParticle.test(text.slice(run.at(-1)!.end, words[at]!.start)) &&
  (isKnown(text, run[0]!, words[at]!, known) || isOwnName(text, words[at - run.length - 1], run));

/** How many words a particle has that a name begins with: "Van der Meulink", "Von der Auenheim" by itself. */
function particleFirst(text: string, words: readonly Word[], at: number, known: Known): number {
  const particle = particleOf(words.slice(at, at + 2).map((word) => word.text.toLowerCase()));
  const behind = particle?.sure ? words[at + particle.words] : undefined;
  if (!behind || !capital.test(behind.text) || isCommon(behind.text.replace(possessive, ''))) return 0;
  const name = text.slice(words[at]!.start, behind.end).replace(possessive, '');
  if (known.has(name) || known.has(enlarged(name))) return particle!.words;
  if (!capital.test(name)) return 0;
  const alone = isWhole(text, words[at]!.start, words[at]!.start + name.length);
  return alone || !opensAt(text, words[at]!.start) || !mayBeFrom(name) ? particle!.words : 0;
}

/**
 * Names in Latin letters: runs of capitals without the words that headings are made of, with the initials before them, the
 * house they call themselves and what joins a family to its name.
 */
function latinNames(text: string, known: Known): Shape[] {
  const words = wordsOf(text);
  const found: Shape[] = [];
  let run: Word[] = [];
  const close = () => {
    const unjoin = () => {
      while (run.length > 0 && (run.at(-1)!.text === '&' || ands.has(run.at(-1)!.text))) run.pop();
    };
    unjoin();
    // "TANSLEY HANDBAGS": what the maker makes is no part of its name.
    if (run.length > 1 && things.has(foldWords(run.at(-1)!.text).text)) run.pop();
    // "Wilmas Schatzkiste": what somebody writes in is no part of a name either.
    if (run.length > 1 && run.at(-2)!.text.endsWith('s') && authored.has(foldWords(run.at(-1)!.text).text)) run.pop();
    // "Firma Grevenroth": what the maker is comes before its name.
    if (run.length > 1 && makerNouns.has(foldWords(run[0]!.text).text)) run.shift();
    unjoin();
    const [first] = run;
    const last = run.at(-1);
    run = [];
    if (!first || !last) return;
    // "Harkaway’s", "Ruhlsdorf-Handtasche".
    let name = text.slice(first.start, last.end).replace(possessive, '');
    // "een tas van van der Meulink"
    if (known.has(enlarged(name))) name = enlarged(name);
    const [, stem, tail] = /^(.{2,60})-([\p{L}’]{2,40})$/u.exec(name) ?? [];
    if (stem !== undefined && isCommon(tail!)) name = stem;
    if (name.length >= 3 && !/^\p{Lu}{1,3}\d/u.test(name) && !adjectives.has(foldWords(name).text) && !isCommon(name))
      found.push({ name, start: first.start, end: first.start + name.length });
  };
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at]!;
    const goesOn = run.length > 0 && (adjoin(text, run.at(-1)!, word) || goesOnElided(text, words, at, run, known));
    if (run.length >= mostWords || !goesOn) close();
    const phrase = phraseAt(text, word, run.length > 0 ? joints : houses);
    const covered = phrase === null ? 0 : wordsUntil(words, at, word.start + phrase.length);
    const behind = words[at + covered];
    const named = behind !== undefined && capital.test(behind.text) && !isCommon(behind.text);
    const stands = phrase !== null && (run.length > 0 || (named && adjoin(text, words[at + covered - 1]!, behind)));
    const particles =
      run.length > 0 ? particleInside(text, words, at, run, known) : particleFirst(text, words, at, known);
    if (particles > 0) {
      run.push(...words.slice(at, at + particles));
      at += particles - 1;
    } else if (stands) {
      run.push(...words.slice(at, at + covered));
      at += covered - 1;
    } else if (run.length > 0 && isPair(text, words, at, run, known)) {
      run.push(word);
    } else if (word.text === '&') {
      if (run.length > 0) run.push(word);
    } else if (capital.test(word.text) && (!isCommon(word.text.replace(possessive, '')) || initial.test(word.text))) {
      run.push(word);
      if (possessive.test(word.text)) close();
    } else close();
  }
  close();
  return found.filter(({ name }) => !/^(?:\p{Lu}\.\s?){1,4}$/u.test(name));
}

/** Names by the shape of the words, in order of their place; `known` are those that the page joins to one. */
export const namesIn = (text: string, known: Known = none): Shape[] =>
  [...latinNames(text, known), ...japaneseNames(text, known)].sort((a, b) => a.start - b.start);

const joint = wordsFor('name-joint').map((phrase) => ` ${phrase}`);
const houseFirst = wordsFor('name-house').map((phrase) => `${phrase} `);

/** Whether a name is one by what joins its words: "Averlock & Sons", "Maison Dervaine", "H. J. Tansley". */
export const isJoined = (name: string): boolean =>
  name.includes(' & ') ||
  joint.some((phrase) => name.endsWith(phrase)) ||
  houseFirst.some((phrase) => name.startsWith(phrase)) ||
  /^(?:\p{Lu}\.\s?){1,4}\p{L}/u.test(name);

const legalForm = / (?:Ltd|Limited|Inc|LLC|GmbH|KG|AG|OHG|S\.p\.A|S\.r\.l|srl|S\.A|S\.L|SARL|B\.V|N\.V)\.?$/iu;
/** Whether a name says by its legal form that it is a firm's. */
export const isFirm = (name: string): boolean => legalForm.test(name);
/** A firm's name without its legal form, where it is one all the same: "Stenbury & Clay". */
export function withoutLegalForm(name: string): string {
  const bare = name.replace(legalForm, '');
  return bare !== name && isJoined(bare) ? bare : name;
}

const longestHead = 200;
/** "Wolpertsau – Jahresbuchstaben": a name that stands by itself in a head. */
const isPieceOf = (head: string, name: string): boolean =>
  head.length <= longestHead && head.split(/\s[–—|»-]\s|:\s/u).some((piece) => piece.trim() === name);

/** "Maison Garvanne" of a page that writes "la maison Garvanne" as well: the word for the house is no part of its name. */
export function withoutHouse(name: string, texts: readonly string[]): string {
  const house = houseFirst.find((phrase) => name.startsWith(phrase));
  if (house === undefined || house.trim().includes(' ')) return name;
  const bare = name.slice(house.length);
  const small = ` ${house.toLowerCase()}${bare}`;
  return texts.some((text) => text.includes(small) || isPieceOf(text, bare)) ? bare : name;
}

/** Whether a name says what its house makes: "Marroquinería Trespalacio", "Wexcombe Saddlery". */
export const isHouse = (name: string): boolean =>
  japaneseHouse.test(name) ||
  houseOfGoods.some((phrase) => name.startsWith(phrase) || name.endsWith(` ${phrase.trim()}`));
/** Whether a name is another one with a word for its house, or for what that makes, before or behind it. */
export const isHouseOf = (long: string, short: string): boolean =>
  [...houseOfGoods, ...houseFirst].some((phrase) => long === `${phrase}${short}`) ||
  houseOfGoods.some((phrase) => long === `${short} ${phrase.trim()}`) ||
  (japaneseHouse.test(long) && long.replace(japaneseHouse, '') === short);
const japaneseHouse = /(?:鞄|製鞄所?|鞄店|鞄工房|革店|革工房|皮革|革具店|製作所)$/u;
const houseOfGoods = wordsFor('house-of-goods').map((phrase) => `${phrase} `);

/** Whether a particle joins the words of a name. */
export const isParticled = (name: string): boolean => {
  const words = name.split(' ');
  return words.some(
    (word, at) =>
      (at > 0 && /^d['’]/u.test(word)) ||
      (at < words.length - 1 && particleOf(words.slice(at, at + 2).map((one) => one.toLowerCase())) !== null),
  );
};

/** Articles that may be part of a name, where it is written with a capital inside a sentence. */
export const articles = 'The La Le Les Il Lo El De Het Die Der Das Van Von Di Du Da Del Della'.split(' ');
/** Those of them that no other word of a heading is. */
export const particles = 'De Van Von Di Du Da Del Della'.split(' ');
export const articleFirst = new RegExp(`^(?:${articles.join('|')}) `, 'u');
