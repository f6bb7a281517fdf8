import { foldWords } from '../../text';
import { namesMonth } from '../said/month';
import { wholeWords } from '../words';

/** A sentence of a paragraph with its place in it. */
export interface Sentence {
  text: string;
  start: number;
}

/** Short forms that end in a point and end no sentence. */
const short = /(?:^|[\s(])(?:c|ca|env|approx|aprox|ex|z|b|no|nr|st|mr|mrs|dr|p|e|g|i|l|vs|bzw|etc|jh|resp|incl|ms)$/i;

const weeks = wholeWords('week');

/** "In der 44. Woche", "am 3. März": in German the point is of the number. */
function isOrdinal(text: string, start: number, at: number): boolean {
  if (!/(?<![\d.,])\d{1,2}$/.test(text.slice(Math.max(start, at - 4), at))) return false;
  const next = /^\p{Lu}\p{L}{2,11}/u.exec(text.slice(at + 2, at + 16))?.[0];
  return next !== undefined && (weeks.has(foldWords(next).text) || namesMonth(next));
}

/** A text's sentences, in order; a point behind a short form or before a small letter ends none. */
export function sentencesOf(text: string): Sentence[] {
  const found: Sentence[] = [];
  let start = 0;
  const end = (at: number) => {
    const piece = text.slice(start, at);
    const lead = piece.length - piece.trimStart().length;
    if (piece.trim() !== '') found.push({ text: piece.trim(), start: start + lead });
    start = at;
  };
  for (const match of text.matchAll(/[.!?]{1,3}(?:["”’)]|\s?»)?\s(?=(?:["“„(¿¡]|«\s?)?[\p{Lu}\d])|[。！？\n]/gu)) {
    if (match[0].startsWith('.') && short.test(text.slice(Math.max(start, match.index - 8), match.index))) continue;
    if (match[0].startsWith('. ') && isOrdinal(text, start, match.index)) continue;
    end(match.index + match[0].length);
  }
  end(text.length);
  return found;
}

/** Whether a sentence asks, and so states nothing. */
export const isAsked = (text: string): boolean => /[?？]["”»’)\s]{0,3}$|[かの]。$/u.test(text);
