import { foldWords } from '../../text';
import { wholeWords, wordsFor } from '../words';

/** A name by the shape of its words, and where it stands. */
export interface Shape {
  name: string;
  start: number;
  end: number;
}

/** Words that headings are made of, besides the names in them; more of them than may stand in a model's name. */
const common = new Set([
  ...wholeWords('heading'),
  ...wholeWords('heading-noun'),
  ...wholeWords('gathering'),
  ...wholeWords('site-noun'),
]);
const things = wholeWords('heading-thing');
/** No name by themselves, though a name may hold one. */
const adjectives = wholeWords('heading-adjective');
const isCommon = (word: string) => common.has(foldWords(word).text);

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

const wordsOf = (text: string): Word[] =>
  [...text.matchAll(token)].map((match) => {
    // "d’Orvanne", and a full stop that ends a sentence.
    const gone = elided.exec(match[0])?.[0].length ?? 0;
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

const ands = new Set(['y', 'e', 'et', 'und', 'and', 'en']);
const ofOne = new Set(
  'a an my your this un une mon ma votre ce cette ein eine einen einer mein meine una mia mio mi este esta een mijn deze'.split(
    ' ',
  ),
);
/** "Un Cuesta y Roldán": behind a word for one thing, two names are of one house. */
function isPair(words: readonly Word[], at: number, run: readonly Word[]): boolean {
  if (!ands.has(words[at]!.text)) return false;
  // A run of names has no gap: its first word is so many before.
  const before = words[at - run.length - 1];
  const behind = words[at + 1];
  const isName = behind !== undefined && capital.test(behind.text) && !isCommon(behind.text);
  return isName && before !== undefined && ofOne.has(before.text.toLowerCase());
}

/**
 * Names in Latin letters: runs of capitals without the words that headings are made of, with the initials before them, the
 * house they call themselves and what joins a family to its name.
 */
function latinNames(text: string): Shape[] {
  const words = wordsOf(text);
  const found: Shape[] = [];
  let run: Word[] = [];
  const close = () => {
    while (run.length > 0 && run.at(-1)!.text === '&') run.pop();
    // "TANSLEY HANDBAGS": what the maker makes is no part of its name.
    if (run.length > 1 && things.has(foldWords(run.at(-1)!.text).text)) run.pop();
    const [first] = run;
    const last = run.at(-1);
    run = [];
    if (!first || !last) return;
    // "Harkaway’s", "Ruhlsdorf-Handtasche".
    let name = text.slice(first.start, last.end).replace(possessive, '');
    const [, stem, tail] = /^(.{2,60})-([\p{L}’]{2,40})$/u.exec(name) ?? [];
    if (stem !== undefined && isCommon(tail!)) name = stem;
    if (name.length >= 3 && !/^\p{Lu}{1,3}\d/u.test(name) && !adjectives.has(foldWords(name).text) && !isCommon(name))
      found.push({ name, start: first.start, end: first.start + name.length });
  };
  for (let at = 0; at < words.length; at += 1) {
    const word = words[at]!;
    if (run.length >= mostWords || (run.length > 0 && !adjoin(text, run.at(-1)!, word))) close();
    const phrase = phraseAt(text, word, run.length > 0 ? joints : houses);
    const covered = phrase === null ? 0 : wordsUntil(words, at, word.start + phrase.length);
    const behind = words[at + covered];
    const named = behind !== undefined && capital.test(behind.text) && !isCommon(behind.text);
    const stands = phrase !== null && (run.length > 0 || (named && adjoin(text, words[at + covered - 1]!, behind)));
    if (stands) {
      run.push(...words.slice(at, at + covered));
      at += covered - 1;
    } else if (run.length > 0 && isPair(words, at, run)) {
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

/** A house's own word for itself, and what it makes, where a head or a piece of one ends with it. */
const house =
  /^[\p{Script=Katakana}\p{Script=Han}ー・]{2,20}(?:製鞄所?|鞄店|鞄工房|皮革|製作所|商店|商会|工房)|^[\p{Script=Katakana}ー・]{2,20}鞄$/u;
const katakana = /[\p{Script=Katakana}ー・]{3,30}/gu;
const quoted = /[「『“]([\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}ー]{2,16})[」』”]/gu;

/** Names in Japanese: runs of katakana that are no common word, and what stands in quotation marks. */
function japaneseNames(text: string): Shape[] {
  const [whole] = house.exec(text.trim()) ?? [];
  if (whole !== undefined)
    return [{ name: whole, start: text.indexOf(whole), end: text.indexOf(whole) + whole.length }];
  const inMarks = [...text.matchAll(quoted)].map((match) => ({ name: match[1]!, start: match.index + 1 }));
  const runs = [...text.matchAll(katakana)].map((match) => ({ name: match[0], start: match.index }));
  return [
    ...inMarks,
    ...runs.filter(({ start }) => !inMarks.some((one) => start >= one.start && start < one.start + one.name.length)),
  ]
    .filter(({ name }) => !isCommon(name))
    .map(({ name, start }) => ({ name, start, end: start + name.length }));
}

/** Names by the shape of the words, in order of their place. */
export const namesIn = (text: string): Shape[] =>
  [...latinNames(text), ...japaneseNames(text)].sort((a, b) => a.start - b.start);

const joint = wordsFor('name-joint').map((phrase) => ` ${phrase}`);
const houseFirst = wordsFor('name-house').map((phrase) => `${phrase} `);

/** Whether a name is one by what joins its words: "Averlock & Sons", "Maison Dervaine", "H. J. Tansley". */
export const isJoined = (name: string): boolean =>
  name.includes(' & ') ||
  joint.some((phrase) => name.endsWith(phrase)) ||
  houseFirst.some((phrase) => name.startsWith(phrase)) ||
  /^(?:\p{Lu}\.\s?){1,4}\p{L}/u.test(name);

/** Articles that may be part of a name, where it is written with a capital inside a sentence. */
export const articles = ['The', 'La', 'Le', 'Les', 'Il', 'Lo', 'El', 'De', 'Het', 'Die', 'Der', 'Das'];
export const articleFirst = new RegExp(`^(?:${articles.join('|')}) `, 'u');
