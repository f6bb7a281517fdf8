import { anyLanguage, behindDecade, foldWords, namedDecade, namedTens, tenNamed } from '../../text';
import { type TellingTopic, wordsFor } from '../words';
import { namesMonth } from './month';

/** A year as a text writes it, or a decade with its last year; places are those of the folded text. */
export interface YearToken {
  kind: 'year';
  year: number;
  last?: number;
  /** Whether only the beginning, the middle or the end of a decade is meant, and so about when. */
  part?: 'start' | 'mid' | 'end';
  /** Whether its month is told: a piece's date, and no beginning of a model or a workshop. */
  inMonth?: boolean;
  start: number;
  end: number;
}

const years =
  /(?<![\p{Script=Latin}\d.,#€$£¥/])((?:1[6-9]|20)\d\d)(?![\d\p{Script=Latin}]|[.,]\d)年?|(?<=(?:1[6-9]|20)\d\d\s?[-–—/]\s?)(\d\d)(?![\d.,/])|(?<=(?<!\p{L})(?:d|l|dall|all|nell|dell|sull|degli|anni)|(?<![\p{L}\d]))'(\d\d)(?!\d)/gu;
const fullDecades = new RegExp(
  [
    `(?<![\\p{Script=Latin}\\d.,])((?:1[6-9]|20)\\d0)(?:${anyLanguage(behindDecade)})(?![\\p{Script=Latin}\\d])`,
    '(?<!\\p{L})(?:annees|anni|anos|jaren)\\s((?:1[6-9]|20)\\d0)(?!\\d)',
  ].join('|'),
  'gu',
);

const [english, french, german, italian, , dutch, japanese] = namedDecade;
/** A text that tells of a maker says "los setenta" of years alone; a seller's listing counts pieces so as well. */
const decadeForms = [english, french, german, italian, '(?:anos|los) #', dutch, japanese] as const;
const shortDecades = new RegExp(
  [
    "(?<!\\p{L})(?:annees|anni|anos|jaren)\\s'?(?<figures>[2-9]0)(?!\\d)",
    `(?<!\\p{L})(?:${namedTens(decadeForms)})(?:[- ]jahren?)?(?!\\p{L})`,
    `(?<![\\d.,])'?(?<bare>[2-9]0)(?:${anyLanguage(behindDecade)})(?![\\p{Script=Latin}\\d])`,
  ].join('|'),
  'gu',
);

/** Two digits after a full year are of its century; after an apostrophe of the last one that has been. */
const fullYear = (short: number, near: number | null): number =>
  near === null ? (short > 30 ? 1900 : 2000) + short : near - (near % 100) + short;

const oneOf = (topic: TellingTopic): string =>
  wordsFor(topic)
    .map((word) => foldWords(word).text)
    .sort((a, b) => b.length - a.length)
    .join('|');
const leads = ['since', 'until', 'before', 'after', 'ended', 'launched', 'to'] as const;
/** "From 67", "depuis 92", "fermé en 85": two digits right behind a word for a time, and no measure behind them. */
const shortBehind = new RegExp(
  `(?<!\\p{L})(?:${leads.map(oneOf).join('|')})\\s?(?<=[\\s'])([4-9]\\d)(?=\\s?(?:$|[)\\];:]|[.,](?!\\d)|[-–—]\\s?\\d\\d(?!\\d)|(?:${oneOf('to')}|${oneOf('until')})\\s\\d\\d(?!\\d)))`,
  'gu',
);
/** "61–84" in brackets, behind a comma or alone, where no more digits are around it. */
const shortRange = /(?<=^|[(,;:]\s?|\s-\s)([4-9]\d)(\s?[-–—]\s?)(\d\d)(?=\s?(?:$|[),;]|\.(?!\d)))/gu;

/** Years of two digits, told as such by what is around them; of 1940 to 1999, and up to 2039 at the end of a range. */
function shortYearsIn(text: string): { year: number; start: number; end: number }[] {
  const behind = [...text.matchAll(shortBehind)].map(({ 0: all, 1: figures, index }) => ({
    year: 1900 + Number(figures),
    start: index + all.length - 2,
    end: index + all.length,
  }));
  const ranges = [...text.matchAll(shortRange)].flatMap(({ 0: all, 1: first, 2: dash, 3: last, index }) => {
    const to = Number(last) > Number(first) ? 1900 + Number(last) : 2000 + Number(last);
    const isRange = to < 2040 && to !== 1900 + Number(first);
    if (!isRange) return [];
    const second = index + first!.length + dash!.length;
    return [
      { year: 1900 + Number(first), start: index, end: index + 2 },
      { year: to, start: second, end: index + all.length },
    ];
  });
  return [...behind, ...ranges];
}

const [starts, mids, ends] = [oneOf('time-start'), oneOf('time-mid'), oneOf('time-end')];
const small =
  "(?:(?:the|of|in|year|der|des|den|dem|die|jahr(?:e|es)?|d'|de|du|les|l'|di|del|degli|dei|agli|ai|il|el|los|van|het|jaar)[\\s]?(?<=[\\s'])){0,3}";
/** What stands right before a year or a decade and is of it: "early", "mid-", "spring", a month. */
const ahead = new RegExp(
  `(?<![\\p{L}\\d])(?:(?<start>${starts})|(?<mid>${mids})|(?<end>${ends})|${oneOf('season')})[\\s-]{1,2}${small}$`,
  'u',
);
const monthAhead = /(?<!\p{L})(\p{L}{3,10})\.?\s(?:(?:of|de|del|di)\s)?$/u;
const behind = /^の?(?:(?<start>初頭|初め|前半)|(?<mid>半ば|中頃|中盤)|(?<end>末|終わり|後半)|[春夏秋冬])/u;
const farthest = 44;

const partOf = (match: RegExpExecArray | null): YearToken['part'] =>
  (['start', 'mid', 'end'] as const).find((part) => match?.groups?.[part] !== undefined);

/** A year with what is said of it right around: the place grows, and a decade is told by its part. */
function qualified(text: string, token: YearToken): YearToken {
  const from = Math.max(0, token.start - farthest);
  const before = text.slice(from, token.start);
  const said = ahead.exec(before);
  const month = said ? null : monthAhead.exec(before);
  const inJapanese = behind.exec(text.slice(token.end, token.end + 4));
  const isMonth = month !== null && namesMonth(month[1]!);
  const first = said ?? (isMonth ? month : null);
  const part = partOf(said) ?? partOf(inJapanese);
  return {
    ...token,
    ...(first && { start: from + first.index }),
    ...(isMonth && { inMonth: true }),
    ...(inJapanese && { end: token.end + inJapanese[0].length }),
    ...(part && token.last !== undefined && { part }),
  };
}

/** The years and decades of a folded text, in order. */
export function yearsIn(text: string): YearToken[] {
  const tokens: YearToken[] = [];
  const add = (year: number, last: number | undefined, match: RegExpMatchArray) =>
    tokens.push(
      qualified(text, {
        kind: 'year',
        year,
        ...(last !== undefined && { last }),
        start: match.index!,
        end: match.index! + match[0].length,
      }),
    );
  let last: number | null = null;
  for (const match of text.matchAll(years)) {
    last = match[1] ? Number(match[1]) : fullYear(Number(match[2] ?? match[3]), match[2] ? last : null);
    add(last, undefined, match);
  }
  for (const match of text.matchAll(fullDecades)) {
    const year = Number(match[1] ?? match[2]);
    add(year, year + 9, match);
  }
  for (const match of text.matchAll(shortDecades)) {
    const { figures, bare } = match.groups!;
    const year = 1900 + Number(figures ?? bare ?? tenNamed(match)! * 10);
    add(year, year + 9, match);
  }
  for (const { year, start, end } of shortYearsIn(text)) tokens.push({ kind: 'year', year, start, end });
  return tokens;
}

/** The first and the last year that are meant of a decade, or of its part. */
export function boundsOf({ year, last, part }: YearToken): [number, number] {
  if (last === undefined) return [year, year];
  if (part === 'start') return [year, year + 3];
  if (part === 'mid') return [year + 5, year + 5];
  return part === 'end' ? [year + 7, last] : [year, last];
}
