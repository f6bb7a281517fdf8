import { foldWords, sourceRange } from '../../text';
import type { TakenPeriod } from '../types';
import { wholeWords } from '../words';
import { isAnd, opensPeriod, type Token, tokensOf } from './period-words';
import { boundsOf, type YearToken } from './year-words';

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

/** What may stand between two words of one period: blanks, brackets, small words such as "the year". */
const between =
  /^[\s(),.:'’[\]]{0,4}(?:(?:the|year|years|in|l'|el|il|le|la|los|den|dem|das|jahr|jahre|baujahr|end|close|closure|fin|cierre|chiusura|fermeture|ende|einde|sluiting|schliessung|ano|anno|annee|en|di|de|del|nel|het|jaar|dans|it was|was|been|it|(?<!\p{L})(?:there|here|dort|la|li|alli|ahi|daar|er|wurde|worden|werd)(?!\p{L}))[\s.']{0,2}){0,3}に?$/u;

/** "Week 30 van 1981": a year right behind its week dates one code. */
const ofWeek = new RegExp(`(?<!\\p{L})(?:${[...wholeWords('week')].join('|')})\\s?\\d{1,2}[\\s,]{1,2}$`, 'u');

interface Open {
  period: SaidPeriod;
  /** Whether a later end may still close it. */
  open: boolean;
  /** Whether "between" stands before it, and whether it is a decade: then "and" goes on to its end. */
  between?: boolean;
  decade?: boolean;
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
  for (const told of tokens) {
    if (told.start < reached && (told.kind !== 'year' || told.end <= reached)) continue;
    // "Until the end of 1976": the words before a year may reach into those of its own.
    const token = told.start < reached ? { ...told, start: reached } : told;
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
  const told = found
    .map(({ period }) => period)
    .filter(({ start }) => !ofWeek.test(folded.text.slice(Math.max(0, start - 16), start)));
  return joinHalves(told).map((period) => {
    const { start, end } = sourceRange(folded, period.start, period.end);
    // "With A (until 1986)": a capital before a bracket is a code, and no "to".
    const code = /^\p{Lu}\s?(?=\()/u.exec(source.slice(start, start + 3))?.[0].length ?? 0;
    return turned({ ...period, start: start + code, end });
  });
}

function takeYear(token: YearToken, ahead: readonly Token[], found: Open[]): void {
  // "Ours dates from May 1979" is no beginning.
  const says = (kind: Token['kind']) =>
    !(kind === 'launched' && token.inMonth) && ahead.some((one) => one.kind === kind);
  const last = found.at(-1);
  const [first, final] = boundsOf(token);
  const hedged = says('about');
  const [hedgedFrom, hedgedTo] = [
    hedged || token.part !== undefined,
    hedged || token.part === 'start' || token.part === 'mid',
  ];
  const text = String(first);
  const joins = ['to', 'until', 'dash'] as const;
  const onlyAnd = ahead.every((one) => !(joins as readonly string[]).includes(one.kind) || isAnd(one));
  const next = last !== undefined && Number(last.period.used[1]) + 1 === token.year;
  const joined = last?.between || !onlyAnd || next || (last?.decade && token.last !== undefined);
  if (last?.open && joins.some(says) && joined && !says('since')) {
    last.period.used = [last.period.used[0], String(final)];
    if (hedgedTo) last.period.about.push('to');
    Object.assign(last.period, { form: 'range', end: token.end });
    last.open = false;
    return;
  }
  const start = ahead.find((one) => !isAnd(one))?.start ?? token.start;
  const period: SaidPeriod = { used: [text, text], about: [], backwards: false, form: 'year', start, end: token.end };
  // "～2002年" and, alone in its cell, "–2002": an end whose start is not told.
  const begun = (says('unknown') && joins.some(says)) || (ahead.length === 1 && opensPeriod(ahead[0]!));
  if (
    begun ||
    says('until') ||
    says('ended') ||
    (says('before') && (!says('since') || ahead.at(-1)?.kind === 'before'))
  ) {
    const year = says('before') ? String(first - 1) : String(final);
    Object.assign(period, { used: [null, year], form: begun ? 'range' : 'until' });
    if (hedgedTo) period.about.push('to');
    found.push({ period, open: false });
    return;
  }
  // "After 2002" leaves the year out.
  if (ahead.at(-1)?.kind === 'after' || (ahead.at(-1)?.kind === 'about' && ahead.at(-2)?.kind === 'after')) {
    const from = String(final + (hedged ? 0 : 1));
    Object.assign(period, { used: [from, null], form: 'since', about: hedged ? ['from'] : [] });
    found.push({ period, open: true });
    return;
  }
  if (token.last !== undefined) Object.assign(period, { used: [text, String(final)], form: 'range' });
  // "Only in 1958" is all of its time.
  if (says('only-then') && token.last === undefined) period.form = 'range';
  if (says('since') || says('launched')) Object.assign(period, { used: [text, null], form: 'since' });
  if (hedgedFrom) period.about.push('from');
  found.push({ period, open: true, between: says('between'), decade: token.last !== undefined });
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
  } else if (direct && token.kind === 'ended' && period.form === 'year') {
    // "1993 geschlossen", "1993年に閉鎖".
    Object.assign(period, { used: [null, period.used[1]], form: 'until', end: token.end });
    last.open = false;
  } else if (direct && token.kind === 'onwards' && period.form === 'since') {
    period.end = token.end;
  } else if (direct && token.kind === 'only-then' && period.form === 'year') {
    Object.assign(period, { form: 'range', end: token.end });
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

/** The fields of a maker file for a time, and whether it was written with its end before its start. */
export interface Used {
  used?: TakenPeriod | TakenPeriod[];
  about?: ('from' | 'to')[];
  backwards: boolean;
}

/** What a text tells of time; no fields when it tells nothing. */
export function usedOf(periods: readonly SaidPeriod[]): Used {
  if (periods.length === 0) return { backwards: false };
  const about = [...new Set(periods.flatMap((period) => period.about))];
  return {
    used: periods.length === 1 ? periods[0]!.used : periods.map(({ used }) => used),
    ...(about.length > 0 && { about }),
    backwards: periods.some(({ backwards }) => backwards),
  };
}
