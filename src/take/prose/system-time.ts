import { begunAt, onePeriod, timeBeside } from '../said/one-period';
import type { SaidPeriod } from '../said/period';
import { tellingFinder } from '../words';
import type { SaidSystem } from './said-system';
import type { Told } from './told-sentence';

const introduced = tellingFinder('introduced');
const systemWords = tellingFinder('code', 'system-word', 'time-of-use');
/** "They did it like this from 1968 to 1991." */
const thus = tellingFinder('thus');
const afterwards = tellingFinder('afterwards');

/** "Afterwards it is a running number": the time from the end of the form that was told last. */
export function periodAfter(
  { sentence, periods }: Told,
  ahead: Told | undefined,
  last: SaidSystem | undefined,
): SaidPeriod[] | null {
  const [link] = afterwards(sentence.text);
  if (periods.length > 0 || !link || link.start > 2) return null;
  const [told] = ahead && timeAlone(ahead) ? timeAlone(ahead)! : [];
  const before = told?.used ?? (last && 'used' in last.own ? onePeriod(last.own.used) : undefined);
  const used = timeBeside(before, 'afterwards');
  return used ? [{ used, about: [], backwards: false, form: 'since', start: 0, end: 0 }] : [];
}

/** The sentence behind those of a form that may tell its time: others between may name what its letters stand for. */
export function behindOf(told: readonly Told[], last: number): Told | undefined {
  const next = told[last + 1];
  if (!next || next.periods.length > 0 || next.counts > 0 || next.examples.length > 0 || next.noCode) return next;
  return told[last + 2];
}

/** "The second system ran from 1960 to 1972." before or behind the sentences that tell how it was built. */
export function periodBeside(before: Told | undefined, behind: Told | undefined): SaidPeriod[] {
  return (before && (timeAlone(before) ?? begunIn(before))) ?? (behind && timeAlone(behind)) ?? [];
}

/** "They began to number their bags in 1970.", right before how the numbers are built. */
function begunIn({ periods: [period], counts, examples, noCode, begins }: Told): SaidPeriod[] | null {
  if (!period || !begins || counts > 0 || examples.length > 0 || noCode) return null;
  return [{ ...period, used: [period.used[0], null], form: 'since' }];
}

/** The time that a sentence tells of a form of the code, and nothing else of it: "This was used from 1968 to 1990." */
export function timeAlone({ sentence, periods, counts, examples, noCode, describes }: Told): SaidPeriod[] | null {
  if (counts > 0 || examples.length > 0 || noCode || describes) return null;
  const told = periods.filter(({ form }) => form !== 'year');
  const isThus = told[0]?.form === 'range' && thus(sentence.text).length > 0;
  return told.length === 1 && (isThus || systemWords(sentence.text).length > 0) ? told : null;
}

/** Letters before a year that opens its sentence: "In the year 1970". */
const farthestOpening = 16;

/** The period of a description; "in 1972 a code of four digits appeared" tells its start. */
export function periodOf({ sentence, periods, counts, units }: Told): SaidPeriod[] {
  const own = ownOf(periods);
  if (own.length > 0) return own;
  const start = sinceYear(periods);
  // "1970 four figures came in", "In 1975 a letter was put before it".
  const opens = counts > 0 && units > 0 && start[0] !== undefined && start[0].start <= farthestOpening;
  return start.length > 0 && (opens || introduced(sentence.text).length > 0) ? start : [];
}

/** When a form changed: its own period, or since the one year that its sentence names. */
export function changeOf({ periods }: Told): SaidPeriod[] {
  const own = ownOf(periods);
  return own.length > 0 ? own : sinceYear(periods);
}

/** More times than this in one sentence are of more things than one: which is that of the code stays open. */
const mostTimes = 2;
const ownOf = (periods: readonly SaidPeriod[]): SaidPeriod[] => {
  const told = periods.filter(({ form }) => form !== 'year');
  return told.length > mostTimes ? [] : told.slice(0, 1);
};

/** The one year of a sentence as a start; none where it names several. */
const sinceYear = ([year, ...more]: readonly SaidPeriod[]): SaidPeriod[] =>
  year && more.length === 0 ? [{ ...year, used: [year.used[0], null], form: 'since' }] : [];

/** "In 1973 the month came … This lasted until 1994": a start and an end told beside it are one time; else what is told first. */
export function joinedTime(own: readonly SaidPeriod[], beside: readonly SaidPeriod[]): readonly SaidPeriod[] {
  const [[start, ...more], [end, ...others]] = [own, beside];
  if (!start || !end || more.length > 0 || others.length > 0) return own.length > 0 ? own : beside;
  const isOne = start.form === 'since' && end.form === 'until' && start.used[0]! < end.used[1]!;
  return isOne ? [{ ...start, used: [start.used[0], end.used[1]], form: 'range' }] : own;
}

/** "Then, until 1977, four figures": its time goes on from the one before, or from when codes began. */
export function sinceThen(period: SaidPeriod, { sentence }: Told, last: SaidSystem | undefined): SaidPeriod {
  const [link] = afterwards(sentence.text);
  if (!link || link.start > 2 || !last || !('used' in last.own)) return period;
  const before = onePeriod(last.own.used);
  return begunAt(period, last.own.kind === 'stamped' ? before?.[0] : timeBeside(before, 'afterwards')?.[0]);
}
