import {
  aheadInClause,
  aheadInSentence,
  anyOf,
  clauseAround,
  findPlaces,
  phraseTest,
  rightBehind,
  sourceRange,
  textPattern,
  wordsOf,
} from '../text';
import { namesBag } from './goods';
import type { Passage } from './passage';

/*
 * "England, 1968", "Sac en toile enduite, France, 1999": how dealers and salerooms tell where and when a piece was made.
 * Both stand by themselves, at the head of a line or behind what the piece is. Common practice, no source.
 */

const hedge = `(?:(?:${anyOf(wordsOf('about'))})\\.?\\s?)?`;
const bareYear = textPattern(`^[,、]\\s?${hedge}(?:1[89]|20)\\d\\d年?頃?\\s?(?:[.,;(\\n。]|$)`);
const bareHedge = textPattern(`^\\s?${hedge}$`);
/** What was bought, kept, repaired or shown somewhere in some year is told so as well. */
const another = phraseTest(wordsOf('bought', 'gifted', 'shop', 'date-of-else', 'restored', 'replaced', 'other-work'));

/** Whether a clause that names a country alone heads its line, or stands behind what the piece is. */
function headsOrFollowsPiece(text: string, start: number): boolean {
  const ahead = aheadInSentence(text, start);
  return ahead.trim() === '' || (namesBag(ahead) && !another.test(ahead));
}

/** Whether a country at a place of the folded text is where a dealer's line has the piece made. */
export function isBeforeYear(text: string, start: number, end: number): boolean {
  const ahead = aheadInClause(text, start);
  const opens = start - ahead.length;
  return ahead.trim() === '' && bareYear.test(rightBehind(text, end)) && headsOrFollowsPiece(text, opens);
}

/** Whether a year is when a dealer's line has the piece made: nothing but a country stands in the clause ahead of it. */
export function isBehindCountry(from: Passage, [start, end]: readonly [number, number]): boolean {
  const { text } = from.folded;
  const own = clauseAround(text, start, end);
  const isApposed = /[,、]/.test(text[own.start - 1] ?? '') && bareHedge.test(text.slice(own.start, start));
  if (!isApposed || text.slice(end, own.end).trim() !== '') return false;
  const before = clauseAround(text, own.start - 1, own.start - 1);
  const words = sourceRange(from.folded, before.start, before.end).words.trim();
  // "イタリア製、1991年".
  const country = words.replace(/製$/, '');
  return findPlaces(words)[0]?.words === country && headsOrFollowsPiece(text, before.start);
}
