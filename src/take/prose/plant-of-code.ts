import { foldWords } from '../../text';
import { namesMonth } from '../said/month';
import { readPlace } from '../said/place';
import { tellingFinder } from '../words';
import { placeNames } from './place-names';
import { plantBeside, type SaidPlant } from './said-plant';

const plantWords = tellingFinder('plant');

/** What stands right before a town: that something was there, or the sign behind which it is told. */
const leads =
  /(?:(?<!\p{L})(?:at|in|from|of|near|à|en|te|a|ad|aus|von|zu|de|di|da)\s|(?<!\p{L})(?:d|nell|dell)['’]|[:：,(=]\s?)$/iu;
/** What may stand between a word for a workshop and its town. */
const behindWord = /^(?:\s(?:at|in|of|à|en|te|a|aus|von|zu|de|di|in der|im)\s|\s?d['’]|\s)$/iu;
const inHan = /(?<![\p{Script=Han}])[年月日週]?(\p{Script=Han}{2,4}?)(?:の)?(?:工場|工房)/u;

/** The letters of a code, where it has one run of them. */
export const lettersOf = (code: string): string | null => {
  const runs = code.match(/\p{Lu}{1,3}/gu) ?? [];
  return runs.length === 1 ? runs[0]! : null;
};

/**
 * "SH0576 was made in May 1976 at Shaftesbury": the one town that the words around a code tell is that of its letters. It
 * begins as they do, or a word for a workshop stands before it. Null where there is none, or several.
 */
export function plantOfCode(text: string, letters: string, at: number, makers: readonly string[]): SaidPlant | null {
  const han = inHan.exec(text)?.[1];
  const towns = han === undefined ? townsIn(text, letters, makers) : [han];
  const [town, ...others] = new Set(towns);
  const place = town === undefined || others.length > 0 ? null : readPlace(town, 'cell');
  return place && plantBeside(letters, place, [], at);
}

function townsIn(text: string, letters: string, makers: readonly string[]): string[] {
  const workshops = plantWords(text);
  return [...text.matchAll(placeNames)].flatMap(({ 0: all, index: from }) => {
    // "Werk Traunstein": in German the word has a capital as well.
    const word = workshops.find(({ start, end }) => start === from && end < from + all.length);
    const [name, index] = word ? [text.slice(word.end + 1, from + all.length), word.end + 1] : [all, from];
    if (namesMonth(name) || makers.some((maker) => maker.includes(name))) return [];
    const ofWorkshop = workshops.some(({ end }) => end <= index && behindWord.test(text.slice(end, index)));
    const isInitial = foldWords(name).text.startsWith(foldWords(letters.slice(0, 1)).text);
    return ofWorkshop || (isInitial && leads.test(text.slice(0, index))) ? [name] : [];
  });
}
