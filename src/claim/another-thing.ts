import {
  accessoryWords,
  aheadInSentence,
  anyLanguage,
  behindInSentence,
  type Hit,
  jointWords,
  phrasePattern,
  phraseTest,
  type Topic,
  textPattern,
  wordsOf,
} from '../text';
import type { Passage } from './passage';

/*
 * Where a maker's name stands for something else than the piece: what fits inside it, what comes with it, what it is
 * compared with, and lists of words to be found by. Patterns over folded text; common practice, no source. Whatever is
 * in doubt counts as something else: a maker that is not said plainly judges nothing.
 */

const sourceOf = (...names: Topic[]) => phrasePattern(wordsOf(...names)).source;

/** "my Ondrasse wallet"; a possessive right before the name, with one or two words between. */
const possessive = textPattern(`(?:${sourceOf('possessive')})\\s(?:\\p{L}{1,20}\\s){0,2}$`);
/** In a sentence that offers something, "my Ondrasse bag" is the piece. */
const offers = phraseTest(wordsOf('offering'));

/** What has room in the piece, what goes with it, what it is compared with, and other pieces of the seller. */
const before = textPattern(
  `(?:${sourceOf('goes-inside', 'has-room', 'goes-along', 'measured-against', 'other-listings')})[^.!?;\\n]{0,40}$`,
);
/** "like an Ondrasse", right before the name. */
const likened = textPattern(`(?:${sourceOf('likened')})\\s(?:(?:${sourceOf('an', 'article')})\\s)?$`);
const after = textPattern(`^[\\s-]{0,2}(?:\\p{L}{2,20}\\s){0,3}(?:${sourceOf('goes-inside')})`);

const thing = phrasePattern([...wordsOf('small-thing'), ...accessoryWords]).source;
const thingAfter = textPattern(`^[\\s-]{1,2}(?:\\p{L}{2,15}\\s){0,1}(${thing})`);
const thingBefore = textPattern(`(${thing})\\s(?:(?:${anyLanguage(jointWords.whose)})\\s)?$`);

const tagCue = textPattern(`(?:${sourceOf('search-words')})\\s?[:：=-]`);
/** From so many short items on a line of names is a list to be found by. */
const fewestTags = 5;
const longestLine = 400;

/** Whether a name at this place of a text is said of another thing, or only stands in a list of words. */
export function isOfAnotherThing(from: Passage, hit: Pick<Hit<string>, 'foldedStart' | 'foldedEnd'>): boolean {
  const { text } = from.folded;
  const { foldedStart: start, foldedEnd: end } = hit;
  const [ahead, behind] = [aheadInSentence(text, start), behindInSentence(text, end)];
  if (likened.test(ahead) || before.test(ahead) || after.test(behind)) return true;
  if (possessive.test(ahead) && !offers.test(ahead + text.slice(start, end) + behind)) return true;
  if (text[start - 1] === '#' || isTag(text, start, end, from.field === 'title')) return true;
  const named = thingAfter.exec(behind)?.[1] ?? thingBefore.exec(ahead)?.[1];
  return named !== undefined && !from.title.includes(named);
}

function isTag(text: string, start: number, end: number, inTitle: boolean): boolean {
  // The line, as far as is looked at: a text without line ends is not searched to its ends for every name in it.
  const ahead = text.slice(Math.max(0, start - longestLine), start);
  const behind = text.slice(end, end + longestLine);
  const lead = ahead.slice(ahead.lastIndexOf('\n') + 1);
  const rest = behind.split('\n', 1)[0] as string;
  if (tagCue.test(lead)) return true;
  if (inTitle) return false;
  const name = text.slice(start, end);
  const items = `${lead}${name}${rest}`.split(/[,;|/#·•、]/).map((item) => item.trim());
  const short = items.filter((item) => item.split(' ').length <= 3).length;
  return items.length >= fewestTags && short >= items.length * 0.8 && items.indexOf(name) > 0;
}
