import type { MakerFile } from '../maker/types';
import {
  anyOf,
  dimensionLetters,
  type Folded,
  findItemCodes,
  isAboutAnother,
  phrasePattern,
  phraseTest,
  sentenceAround,
  sourceRange,
  textPattern,
  withoutEnd,
  wordsOf,
} from '../text';
import { asFarAsItFits, codesByLayout, fitsLayout } from './code-by-layout';
import { notPlaced } from './not-placed';
import { type ClaimDraft, type Passage, saidIn } from './passage';
import { isSaidOfThing } from './subject';
import { isCorrected, withoutTakenBack } from './taken-back';
import type { ClaimOf } from './types';
import { hasUnitBehind } from './unit-behind';

/** Words that announce a code. Common practice, no source. */
const cue = phrasePattern(wordsOf('code-cue'));
/** "Colour code", "code postal": no code of the maker's. */
const otherCode = phrasePattern(wordsOf('other-code'));
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
const setOff = /^([^\d.!?;\n]{2,60}?)(?:[:=]\s{0,2}|["'(「『«]\s?)$/u;
/** "In the inner pocket is a number: 8 3 0 4 - 1 7": where it stands is said ahead. */
const behindNoun = /^\s?[:=]?\s?["'(「『«]?\s?$/u;
/** "En la etiqueta interior pone B18-12", "Label binnenin: "DR 23-08"". */
const onThePiece = phrasePattern(wordsOf('inside-the-piece'));
const standsThere = textPattern(
  `^[^.!?;:,\\n\\d]{0,30}(?:(?:${anyOf(wordsOf('reads-there'))})\\s|[:=]\\s?["'(「『«]?|["「『«])\\s?$`,
);
/** "Merkje binnenin: nr. 4479", "in the pocket no. 20817": a number sign, and where it stands. */
const numberThere = /^[:,]?\s?(?:n[or]\.?|n\.?[°º]|№|num\.?)\s?:?\s?["'(「『«]?$/u;
const isLongNumber = (code: string): boolean => code.replace(/\D/g, '').length >= 4;
/** "Un timbro con 7 3 1 4", "Stempel mit "B 8 / 1 7"". */
const withIt = textPattern(`^\\s(?:${anyOf(wordsOf('with'))})\\s?["'(「『«]?$`);
const isSpaced = (code: string): boolean => /^["'(「『«]?[A-Z0-9](?:[ ./-]{1,3}[A-Z0-9]){3,}/.test(code);
/** Without a word for a code nearby, only what can hardly be anything else. */
const unmistakable = (code: string): boolean => /[A-Z]/.test(code) && (code.match(/\d/g) ?? []).length >= 3;
const edition = phraseTest(wordsOf('limited-edition'));
/** "The number says 1995", "gestempelt ist 1995": a year, where no layout explains it. */
const plainYear = /^(?:19[5-9]\d|20[0-4]\d)$/;
/** "Nº 087/200": a piece of so many. */
const ofSoMany = /^(\d{1,4})\s?\/\s?(\d{2,4})$/;
/** "K V 0 9 1 5", "KV 0 9 / 1 5", "14 C 50 M 37", "10 / 27", "K.V. 0 9 1 5", a letter in brackets for one in a frame, or up to four groups. */
const codeShape =
  /(?=\d{1,2} [A-Z]{1,2} \d|[A-Z]{1,2} \d{1,2} [A-Z])[A-Z0-9]{1,2}(?: (?:\d{1,2}|[A-Z]{1,2})(?![.\-/·]?[A-Z0-9])){4,7}|(?:[A-Z]{2,3}(?= \d )|(?:[A-Z]\.){1,3}(?= \d )|[A-Z0-9] [A-Z0-9])(?: (?:(?<=\d )[-./·] (?=\d))?[A-Z0-9]){2,14}(?![.\-/·]?[A-Z0-9])|\d{1,2} \/ \d{2}(?:\d{2})?(?![.\-/·]?[A-Z0-9])|(?:\([A-Z0-9]\)|\[[A-Z0-9]\]|[A-Z0-9])(?:[.\-/·]?[A-Z0-9]){0,15}(?: [A-Z0-9](?:[.\-/·]?[A-Z0-9]){0,7}){0,3}/gy;
const longestGap = 48;
const longestWay = 72;
/** Two codes that begin closer than this are one. */
const leastApart = 12;

/** "W 40 H 31 D 16": letters of sides, each ahead of its number. */
function opensRowOfSides(text: string): boolean {
  const [, one, other] = /^([A-Z]{1,2}) \d{1,2} ([A-Z]{1,2}) \d{1,2}(?!\d)/.exec(text) ?? [];
  const names = [one, other].map((letters) => letters?.toLowerCase() ?? '');
  return one !== other && names.every((letters) => letters in dimensionLetters);
}

const looksLikeCode = (text: string) =>
  (text.match(/\d/g) ?? []).length >= 2 && text.replace(/[^A-Z0-9]/g, '').length >= 3;

/** "NUMERO E3055998 DENTRO LA TASCHINA": where all is written in capitals, a group of letters alone is a word. */
function inCapitals(text: string, start: number): boolean {
  const around = text.slice(Math.max(0, start - 24), start + 48);
  return !/\p{Ll}/u.test(around) && /\p{Lu}{4}/u.test(around);
}
const withoutWords = (groups: string[]): string[] => {
  const word = groups.findIndex((group, at) => group.length > (at > 0 ? 1 : 2) && /^[A-Z]+$/.test(group));
  return word < 0 ? groups : groups.slice(0, word);
};

/** The code at a position, cut at the first word that cannot belong to it. */
function codeAt(text: string, start: number): string | null {
  codeShape.lastIndex = start;
  const match = codeShape.exec(text);
  if (!match || opensRowOfSides(match[0])) return null;
  const words = inCapitals(text, start) ? withoutWords(match[0].split(' ')) : match[0].split(' ');
  while (words.length > 0) {
    const code = withoutEnd(words.join(' '), /[.\-/·]/).trimEnd();
    const end = start + code.length;
    // A code in quotes is closed by one that is no inch.
    const behind = text[start - 1] === '"' && text[end] === '"' ? end + 1 : end;
    if (
      looksLikeCode(code) &&
      !/^[\p{Script=Latin}\p{N}]/u.test(text.slice(behind, behind + 1)) &&
      !hasUnitBehind(text, behind, code)
    )
      return code;
    words.pop();
  }
  return null;
}

/** Whether a code may begin here: with a capital, a digit, or one of these in brackets. */
const opensCode = (text: string, at: number) => {
  opening.lastIndex = at;
  return opening.test(text);
};
const opening = /[A-Z0-9]|\([A-Z0-9]\)[A-Z0-9 ]|\[[A-Z0-9]\][A-Z0-9 ]/y;

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
const namesPlace = (words: string): boolean => words.search(onThePiece) >= 0;
const aheadOf = (text: string, at: number): string =>
  text.slice(Math.max(sentenceAround(text, at, at).start, at - longestWay), at);
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
    only: unmistakable,
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
];

/** "「950417」と刻印", ""B 84 112" ist eingeprägt", "has 20817 stamped inside": said behind the code. Common practice, no source. */
const stampedBehind = phrasePattern(wordsOf('stamped-behind'));
const toStamped = textPattern(
  `^["'」』»“”)]{0,2}(?:\\s?(?:と|が|の))?(?:\\s(?:${anyOf(wordsOf('is'))}))?(?:\\s(?:${anyOf(wordsOf('inside-the-piece'))}))?\\s?$`,
);
const longestBehind = 40;

/** "We had 1200 printed catalogues" speaks of no place on the piece. */
const isOnPiece = (text: string, start: number, end: number): boolean => {
  const sentence = sentenceAround(text, start, end);
  return namesPlace(text.slice(sentence.start, sentence.end));
};
/** Codes with the word for how they were made behind them: numbers of four digits and more, or what has letters too. */
function stampedCodes(folded: Folded, own: string): Quoted[] {
  const { text } = folded;
  return Array.from(text.matchAll(stampedBehind)).flatMap(({ index, 0: words }): Quoted[] => {
    for (let start = Math.max(0, index - longestBehind); start < index; start += 1) {
      if (!opensCode(own, start) || /[\p{Script=Latin}\p{N}.,]/u.test(own[start - 1] ?? '')) continue;
      const code = codeAt(own, start);
      if (!code || !toStamped.test(text.slice(start + code.length, index))) continue;
      if (!unmistakable(code) && !(isLongNumber(code) && isOnPiece(text, start, index))) return [];
      const lead = sourceRange(folded, index, index + words.length).words;
      return [{ start, code, confidence: 0.7, takenBy: { by: 'words', words: lead } }];
    }
    return [];
  });
}

interface Quoted {
  start: number;
  code: string;
  confidence: number;
  takenBy: TakenBy;
}

/** Codes quoted behind words that lead to them ("date code KV0915", "stamped 854"): the first behind each. */
function quoted(folded: Folded, own: string): Quoted[] {
  const { text } = folded;
  const others = Array.from(text.matchAll(otherCode), ({ index, 0: other }) => [index, index + other.length] as const);
  return ways.flatMap(({ by, words, reach, leads, confidence, only }) =>
    Array.from(text.matchAll(words)).flatMap((match): Quoted[] => {
      const end = match.index + match[0].length;
      if (others.some(([first, last]) => first < end && match.index < last)) return [];
      for (let start = end; start < Math.min(text.length, end + reach); start += 1) {
        if (!opensCode(own, start) || /[\p{Script=Latin}\p{N}]/u.test(own[start - 1] ?? '')) continue;
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

/** The folded text with the source's own case; both have the same length. */
function inOwnCase({ at, source, text }: Folded): string {
  // Full-width letters are capitals too.
  const own = (unit: string, index: number) =>
    /[a-z]/.test(unit) ? (source[at?.[index] ?? index] ?? unit).normalize('NFKC') : unit;
  return Array.from({ length: text.length }, (_, index) => own(text[index] as string, index)).join('');
}

/** "Edición limitada de 200 unidades, la mía es la nº 087/200". */
function isOfEdition(text: string, { start, code }: { start: number; code: string }): boolean {
  const [, one, of] = ofSoMany.exec(code) ?? [];
  if (of === undefined || Number(one) > Number(of)) return false;
  const { start: opens, end } = sentenceAround(text, start, start + code.length);
  return edition.test(text.slice(opens, end));
}

const notHouses = ['house', 'maison', 'haus', 'casa', '店', 'お店'];
/** "Number 5512 is the cobbler's", "札の2231は靴修理店の番号": a number that somebody else gave the piece. */
const ofTrade = textPattern(
  `^[^.!?;,\\n]{0,32}?(?:${phrasePattern(wordsOf('is')).source})\\s?(?:\\p{L}{1,6}\\s){0,2}(?:\\p{L}{1,3}')?(?:${phraseTest(wordsOf('shop').filter((word) => !notHouses.includes(word))).source})`,
);
const isOfTrade = (text: string, { start, code }: { start: number; code: string }): boolean =>
  ofTrade.test(text.slice(start + code.length, start + code.length + 64));

/** Codes that the seller quotes, as written. */
export function codeClaims(passages: Passage[], makers: MakerFile[]): ClaimDraft[] {
  return passages.flatMap((from) => {
    const own = inOwnCase(from.folded);
    // "Code: T5 03291 W 28 H 17": where a layout explains the beginning, what follows is no more of it.
    const said = [...quoted(from.folded, own), ...stampedCodes(from.folded, own)].map((one) => ({
      ...one,
      code: asFarAsItFits(one.code, makers),
    }));
    const near = new Set(
      said.flatMap(({ start, code }) => {
        // One that is taken back has the right one right behind it.
        const behind = isCorrected(from.folded.text, start, start + code.length) ? code.length : leastApart;
        return Array.from({ length: leastApart - 1 + behind }, (_, at) => start - leastApart + 1 + at);
      }),
    );
    const shops = findItemCodes(from.text);
    const others = codesByLayout(from.folded.text, own, makers).flatMap(({ maker, ...found }): Quoted[] => {
      const at = from.folded.at?.[found.start] ?? found.start;
      const isOther = near.has(found.start) || shops.some((number) => number.start <= at && at < number.end);
      return isOther ? [] : [{ ...found, takenBy: { by: 'layout', words: maker } }];
    });
    const seen = new Set<number>();
    const inOrder = [...said, ...others].sort((a, b) => a.start - b.start);
    return withoutTakenBack(from.folded.text, inOrder)
      .filter((item) => !seen.has(item.start) && seen.add(item.start))
      .filter((item) => !isAboutAnother(from.folded.text, item.start, item.start + item.code.length))
      .filter((item) => !isOfEdition(from.folded.text, item) && !isOfTrade(from.folded.text, item))
      .filter(({ code }) => !plainYear.test(code) || fitsLayout(code, makers))
      .map((item): ClaimDraft => {
        const end = item.start + item.code.length;
        // "The box has a label with KV0915": whose code that is, is not plain.
        if (isSaidOfThing(from.folded.text, item.start, end, from.title))
          return notPlaced(from, 'code', [item.start, end]);
        const said = saidIn(from, sourceRange(from.folded, item.start, end), item.confidence);
        return { kind: 'code', code: item.code, takenBy: item.takenBy, ...said };
      });
  });
}
