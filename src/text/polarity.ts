import { clauseAround, isDenial, isNegated, sentenceAround } from './clause';
import { anyLanguage } from './each-language';
import { conditional, either } from './joint-words';
import { topics, wordsOf } from './lexicon';
import { phrasePattern } from './phrases';

/** "Beware of replicas", "protects from scratches": named so that it stays away. In Japanese it stands right behind. */
const warnedOf = phrasePattern(wordsOf('warned-of'), 'u');
const warnedBehind = new RegExp(`^(?:${phrasePattern(topics['warned-of'].ja, 'u').source})`, 'u');

/** "Nothing faded", "nada de polipiel". */
const nothingOf = new RegExp(`(?:${phrasePattern(wordsOf('nothing'), 'u').source})\\s(?:\\p{L}{1,12}\\s)?$`, 'u');
const deniedBehind = /^(?:\s\p{L}{1,10}){1,3}\s(?:keine[nr]?|geen)(?!\p{L})/u;

/**
 * Whether words are said of the piece or denied of it. What is a denial by itself ("no patina") is said as it stands:
 * another denial before it ("no scratches no patina") is not one of it.
 */
export function polarityOf(text: string, start: number, end: number): 'is' | 'is-not' {
  if (isDenial(text.slice(start, end))) return 'is';
  const clause = clauseAround(text, start, end);
  // "Kratzer habe ich keine gefunden".
  if (deniedBehind.test(text.slice(end, clause.end)) || nothingOf.test(text.slice(clause.start, start)))
    return 'is-not';
  const warns = warnedOf.test(text.slice(Math.max(clause.start, start - 40), start));
  return warns || warnedBehind.test(text.slice(end, end + 8)) || isNegated(text, start, end) ? 'is-not' : 'is';
}

const leftOpen = phrasePattern(wordsOf('whether'), 'u');
const leftOpenBehind = new RegExp(`^.{0,6}?(?:${phrasePattern(topics.whether.ja, 'u').source})`, 'u');

/** "In 1994... or was it 1996?": dots are no end of what the seller asks. */
const wavers = new RegExp(
  `^[^.!?;。\\n…]{0,24}(?:\\.{2,3}|…)\\s?[¿"]?(?:${anyLanguage(either)})\\s?[^.!;。\\n]{0,32}[?？]`,
  'u',
);

/** "If it were from an outlet", "wäre sie neu": what would be so is not. */
const isConditional = new RegExp(`^\\s?(?:${anyLanguage(conditional)})\\s`, 'u');
const conditionalBehind =
  /^[^。、]{0,3}(?:なら(?!ない|ず)|だったら|であれば)|^[^。、]{0,6}か(?:と|って)(?:聞|尋|訊|お?問|お?質問)/u;

const butWord = phrasePattern(wordsOf('but'), 'u').source;
const thought = phrasePattern(wordsOf('once-thought'), 'u').source;
/** "I used to think it was from the seventies", "ich dachte immer, sie sei aus Spanien": what is not believed any more. */
const onceThought = new RegExp(`(?:${thought})(?:,?\\s(?!${butWord})[\\p{L}']{1,14}){0,8}\\s?$`, 'u');
const onceThoughtBehind = new RegExp(`^[^。]{0,12}?(?:${phrasePattern(topics['once-thought'].ja, 'u').source})`, 'u');
/** Further ahead a belief is not looked for. */
const furthest = 100;
const isOnceThought = (text: string, sentenceStart: number, start: number, end: number): boolean =>
  onceThought.test(text.slice(Math.max(sentenceStart, start - furthest), start)) ||
  onceThoughtBehind.test(text.slice(end, end + 24));

/** Whether words are asked, supposed or not known, and so state nothing: "is it leather?", "if there were scratches". */
export function isLeftOpen(text: string, start: number, end: number): boolean {
  const sentence = sentenceAround(text, start, end);
  if (text[sentence.end] === '?' || text[sentence.end - 1] === 'か') return true;
  if (wavers.test(text.slice(end, end + 96)) || isOnceThought(text, sentence.start, start, end)) return true;
  const clause = clauseAround(text, start, end);
  if (isConditional.test(text.slice(clause.start, start)) || conditionalBehind.test(text.slice(end, end + 12)))
    return true;
  return (
    leftOpen.test(text.slice(clause.start, start)) || leftOpenBehind.test(text.slice(end, clause.end).slice(0, 16))
  );
}
