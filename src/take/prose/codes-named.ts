import { findPlaces, foldWords } from '../../text';
import { plainCode } from '../said/code';
import { tellingFinder } from '../words';

/** What may be a code of a plant in a sentence. */
export interface NamedCode {
  code: string;
  lookAlike: boolean;
  start: number;
  end: number;
  /**
   * How the sentence names it: `written` by its own look (two capitals or more); `strong` where a verb says that it stands
   * for something; `weak` where a mere "is" follows; `for` and `as` in a list of letters ("F for Florence", "F as in
   * Fiesole"); `corrected` behind "I was wrong about".
   */
  by: 'written' | 'strong' | 'weak' | 'for' | 'as' | 'corrected';
}

const codes = /(?<![\p{Script=Latin}\d'’-])\p{Lu}{2,3}\d?(?![\p{Script=Latin}\d'’-])(?!\s\d)/gu;
const letters = /(?<![\p{Script=Latin}\d'’.-])\p{Lu}(?![\p{Script=Latin}\d'’-]|\.(?!\s{0,3}$))(?!\s\d)/gu;
/** Words of one letter, which begin a sentence with a capital: "A bag is …", "E la borsa è …". */
const wordsOfOneLetter = /^[AEIOUYÀÉÈ]$/;

const equals = /[=＝→](?=\s?\p{Lu}\p{Ll})/gu;
const verbs = tellingFinder('stands-for', 'strong-stands-for', 'is-not');
const listing = tellingFinder('letter-for', 'letter-as');
/** "I got H wrong". */
const wrong = tellingFinder('wrong-behind');
const letterWords = tellingFinder('letters');
const mistaken = tellingFinder('mistaken');
/** Letters between the words that take something back and what they take back: "I was wrong about". */
const farthest = 16;

/**
 * The codes that a sentence names, in order. One letter is a code where the text calls it a letter or says at once what
 * it stands for; with a mere "is", only where the page is known to write codes of one letter.
 */
export function codesNamed(sentence: string, oneLetter: boolean): NamedCode[] {
  const found: NamedCode[] = [...sentence.matchAll(codes)].map(({ 0: text, index }) => ({
    ...plainCode(text),
    start: index,
    end: index + text.length,
    by: 'written',
  }));
  const singles = [...sentence.matchAll(letters)];
  if (singles.length === 0) return found;
  const folded = foldWords(sentence);
  const behind = new Map<number, 'strong' | 'weak' | 'for' | 'as'>();
  const keep = (start: number, by: 'strong' | 'weak' | 'for' | 'as') => {
    if (by !== 'weak' || !behind.has(start)) behind.set(start, by);
  };
  const behindVerb = new Map<number, number>();
  for (const { start, end } of verbs(folded)) behindVerb.set(start, end);
  for (const { start, value } of verbs(folded)) keep(start, value === 'strong-stands-for' ? 'strong' : 'weak');
  for (const { start } of wrong(folded)) keep(start, 'strong');
  // "D = Dundee": a sign says it as surely as a verb.
  for (const { index } of sentence.matchAll(equals)) keep(index, 'strong');
  const named = letterWords(folded);
  const explained = singles.some((one) => behind.get(one.index + one[0].length + 1) === 'strong');
  if (named.length > 0 || explained || plants(folded).length > 0)
    for (const { start, value } of listing(folded)) keep(start, value === 'letter-for' ? 'for' : 'as');
  // "From 1986 U for Hungary comes in": where the page writes codes of one letter, and a country follows.
  else if (oneLetter)
    for (const { start, end, value } of listing(folded))
      if (value === 'letter-for' && opensWithCountry(sentence.slice(end, end + 40))) keep(start, 'for');
  // "L désigne Limoges et M le Maroc": the second without its verb, where a country follows.
  if (explained)
    for (const { 0: text, index } of singles) {
      const lead = articleBefore.exec(sentence.slice(index + text.length, index + text.length + 8));
      const from = index + text.length + (lead?.[0].length ?? 0);
      if (lead && opensWithCountry(sentence.slice(from, from + 40))) keep(index + text.length + 1, 'for');
    }
  const callsNext = new Set(named.map(({ end }) => end + 1));
  const taken = mistaken(folded);
  let reached = 0;
  for (const { 0: text, index } of singles) {
    const end = index + text.length;
    const next = sentence[end] === ' ' ? end + 1 : end;
    while (taken[reached] && taken[reached]!.end <= index) reached += 1;
    const before = taken[reached - 1];
    const corrected = before !== undefined && index - before.end <= farthest;
    // "L, which is Linz".
    const explains = sentence[end] === ',' && isExplained(sentence.slice(end + 2, end + 90));
    const called = callsNext.has(index) || explains;
    const said = behind.get(next);
    // "U es Ubrique": a letter and no word, where what follows begins with it.
    const opens = behindVerb.get(next) ?? 0;
    const isWord = index === 0 && wordsOfOneLetter.test(text) && !sentence.slice(opens).trimStart().startsWith(text);
    const weak = said === 'weak' && (!oneLetter || isWord);
    if (!corrected && !called && (said === undefined || weak)) continue;
    const by = corrected ? 'corrected' : called ? 'strong' : said!;
    found.push({ ...plainCode(text), start: index, end, by });
  }
  return found.sort((a, b) => a.start - b.start);
}

const relative = tellingFinder('which-is');
/** Whether words begin with "which is", "das ist". */
function isExplained(text: string): boolean {
  const pronoun = relative(text).find(({ start }) => start === 0);
  if (!pronoun) return false;
  // "R, which one often sees, is Rye".
  const clause = /^[^,.;]{4,60},\s/u.exec(text.slice(pronoun.end))?.[0].length ?? 0;
  const behind = pronoun.end + clause;
  return verbs(text).some(
    ({ start }) => start > 0 && (start - pronoun.end <= 1 || (clause > 0 && start >= behind && start - behind <= 1)),
  );
}

const articleBefore = /^\s(?:(?:le|la|les|the|il|lo|el|die|der|das|de|het)\s|l['’])(?=\p{Lu}\p{Ll})/u;
const opensWithCountry = (text: string): boolean => {
  const [country] = findPlaces(text);
  const at = text.search(/\S/u);
  return country?.form === 'name' && country.start - at <= 3;
};

const oneLetterCode =
  /(?<![\p{L}\d])(?:\p{Lu}\s?\d{3,8}|\d{3,8}[ -]?\p{Lu}|\p{Lu}[ ./-]?\d{1,2}[ ./-]\d{2}|\d{1,2}[ ./-]\d{2}[ ./-]\p{Lu}|\d{1,2}([ -]?)\p{Lu}\1\d{2})(?![\p{L}\d])/u;
const plants = tellingFinder('plant');

const lettersOfCode = /(?<![\p{L}\d])(?:(\p{Lu}{2,3})[ -]?\d{3,6}|\d{3,6}[ -]?(\p{Lu}{2,3}))(?![\p{L}\d])/gu;
/** How many letters the codes have that a text writes with several: of workshops, as far as it says of what. */
export const lettersWritten = (text: string): ReadonlySet<number> =>
  new Set([...text.matchAll(lettersOfCode)].map(([, before, behind]) => (before ?? behind!).length));

const dateUnits = tellingFinder('year', 'month', 'week');
/** Whether a text writes codes with one letter, or says that a letter is of a workshop. */
export const writesOneLetter = (text: string): boolean =>
  oneLetterCode.test(text) ||
  text
    .split(/[.!?。！？\n]/)
    .some((one) => letterWords(one).length > 0 && (plants(one).length > 0 || dateUnits(one).length > 1));
