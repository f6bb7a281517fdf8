import { clauseAround, partWords, phrasePattern, wordsOf } from '../text';

/*
 * What a clause speaks of, where that is not the piece. Whatever is in doubt counts as something else: what is not said
 * plainly of the piece judges nothing.
 */

const along = phrasePattern(wordsOf('comes-along'), 'u').source;
const accessory = new RegExp(along, 'u');
const accompanies = /(?<!\p{L})(?:with|mit|samt|avec|con|met|incl|inkl|including|inklusive)\s(?:\p{L}{1,20}\s){0,3}$/u;

/** "The box has scratches": said of what comes along. "With box, some scratches" is not. */
export function isOfAccessory(text: string, start: number, end: number): boolean {
  const ahead = text.slice(clauseAround(text, start, end).start, start);
  const found = accessory.exec(ahead);
  return found !== null && !accompanies.test(ahead.slice(0, found.index));
}

const parts = phrasePattern(
  Object.entries(partWords).flatMap(([part, words]) => (part === 'body' ? [] : words)),
  'u',
).source;
const link = '(?:is|are|was|were|dates?|ist|sind|war|stammt|stammen|est|sont|date|datent|e|sono|es|son|zijn|は|も)';
const other = new RegExp(
  `(?:${along}|${parts})(?:\\s(?:and|und|et|e|y|en)\\s(?:\\p{L}{1,12}\\s){0,2}\\p{L}{1,15})?\\s?${link}(?!\\p{L})`,
  'u',
);
const run = phrasePattern(wordsOf('model-run'), 'u');

/** "The dust bag is from 2019", "the zip is of 2010": a date with a subject of its own. */
export const isDateOfThing = (text: string, start: number, end: number): boolean =>
  other.test(text.slice(clauseAround(text, start, end).start, start));

/** "The model was made from 1985 to 2012": the years of all pieces of its kind. */
export const isRunOfModel = (text: string, start: number, end: number): boolean =>
  run.test(text.slice(clauseAround(text, start, end).start, start));
