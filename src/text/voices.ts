import { withoutEnd } from './ends';
import { foldedSet, foldWords } from './fold';
import { labelOf } from './label';
import { withoutLegends } from './legend';
import { wordsOf } from './lexicon';
import { phrasePattern } from './phrases';

/*
 * Who speaks in what a page shows: only the seller's words are the seller's claims. Buyers' comments, reviews, the
 * platform's terms, a dealer's legend and other offers stand under a heading of their own; what follows it is theirs up
 * to a heading of the offer. Common practice, no source.
 */

const headings = foldedSet(wordsOf('other-voices'));
const ofQuestions = foldedSet(wordsOf('questions-heading'));
const backToSeller = foldedSet(wordsOf('sellers-part'));
/** No heading is longer. */
const longest = 48;
/** "Comments (12)", "Reviews:". */
const ending = /[\s:：()\d]/;

const headingOf = (line: string): 'others' | 'questions' | 'seller' | null => {
  if (line.length > longest) return null;
  const bare = withoutEnd(line.trim(), ending);
  const { text } = foldWords(bare);
  if (headings.has(text)) return 'others';
  if (ofQuestions.has(text)) return 'questions';
  return backToSeller.has(text) || (bare !== '' && labelOf(bare) !== null) ? 'seller' : null;
};

/** "Seller: yes, KV0915 on the tab": an answer among the questions of others. */
const answer = new RegExp(`^\\s?(?:${phrasePattern(wordsOf('seller-label')).source})\\s?[:：]\\s?\\S`, 'u');
const isAnswer = (line: string): boolean => answer.test(foldWords(line.slice(0, longest)).text);

type Voice = 'seller' | 'others' | 'answer';

/** "Where was it made?", "刻印はありますか": asked by somebody without a name ahead of it. */
const asks = (line: string): boolean =>
  (/[?？]/u.test(line) || /(?:か|(?:教えて|お願い).{0,6})[。\s]*$/u.test(line.trim())) &&
  !/^\s*[^\s:：]{1,24}\s?[:：]/u.test(line);
/** A question that tells nothing of its own: what the answer below it is of. */
const onlyAsks = (line: string): boolean => /^[^.!?。！？\d]{2,80}[?？]?\s*$/u.test(line);

/**
 * The voice of each line under a heading of questions, where who asks and who answers is told by their turns alone: what
 * stands right below a question is its answer, and with it the question, where it only asks.
 */
function turnsOf(lines: readonly string[]): Voice[] {
  const voices = lines.map((): Voice => 'others');
  const said = lines.flatMap((line, at) => (line.trim() === '' ? [] : [at]));
  for (const [place, at] of said.entries()) {
    const before = said[place - 1];
    if (before === undefined || !asks(lines[before] as string) || asks(lines[at] as string)) continue;
    voices[at] = 'answer';
    if (onlyAsks(lines[before] as string)) voices[before] = 'answer';
  }
  return voices;
}

/** Who says each line of a text. */
function voicesOf(lines: readonly string[]): Voice[] {
  let part: ReturnType<typeof headingOf> = 'seller';
  let opened = 0;
  const voices: Voice[] = [];
  const close = (at: number) => {
    // Where answers name their speaker, turns tell nothing.
    if (part !== 'questions' || voices.slice(opened, at).includes('answer')) return;
    voices.splice(opened, at - opened, ...turnsOf(lines.slice(opened, at)));
  };
  for (const [at, line] of lines.entries()) {
    const answers = isAnswer(line);
    const heading = answers ? null : headingOf(line);
    if (heading) {
      close(at);
      [part, opened] = [heading, at];
    }
    voices.push(part === 'seller' ? 'seller' : answers ? 'answer' : 'others');
  }
  close(lines.length);
  return voices;
}

/** The text with all lines blank but those of one voice, so that every place in it stays what it was. */
function linesOf(voice: Voice, text: string): string {
  const lines = withoutLegends(text).split('\n');
  const voices = voicesOf(lines);
  return lines.map((line, at) => (voices[at] === voice ? line : ' '.repeat(line.length))).join('\n');
}

/** The text with all that others say in it blank. */
export const sellersOwn = (text: string): string => linesOf('seller', text);

/** The text with all blank but what the seller answers among the questions of others. */
export const sellersAnswers = (text: string): string => linesOf('answer', text);
