import { afterLast } from '../text/ends';
import { type Folded, foldWords, sourceRange } from '../text/fold';
import { japanese } from '../text/japanese';
import { topics, wordsOf } from '../text/lexicon';
import { phrasePattern, phraseTest, textPattern } from '../text/phrases';
import { type Draft, likeliest } from './draft';
import type { Labelled } from './extract-types';

/*
 * An ad of somebody who wants to buy offers nothing, whatever sum stands in it. It says so in its title, in the page's
 * row for the kind of ad, or opens with it and asks those who have one. What looks for a home is an offer. Common
 * practice, no source.
 */

const looking = phrasePattern(wordsOf('wanted', 'wanted-behind')).source;
/** "Hi, I am looking for …". */
const by = `(?:(?:${phrasePattern(wordsOf('wanted-by')).source})[\\s,:!]{1,2}){0,2}`;
/** "Wanted: …", "【探しています】…": nothing but decoration, a greeting or "I am" ahead. */
const opensTitle = textPattern(`^[^\\p{L}]{0,8}${by}(${looking})`);
/** "Bucket 26 wanted". */
const endsTitle = textPattern(`(${phrasePattern(wordsOf('wanted-behind')).source})[^\\p{L}]{0,8}$`);
const opensSentence = new RegExp(`(?:^|[.!?,;:。、！？\\n])[^\\p{L}.!?\\n]{0,6}${by}(${looking})`, 'gu');
/** The verb stands last: "自分用に Messenger 36 を探しています". */
const verbLast = phrasePattern([...topics.wanted.ja, ...topics['wanted-behind'].ja]);
const home = phraseTest(wordsOf('wanted-home'));
/** "Most wanted", "heiß gesucht". */
const much = textPattern(`(?:${phrasePattern(wordsOf('wanted-much')).source})[\\s-]?$`);
/** Whoever has none shows somebody else's photo. */
const asks = phraseTest(wordsOf('wanted-asks', 'not-this-piece'));
const adType = phraseTest(wordsOf('ad-type'));
const piece = phraseTest(wordsOf('bag', 'small-thing', 'this-one'));
/** What is looked for is named so near. */
const reach = 48;
/** A wish further down is one beside an offer. */
const opening = 400;
const longest = 4000;

/** What is looked for: the rest of the sentence behind the words of looking, ahead of them in Japanese and behind a name. */
function soughtAt({ text }: Folded, start: number, end: number): string {
  const ahead = afterLast(text.slice(Math.max(0, start - reach), start), /[.!?。！？\n]/);
  const behind = /^[^.,!。！\n]*/u.exec(text.slice(end, end + reach))?.[0] ?? '';
  if (japanese.test(text.slice(start, end))) return ahead.trim() === '' ? behind : ahead;
  return /\p{L}/u.test(behind) ? behind : ahead;
}

/** What a title or an opening looks for, where it looks for a piece: no home for one, no buyer, no question of a shop. */
function lookedFor(folded: Folded, start: number, end: number): string | null {
  // "Très recherché": sought after, told by its accent alone.
  if (/é/u.test(sourceRange(folded, start, end).words.normalize('NFC'))) return null;
  if (much.test(folded.text.slice(Math.max(0, start - 12), start))) return null;
  const sought = soughtAt(folded, start, end);
  return home.test(sought) || sought.includes('?') ? null : sought;
}

function saysWanted(title: string): boolean {
  const folded = foldWords(title);
  return [opensTitle, endsTitle].some((pattern) => {
    const found = pattern.exec(folded.text);
    if (!found) return false;
    const start = found.index + found[0].lastIndexOf(found[1] as string);
    return lookedFor(folded, start, start + (found[1] as string).length) !== null;
  });
}

/** The text opens with a piece that is looked for, and asks those who have one. */
function asksForOne(description: string, title: string): boolean {
  const folded = foldWords(description.slice(0, longest));
  if (!asks.test(folded.text)) return false;
  const named = new Set(foldWords(title).text.match(/[\p{L}]{4,}/gu));
  const opens = folded.text.slice(0, opening);
  return [...opens.matchAll(opensSentence), ...opens.matchAll(verbLast)].some((found) => {
    const end = found.index + found[0].length;
    const sought = lookedFor(folded, end - (found[1] ?? found[0]).length, end);
    if (sought === null) return false;
    return piece.test(sought) || (sought.match(/[\p{L}]{4,}/gu) ?? []).some((word) => named.has(word));
  });
}

/** Whether a page is the ad of somebody who looks for a piece. */
export function isWantedAd({ title, description }: Pick<Draft, 'title' | 'description'>, rows: readonly Labelled[]) {
  const called = likeliest(title).slice(0, 300);
  return (
    saysWanted(called) ||
    rows.some(({ name, value }) => adType.test(foldWords(name).text) && saysWanted(value.slice(0, 60))) ||
    asksForOne(likeliest(description), called)
  );
}
