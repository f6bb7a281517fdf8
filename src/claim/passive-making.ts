import { aheadInClause, anyLanguage, behindInClause, jointWords, phraseTest, textPattern, wordsOf } from '../text';
import type { Passage } from './passage';

/*
 * "The bag was created in 1987", "sie wurde 1987 gemacht", "se hizo en 1987": verbs that tell of making only where the
 * piece is what they are said of; photos, repairs and holidays are made as well. Common practice, no source.
 */

const toYear = `(?:\\s(?:\\p{L}{1,12}|[a-z]'))?(?:\\s\\p{L}{1,6}){0,3}\\s?$`;
const { wasMade, madeAtEnd, itself } = jointWords;
/** "Fait en 1978", "fatta nel 1978": the participle by itself opens its clause. */
const madeBare = '(?<=^\\s?)(?:faite?s?|fatt[aoei])';
const [en, fr, , it, es] = wasMade;
const verbAhead = textPattern(`(?<!\\p{L})(?:${[en, fr, it, es].join('|')}|${madeBare})${toYear}`);
const auxiliaryAhead = textPattern(`(?<!\\p{L})(?:${wasMade[2]}|${wasMade[5]})(?:\\s\\p{L}{1,6}){0,3}\\s?$`);
const verbBehind = textPattern(`^(?:\\s\\p{L}{1,12}){0,3}?\\s(?:${anyLanguage(madeAtEnd)})(?!\\p{L})`);
const pieceOnly = textPattern(
  `^\\s?(?:(?:${phraseTest(wordsOf('article', 'possessive', 'and', 'this-one')).source})\\s)?(?:${anyLanguage(itself)}|(?:\\p{L}{1,15}\\s)?(?:${phraseTest(wordsOf('bag', 'piece', 'kind-of-piece')).source})(?:\\s\\p{L}{1,15})?)?\\s?$`,
);

/** What a clause names ahead of such a verb and a date at a place; null where there is none. */
function subjectOfMaking(from: Passage, start: number, end: number): string | null {
  const { text } = from.folded;
  const ahead = aheadInClause(text, start);
  const found = verbAhead.exec(ahead);
  if (found) return ahead.slice(0, found.index);
  const auxiliary = verbBehind.test(behindInClause(text, end)) ? auxiliaryAhead.exec(ahead) : null;
  return auxiliary && ahead.slice(0, auxiliary.index);
}

/** Whether a date is that of the making of the piece, by a verb of which the piece is the subject. */
export function isMadeThen(from: Passage, [start, end]: readonly [number, number]): boolean {
  const subject = subjectOfMaking(from, start, end);
  if (subject === null) return false;
  const last = subject.trim().match(/[\p{L}\p{N}&'-]{2,24}$/u)?.[0];
  return pieceOnly.test(subject) || (last !== undefined && from.title.includes(last));
}
