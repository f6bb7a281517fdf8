import {
  aheadInSentence,
  anyOf,
  type Folded,
  phrasePattern,
  phraseTest,
  rightAhead,
  sentenceAround,
  sourceRange,
  textPattern,
  withoutEnd,
  wordsOf,
} from '../text';
import { codeAt, opensCode, opensQuote } from './code-at';
import type { ClaimOf } from './types';

/** Words that announce a code. Common practice, no source. */
const cue = phrasePattern(wordsOf('code-cue'));
/** "Colour code", "code postal": no code of the maker's. */
const otherCode = phrasePattern(wordsOf('other-code'));
const otherAhead = phraseTest(wordsOf('other-code'));
/** Between cue and code; the code itself is in capitals or digits, at least two of them digits. */
const between = new RegExp(
  `^,?\\s{0,2}(?:(?:${anyOf(wordsOf('announces-code'))}|n[or]?\\.),?\\s{0,2}){0,7}[:=\\-–#"'(「\\s]{0,4}$`,
  'iu',
);
/**
 * "Numéro gravé sous la languette : AB·1174": between the word for a code and what a colon or a quote sets off, only where
 * on the piece it stands. Common practice, no source.
 */
const announcement = phrasePattern(wordsOf('code-cue', 'code-noun'));
const setOff = textPattern(`^([^\\d.!?;\\n]{2,60}?)(?:[:=]\\s{0,2}|${opensQuote}\\s?)$`);
/** "In the inner pocket is a number: 8 3 0 4 - 1 7": where it stands is said ahead. */
const behindNoun = textPattern(`^\\s?[:=]?\\s?${opensQuote}?\\s?$`);
/** "En la etiqueta interior pone B18-12", "Label binnenin: "DR 23-08"". */
const onThePiece = phrasePattern(wordsOf('inside-the-piece'));
const standsThere = textPattern(
  `^[^.!?;:,\\n\\d]{0,30}(?:(?:${anyOf(wordsOf('reads-there'))})\\s|[:=]\\s?${opensQuote}?|["„“「『«])\\s?$`,
);
/** "Merkje binnenin: nr. 4479", "in the pocket no. 20817": a number sign, and where it stands. */
const numberThere = textPattern(`^[:,]?\\s?(?:n[or]\\.?|n\\.?[°º]|№|num\\.?)\\s?:?\\s?${opensQuote}?$`);
const isLongNumber = (code: string): boolean => code.replace(/\D/g, '').length >= 4;
/** "Un timbro con 7 3 1 4", "Stempel mit "B 8 / 1 7"". */
const withIt = textPattern(`^\\s(?:${anyOf(wordsOf('with'))})\\s?${opensQuote}?$`);
const isSpaced = (code: string): boolean => /^[A-Z0-9](?:[ ./-]{1,3}[A-Z0-9]){2,}/.test(code);
/** Without a word for a code nearby, only what can hardly be anything else. */
const unmistakable = (code: string): boolean => /[A-Z]/.test(code) && (code.match(/\d/g) ?? []).length >= 3;
/** "Auf dem Etikett steht 12/90": two numbers that a stroke parts, and no sum or size. */
const isParted = (code: string): boolean => /^\d{1,3}\s?\/\s?\d{2,4}$/.test(code);
/** "A79 gestempeld": right before the word for how it was made, a letter is enough. */
const isLettered = (code: string): boolean => /[A-Z]/.test(code);
const longestGap = 48;
const longestWay = 72;

type TakenBy = NonNullable<ClaimOf<'code'>['takenBy']>;
interface Way {
  by: TakenBy['by'];
  /** The words that lead to a code. */
  words: RegExp;
  /** How far behind them it may begin. */
  reach: number;
  /** Whether what stands between leads to it, behind the words at a place of a text. */
  leads: (gap: string, text: string, at: number) => boolean;
  confidence: number;
  /** Which codes are quoted so; any, if absent. */
  only?: (code: string) => boolean;
}
const placeNamed = phraseTest(wordsOf('inside-the-piece'));
const namesPlace = (words: string): boolean => placeNamed.test(words);
const aheadOf = (text: string, at: number): string => aheadInSentence(text, at).slice(-longestWay);
/** "It says OF 1904 on the little tab": what is read, and behind it where. */
const readsThere = phrasePattern(wordsOf('reads-there'));
const readsIt = textPattern(`^\\s?:?\\s?${opensQuote}?\\s?$`);
const longestBehind = 40;
/** "Art. 20934 gestempelt": how far ahead of a code such a word stands. */
const longestOther = 20;
/** "We had 1200 printed catalogues" speaks of no place on the piece. */
const isOnPiece = (text: string, start: number, end: number): boolean => {
  const sentence = sentenceAround(text, start, end);
  return namesPlace(text.slice(sentence.start, sentence.end));
};
/** The surest first. */
const ways: readonly Way[] = [
  { by: 'words', words: cue, reach: longestGap, leads: (gap) => between.test(gap), confidence: 0.85 },
  {
    by: 'words',
    words: announcement,
    reach: longestWay,
    leads: (gap) => namesPlace(setOff.exec(gap)?.[1] ?? ''),
    confidence: 0.7,
  },
  {
    by: 'words',
    words: announcement,
    reach: longestWay,
    leads: (gap, text, at) => behindNoun.test(gap) && namesPlace(aheadOf(text, at)),
    confidence: 0.7,
  },
  {
    by: 'place',
    words: onThePiece,
    reach: longestWay,
    leads: (gap) => standsThere.test(gap),
    confidence: 0.6,
    only: (code) => unmistakable(code) || isParted(code),
  },
  {
    by: 'place',
    words: onThePiece,
    reach: longestGap,
    leads: (gap) => numberThere.test(gap),
    confidence: 0.6,
    only: isLongNumber,
  },
  { by: 'words', words: cue, reach: longestGap, leads: (gap) => withIt.test(gap), confidence: 0.7, only: isSpaced },
  {
    by: 'words',
    words: readsThere,
    reach: longestBehind,
    leads: (gap, text, at) => readsIt.test(gap) && isOnPiece(text, at, at + gap.length),
    confidence: 0.6,
    only: unmistakable,
  },
];

/** "「950417」と刻印", ""B 84 112" ist eingeprägt", "has 20817 stamped inside": said behind the code. Common practice, no source. */
const stampedBehind = phrasePattern(wordsOf('stamped-behind'));
const toStamped = textPattern(
  `^["'」』»“”)]{0,2}(?:\\s?(?:と|が|の))?(?:\\s(?:${anyOf(wordsOf('is'))}))?(?:\\s(?:${anyOf(wordsOf('inside-the-piece'))}))?\\s?$`,
);

/** A code as a text has it, and what led to it. */
export interface Quoted {
  start: number;
  code: string;
  confidence: number;
  takenBy: TakenBy;
}

/**
 * Codes with the word for how they were made behind them: what has letters too, and numbers of four digits and more, or set
 * apart, where on the piece they stand.
 */
function stampedCodes(folded: Folded, own: string): Quoted[] {
  const { text } = folded;
  return Array.from(text.matchAll(stampedBehind)).flatMap(({ index, 0: words }): Quoted[] => {
    for (let start = Math.max(0, index - longestBehind); start < index; start += 1) {
      if (!opensCode(own, start) || /[.,]/.test(own[start - 1] ?? '')) continue;
      const code = codeAt(own, start);
      if (!code || !toStamped.test(text.slice(start + code.length, index))) continue;
      if (otherAhead.test(rightAhead(text, start).slice(-longestOther))) return [];
      const isNumber = isLongNumber(code) || isSpaced(code);
      if (!isLettered(code) && !(isNumber && isOnPiece(text, start, index))) return [];
      const lead = sourceRange(folded, index, index + words.length).words;
      return [{ start, code, confidence: 0.7, takenBy: { by: 'words', words: lead } }];
    }
    return [];
  });
}

/** Codes quoted behind words that lead to them ("date code KV0915", "stamped 854"): the first behind each. */
function ledTo(folded: Folded, own: string): Quoted[] {
  const { text } = folded;
  const others = Array.from(text.matchAll(otherCode), ({ index, 0: other }) => [index, index + other.length] as const);
  return ways.flatMap(({ by, words, reach, leads, confidence, only }) =>
    Array.from(text.matchAll(words)).flatMap((match): Quoted[] => {
      const end = match.index + match[0].length;
      if (others.some(([first, last]) => first < end && match.index < last)) return [];
      for (let start = end; start < Math.min(text.length, end + reach); start += 1) {
        if (!opensCode(own, start)) continue;
        const code = leads(text.slice(end, start), text, match.index) ? codeAt(own, start) : null;
        if (!code) continue;
        // "Stamp inside pocket says": all that leads to it.
        const lead = withoutEnd(sourceRange(folded, match.index, start).words, /[\s:="'“„«「『(]/);
        const takenBy = { by, words: lead };
        return only?.(code) === false ? [] : [{ start, code, confidence, takenBy }];
      }
      return [];
    }),
  );
}

/** Codes that a text quotes, in its own case in `own`: behind words that lead to them, and ahead of how they were made. */
export const quotedCodes = (folded: Folded, own: string): Quoted[] => [
  ...ledTo(folded, own),
  ...stampedCodes(folded, own),
];
