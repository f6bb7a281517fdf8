import { foldWords, sourceRange } from '../../text';
import type { TakenPeriod } from '../types';
import { tellingFinder } from '../words';
import { asFolded } from './as-folded';

/** A period that a text tells, which of its ends are hedged, and whether it was written with its end before its start. */
export interface SaidPeriod {
  used: TakenPeriod;
  about: ('from' | 'to')[];
  backwards: boolean;
  /** How the text tells its start: "since 1996" and "1982" alone are no range. */
  form: 'range' | 'since' | 'until' | 'year';
  start: number;
  end: number;
}

const names = [
  'about',
  'since',
  'until',
  'before',
  'after',
  'to',
  'now',
  'onwards',
  'unknown',
  'launched',
  'ended',
] as const;
type Name = (typeof names)[number];
const finder = tellingFinder(...names);

type Token =
  | { kind: 'year'; year: number; last?: number; start: number; end: number }
  | { kind: 'dash' | Name; behind?: boolean; opens?: boolean; joins?: boolean; start: number; end: number };

const years =
  /(?<![\p{Script=Latin}\d.,#€$£¥/])((?:1[6-9]|20)\d\d)(?![\d\p{Script=Latin}]|[.,]\d)年?|(?<=(?:1[6-9]|20)\d\d\s?[-–—/]\s?)(\d\d)(?![\d.,/])|(?<![\p{L}\d])'(\d\d)(?!\d)/gu;
const decades = /(?<![\p{Script=Latin}\d.,])((?:1[6-9]|20)\d0)(?:'?s|ern?|年代)(?![\p{Script=Latin}\d])/gu;
const dashes = /[-–—〜～~]/g;

/** Two digits after a full year are of its century; after an apostrophe of the last one that has been. */
const fullYear = (short: number, near: number | null): number =>
  near === null ? (short > 30 ? 1900 : 2000) + short : near - (near % 100) + short;

function tokensOf(text: string): Token[] {
  const tokens: Token[] = [];
  let last: number | null = null;
  for (const match of text.matchAll(years)) {
    const year: number = match[1] ? Number(match[1]) : fullYear(Number(match[2] ?? match[3]), match[2] ? last : null);
    last = year;
    tokens.push({ kind: 'year', year, start: match.index, end: match.index + match[0].length });
  }
  for (const match of text.matchAll(decades)) {
    const year = Number(match[1]);
    tokens.push({ kind: 'year', year, last: year + 9, start: match.index, end: match.index + match[0].length });
  }
  if (tokens.length === 0) return [];
  for (const { value: said, foldedStart, foldedEnd } of finder(asFolded(text))) {
    // "1990 on" at the end is from then on; elsewhere the small word may be any.
    const value =
      text.slice(foldedStart, foldedEnd) === 'on' && /^\s?(?:$|[),;])/.test(text.slice(foldedEnd, foldedEnd + 2))
        ? 'onwards'
        : said;
    tokens.push({
      kind: value,
      // "1989 to date" is one word for both.
      joins: value === 'now' && /^to\s/.test(text.slice(foldedStart, foldedEnd)),
      behind: /^(?:から|より前|以前)/.test(text.slice(foldedStart, foldedEnd)),
      start: foldedStart,
      end: foldedEnd,
    });
  }
  const bare = /^[-–—]\s?\d{4}$/.test(text);
  for (const { 0: dash, index } of text.matchAll(dashes)) {
    const opens =
      index === 0 ? bare || /[〜～~]/.test(dash) : /[〜～]/.test(dash) && /[\s、（(：:]/.test(text[index - 1]!);
    tokens.push({ kind: 'dash', opens, start: index, end: index + 1 });
  }
  return tokens.sort((a, b) => a.start - b.start || b.end - a.end);
}

/** What may stand between two words of one period: blanks, brackets, small words such as "the year". */
const between =
  /^[\s(),.:'’[\]]{0,4}(?:(?:the|year|years|in|l'|el|il|le|la|los|den|dem|das|jahr|jahre|baujahr|ano|anno|annee|en|di|de|del|nel|het|jaar|dans|it was|was|been|it|(?<!\p{L})(?:there|here|dort|la|li|alli|ahi|daar|er)(?!\p{L}))[\s.']{0,2}){0,3}$/u;

interface Open {
  period: SaidPeriod;
  /** Whether a later end may still close it. */
  open: boolean;
}

/**
 * The periods of a text in order: ranges, "since", "until", single years; "?" is an end that is not known. A range written
 * backwards is turned and says so.
 */
export function readPeriods(source: string): SaidPeriod[] {
  const folded = foldWords(source);
  const tokens = tokensOf(folded.text);
  const found: Open[] = [];
  let ahead: Token[] = [];
  let reached = 0;
  for (const token of tokens) {
    if (token.start < reached) continue;
    const near =
      token.start - reached <= 40 && between.test(folded.text.slice(reached, Math.min(token.start, reached + 40)));
    if (!near) {
      ahead = [];
      const last = found.at(-1);
      if (last) last.open = false;
    }
    reached = token.end;
    if (token.kind !== 'year') {
      // "From 1960 to 1978 …, about 715": a word further on says nothing of the year.
      if (near || found.at(-1)?.open) behind(token, found.at(-1), ahead);
      ahead.push(token);
      continue;
    }
    takeYear(token, ahead, found);
    ahead = [];
  }
  closeWithDash(found.at(-1), ahead, folded.text);
  return joinHalves(found.map(({ period }) => period)).map((period) => {
    const { start, end } = sourceRange(folded, period.start, period.end);
    return turned({ ...period, start, end });
  });
}

const opensPeriod = (token: Token): boolean => token.kind === 'dash' && token.opens === true;

function takeYear(token: Extract<Token, { kind: 'year' }>, ahead: readonly Token[], found: Open[]): void {
  const says = (kind: Token['kind']) => ahead.some((one) => one.kind === kind);
  const last = found.at(-1);
  const hedged = says('about');
  const text = String(token.year);
  const joins = ['to', 'until', 'dash'] as const;
  if (last?.open && joins.some(says) && !says('since')) {
    last.period.used = [last.period.used[0], String(token.last ?? token.year)];
    if (hedged) last.period.about.push('to');
    Object.assign(last.period, { form: 'range', end: token.end });
    last.open = false;
    return;
  }
  const start = ahead[0]?.start ?? token.start;
  const period: SaidPeriod = { used: [text, text], about: [], backwards: false, form: 'year', start, end: token.end };
  // "～2002年" and, alone in its cell, "–2002": an end whose start is not told.
  const begun = (says('unknown') && joins.some(says)) || (ahead.length === 1 && opensPeriod(ahead[0]!));
  if (
    begun ||
    says('until') ||
    says('ended') ||
    (says('before') && (!says('since') || ahead.at(-1)?.kind === 'before'))
  ) {
    const year = says('before') ? String(token.year - 1) : String(token.last ?? token.year);
    Object.assign(period, { used: [null, year], form: begun ? 'range' : 'until' });
    if (hedged) period.about.push('to');
    found.push({ period, open: false });
    return;
  }
  // "After 2002" leaves the year out.
  if (ahead.at(-1)?.kind === 'after' || (ahead.at(-1)?.kind === 'about' && ahead.at(-2)?.kind === 'after')) {
    const from = String((token.last ?? token.year) + (hedged ? 0 : 1));
    Object.assign(period, { used: [from, null], form: 'since', about: hedged ? ['from'] : [] });
    found.push({ period, open: true });
    return;
  }
  if (token.last !== undefined) Object.assign(period, { used: [text, String(token.last)], form: 'range' });
  if (says('since') || says('launched')) Object.assign(period, { used: [text, null], form: 'since' });
  if (hedged) period.about.push('from');
  found.push({ period, open: true });
}

/** Words behind a year: "onwards", "まで", "頃", "today", "?". */
function behind(token: Token, last: Open | undefined, ahead: readonly Token[]): void {
  if (!last) return;
  const { period } = last;
  const joined = ahead.some(({ kind }) => kind === 'dash' || kind === 'to' || kind === 'until');
  const direct = ahead.length === 0;
  if (direct && token.kind === 'to' && token.behind && period.form === 'year' && last.open) {
    // "1988年から": since, until an end follows.
    Object.assign(period, { used: [period.used[0], null], form: 'since', end: token.end });
  } else if (token.kind === 'now' && last.open && (joined || token.joins || period.form === 'since')) {
    Object.assign(period, { used: [period.used[0], null], form: 'range', end: token.end });
    last.open = false;
  } else if (token.kind === 'unknown' && joined && last.open) {
    Object.assign(period, { used: [period.used[0], null], form: 'range', end: token.end });
    last.open = false;
  } else if (direct && token.kind === 'about') {
    const end = period.form === 'range' || period.form === 'until' ? 'to' : 'from';
    if (!period.about.includes(end)) period.about.push(end);
  } else if (direct && period.form === 'year' && (token.kind === 'onwards' || token.kind === 'launched')) {
    Object.assign(period, { used: [period.used[0], null], form: 'since', end: token.end });
  } else if (direct && period.form === 'year' && token.kind === 'before' && token.behind) {
    // "1975年より前" leaves the year out, "1975年以前" does not.
    const last = token.end - token.start === 3 ? Number(period.used[1]) - 1 : period.used[1];
    Object.assign(period, { used: [null, String(last)], form: 'until', end: token.end });
  } else if (period.form === 'year' && token.kind === 'until' && token.end - token.start === 2) {
    // The Japanese word stands behind its year.
    const about = period.about.length > 0 ? ['to'] : [];
    Object.assign(period, { used: [null, period.used[1]], about, form: 'until', end: token.end });
    last.open = false;
  }
}

/** "1989–" at the end: still. */
function closeWithDash(last: Open | undefined, ahead: readonly Token[], text: string): void {
  const dash = ahead.at(-1);
  if (!last?.open || dash?.kind !== 'dash' || /[^\s)\].,;]/.test(text.slice(dash.end, dash.end + 8))) return;
  Object.assign(last.period, { used: [last.period.used[0], null], form: 'since', end: dash.end });
}

/** "came in 1990 and was made until 2011": a start and an end told apart are one period. */
function joinHalves(periods: readonly SaidPeriod[]): SaidPeriod[] {
  const joined: SaidPeriod[] = [];
  for (const period of periods) {
    const last = joined.at(-1);
    if (last?.form === 'since' && period.form === 'until' && last.used[0]! < period.used[1]!) {
      const about = [...new Set([...last.about, ...period.about])];
      const { start } = last;
      joined[joined.length - 1] = { ...period, used: [last.used[0], period.used[1]], about, form: 'range', start };
    } else joined.push(period);
  }
  return joined;
}

function turned(period: SaidPeriod): SaidPeriod {
  const [from, to] = period.used;
  if (from === null || to === null || from <= to) return period;
  const about = period.about.map((end) => (end === 'from' ? 'to' : 'from'));
  return { ...period, used: [to, from], about, backwards: true };
}

/** The fields of a maker file for what a text tells of time; none when it tells nothing. */
export function usedOf(periods: readonly SaidPeriod[]): {
  used?: TakenPeriod | TakenPeriod[];
  about?: ('from' | 'to')[];
  backwards: boolean;
} {
  if (periods.length === 0) return { backwards: false };
  const about = [...new Set(periods.flatMap((period) => period.about))];
  return {
    used: periods.length === 1 ? periods[0]!.used : periods.map(({ used }) => used),
    ...(about.length > 0 && { about }),
    backwards: periods.some(({ backwards }) => backwards),
  };
}
