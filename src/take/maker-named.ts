import { foldWords } from '../text';
import { wholeWords } from './words';

/** Words that headings are made of, besides the names in them; more of them than may stand in a model's name. */
const common = new Set([...wholeWords('heading'), ...wholeWords('heading-noun')]);
/** No name by themselves, though a name may hold one. */
const adjectives = wholeWords('heading-adjective');
const runs =
  /(?=\p{Lu})\p{Script=Latin}[\p{Script=Latin}'’-]{1,40}(?:(?: & | )(?=\p{Lu})\p{Script=Latin}[\p{Script=Latin}'’-]{1,40}){0,5}/gu;
/** A name in katakana, where a heading has none in Latin letters. */
const katakana = /[\p{Script=Katakana}ー・]{3,30}/gu;
const isCommon = (word: string) => common.has(foldWords(word).text);

/** Names by the shape of the words: runs of capitals, without the words that headings are made of at their ends. */
function namesIn(heading: string): string[] {
  const latin = [...heading.matchAll(runs)];
  if (latin.length === 0) return (heading.match(katakana) ?? []).filter((name) => !isCommon(name));
  return latin.flatMap((match) => {
    const words = match[0]
      .split(' ')
      .map((word) => (isCommon(word.replace(/^.{0,40}-/, '')) ? word.replace(/-.{0,40}$/, '') : word));
    const pieces: string[][] = [[]];
    for (const word of words) {
      if (isCommon(word) && word !== '&') pieces.push([]);
      else pieces.at(-1)!.push(word);
    }
    return pieces
      .map((piece) => piece.join(' ').replace(/^& | &$/g, ''))
      .filter((name) => name.length >= 3 && !adjectives.has(foldWords(name).text));
  });
}

/** A heading longer than this names nobody any more; more names than these are a list of all makers. */
const longestHeading = 200;
const mostNames = 12;

const count = (text: string, name: string): number => text.split(name).length - 1;

/** "Ondrasse Carryall": the last words are no part of the name where the text has both apart. */
function shortest(name: string, text: string): string {
  const words = name.split(' ');
  for (let length = 1; length < words.length; length += 1) {
    const [head, tail] = [words.slice(0, length).join(' '), words.slice(length).join(' ')];
    if (tail.startsWith('&')) continue;
    if (count(text, head) > count(text, `${head} ${tail}`) && count(text, tail) > count(text, `${head} ${tail}`))
      return head;
  }
  return name;
}

/** "Brandt & Söhne – Werkskürzel und Jahre": what stands by itself between strokes and colons, before words of its own. */
const aloneIn = (heading: string): Set<string> => {
  const pieces = heading.split(/\s[–—|-]\s|:\s/u);
  return new Set(pieces.length > 1 ? pieces.map((piece) => piece.trim()) : []);
};

const things = wholeWords('heading-thing');

/** "Códigos Lagunilla", "Wolkersdorf-Tasche", "a Brackenfield holdall": a name right beside what it is the maker of. */
function isByThing(heading: string, name: string): boolean {
  const at = heading.indexOf(name);
  const before = /(\p{L}{2,30})\s$/u.exec(heading.slice(Math.max(0, at - 32), at))?.[1];
  const behind = /^(?:['’]s)?[\s-](\p{L}{2,30})/u.exec(heading.slice(at + name.length, at + name.length + 36))?.[1];
  return [before, behind].some((word) => word !== undefined && things.has(foldWords(word).text));
}

/** Those of a list that something speaks for; all where it speaks for none. */
function favoured(names: readonly string[], speaksFor: (name: string) => boolean): readonly string[] {
  const some = names.filter(speaksFor);
  return some.length > 0 ? some : names;
}

const spelled = (name: string): string =>
  name === name.toUpperCase() ? name.replace(/\p{L}{2,40}/gu, (word) => word[0] + word.slice(1).toLowerCase()) : name;

/**
 * The makers that a page tells of, by the names in its main heading and title; where both name nobody, in the line that the
 * page begins with. A name that the text has as well is one before others; words that only the site's own title has are not.
 */
export function makersNamed(title: string, headings: readonly string[], text: string, opening = ''): string[] {
  const [main = '', ...others] = headings;
  const all = [title, ...headings, opening, text].join('\n');
  const lower = all.toLowerCase();
  const body = text.toLowerCase();
  const heads = [main, title, opening].map((head) => head.slice(0, longestHeading));
  const heading = heads.find((head) => namesIn(head).length > 0) ?? '';
  const alone = aloneIn(heading);
  const named = namesIn(heading).slice(0, mostNames);
  const inBody = (name: string) => count(body, name.toLowerCase()) > 0;
  const told = named.some(inBody) ? named.filter(inBody) : favoured(named, (name) => isByThing(heading, name));
  const repeated = favoured(told, (name) => count(lower, name.toLowerCase()) >= 2);
  const chosen = favoured(repeated, (name) => alone.has(name)).map((name) => shortest(name, all));
  // "Codes of two houses": the sections name them.
  const sections =
    chosen.length > 0
      ? []
      : others
          .slice(0, 60)
          .flatMap((heading) => namesIn(heading.slice(0, longestHeading)))
          .slice(0, mostNames)
          .filter((name) => count(text, name) >= 2);
  return [...new Set([...chosen, ...sections].map(spelled))];
}

/** The maker that a heading below the main one names, alone or among words of headings. */
export const makerOfHeading = (heading: string, makers: readonly string[]): string | null =>
  makers.find((maker) => heading.toLowerCase().includes(maker.toLowerCase())) ?? null;

/** Makers that a text names, in order of their place. */
export const makersIn = (text: string, makers: readonly string[]): string[] =>
  makers
    .map((maker) => ({ maker, at: text.indexOf(maker) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at)
    .map(({ maker }) => maker);
