import { clauseAround, partWords, phrasePattern, wordsOf } from '../text';

/*
 * What a clause speaks of, where that is not the piece. Whatever is in doubt counts as something else: what is not said
 * plainly of the piece judges nothing.
 */

/** The piece itself may be called so in a title: "Ondrasse belt". */
const alsoParts = new Set([...Object.values(partWords).flat(), 'purse', 'cartera', 'watch']);
const things = phrasePattern(
  [...wordsOf('comes-along'), ...wordsOf('small-thing').filter((word) => !alsoParts.has(word))],
  'u',
).source;
const thing = new RegExp(things, 'u');
const accompanies = new RegExp(`(?:${phrasePattern(wordsOf('with'), 'u').source})\\s(?:\\p{L}{1,20}\\s){0,3}$`, 'u');

/** "The box has scratches": said of what comes along. "With box, some scratches" is not, nor what the title names. */
export function isOfAccessory(text: string, start: number, end: number, title: string): boolean {
  const ahead = text.slice(clauseAround(text, start, end).start, start);
  const found = thing.exec(ahead);
  return found !== null && !title.includes(found[0]) && !accompanies.test(ahead.slice(0, found.index));
}

const thingBehind = new RegExp(`^[\\s-]{1,2}(${things})`, 'u');

/** "With a faux leather pouch", "faux leather box": said of what stands right behind the words, if not of the piece. */
export function isBeforeAccessory(text: string, end: number, title: string): boolean {
  const found = thingBehind.exec(text.slice(end, end + 32));
  return found !== null && !title.includes(found[1] as string);
}

const parts = phrasePattern(
  Object.entries(partWords).flatMap(([part, words]) => (part === 'body' ? [] : words)),
  'u',
).source;
const link = phrasePattern(wordsOf('is', 'dates-from'), 'u').source;
const between = '(?:\\s\\p{L}{1,15}){0,3}?\\s?';
const pictures = phrasePattern(wordsOf('photograph'), 'u').source;
const subjectOfDate = new RegExp(`(${things}|${parts}|${pictures})${between}(?:${link})`, 'u');

/** "The dust bag is from 2019", "the zip is of 2010": a date with a subject of its own. */
export function isDateOfThing(text: string, start: number, end: number, title: string): boolean {
  const found = subjectOfDate.exec(text.slice(clauseAround(text, start, end).start, start));
  return found !== null && !title.includes(found[1] as string);
}

const run = phrasePattern(wordsOf('model-run'), 'u');

/** "The model was made from 1985 to 2012": the years of all pieces of its kind. */
export const isRunOfModel = (text: string, start: number, end: number): boolean =>
  run.test(text.slice(clauseAround(text, start, end).start, start));
