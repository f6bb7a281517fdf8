import { joinChanges } from './sent-changes';
import { type AskedQuestion, type LookName, mostEarlierLooks, type OtherNote, type WatchRecord } from './types';

export interface Joined {
  record: WatchRecord;
  /** Whether the own record has become another one. */
  changed: boolean;
  /** Whether another note or status now stands beside the buyer's own. */
  bothNotes: boolean;
}

/**
 * Two records of one listing as one: the own record's id, note and status stay, every look of both is there, and what
 * the other one says otherwise stands beside. Nothing of the buyer's is written over.
 */
export function joinRecords(own: WatchRecord, other: WatchRecord, from: OtherNote['from'], now: string): Joined {
  const looks = joinLooks(own.looks, other.looks);
  const note = own.note === '' ? other.note : own.note;
  // A status that nobody chose gives way to one that somebody did.
  const status = own.status === 'watching' ? other.status : own.status;
  const said: OtherNote = {
    from,
    at: now,
    note: other.note === note ? '' : other.note,
    status: other.status === status || other.status === 'watching' ? null : other.status,
  };
  const known = own.otherNotes.some(sameWords(said));
  const fresh = (said.note !== '' || said.status !== null) && !known ? [said] : [];
  const brought = other.otherNotes.filter((one) => one.note !== note && !own.otherNotes.some(sameWords(one)));
  const otherNotes = [...own.otherNotes, ...brought, ...fresh];
  const asked = joinAsked(own.asked, other.asked);
  // What the buyer settled here stands; what was settled elsewhere only fills a gap.
  const dated = own.dated ?? other.dated;
  const sentChanges = joinChanges(own.sentChanges, other.sentChanges);
  const changed =
    note !== own.note ||
    dated !== own.dated ||
    status !== own.status ||
    otherNotes.length > own.otherNotes.length ||
    JSON.stringify(asked) !== JSON.stringify(own.asked) ||
    JSON.stringify(sentChanges) !== JSON.stringify(own.sentChanges) ||
    looks.some((look) => !own.looks.includes(look));
  if (!changed) return { record: own, changed, bothNotes: false };
  const [savedAt = own.savedAt] = [own.savedAt, other.savedAt].sort();
  const record = {
    ...withLooks(own, looks, other),
    note,
    status,
    otherNotes,
    asked,
    dated,
    sentChanges,
    savedAt,
    changedAt: now,
  };
  return { record, changed, bothNotes: otherNotes.length > own.otherNotes.length };
}

/** More questions are never asked of one piece. */
const mostAsked = 200;

/** Each question once, with the time at which it was asked last. */
export function joinAsked(own: readonly AskedQuestion[], other: readonly AskedQuestion[]): AskedQuestion[] {
  const last = new Map(own.map((one) => [one.id, one]));
  for (const one of other) {
    const known = last.get(one.id);
    if (!known || known.at < one.at) last.set(one.id, one);
  }
  return [...last.values()].slice(-mostAsked);
}

const sameWords =
  (one: OtherNote) =>
  (two: OtherNote): boolean =>
    one.note === two.note && one.status === two.status;

/** What a record says of its latest look. */
type LatestLook = Pick<WatchRecord, 'title' | 'shown' | 'looks'>;

/** A record after one more look at its listing. */
export const addLook = (record: WatchRecord, latest: LatestLook): WatchRecord =>
  withLooks(record, joinLooks(latest.looks, record.looks), latest);

/**
 * The record with these looks, of which the latest is its own or the other's. Most of a record's earlier looks are kept;
 * of too many the first one and the later ones are.
 */
function withLooks(record: WatchRecord, looks: LookName[], other: LatestLook): WatchRecord {
  const [latest, ...before] = looks as [LookName, ...LookName[]];
  const kept =
    before.length > mostEarlierLooks ? [...before.slice(0, mostEarlierLooks - 1), ...before.slice(-1)] : before;
  const { title, shown } = other.looks[0] === latest ? other : record;
  return { ...record, title, shown, looks: [latest, ...kept] };
}

/** Looks of one moment are one look, in the form in which it was judged last; of equal ones the first list's counts. */
function joinLooks(first: LookName[], second: LookName[]): LookName[] {
  const byMoment = new Map<number, LookName>();
  for (const look of [...first, ...second]) {
    const at = Date.parse(look.readAt);
    const present = byMoment.get(at);
    if (!present || Date.parse(present.judgedAt) < Date.parse(look.judgedAt)) byMoment.set(at, look);
  }
  return [...byMoment.values()].sort((a, b) => Date.parse(b.readAt) - Date.parse(a.readAt));
}

/** The record with the words of a window whose note began as `begunWith`; what another window wrote since is kept. */
export function withNote(record: WatchRecord, note: string, begunWith: string, now: string): Joined {
  if (record.note === note) return { record, changed: false, bothNotes: false };
  const bothNotes = record.note !== begunWith && record.note !== '';
  const other: OtherNote = { from: 'window', at: now, note: record.note, status: null };
  const otherNotes = bothNotes ? [...record.otherNotes, other] : record.otherNotes;
  return { record: { ...record, note, otherNotes, changedAt: now }, changed: true, bothNotes };
}

/** The record without one of its other notes; `take` puts its words under the buyer's own and takes its status. */
export function settleOtherNote(record: WatchRecord, settled: OtherNote, take: boolean): WatchRecord {
  const otherNotes = record.otherNotes.filter((one) => !(one.at === settled.at && sameWords(one)(settled)));
  const settledRecord = { ...record, otherNotes };
  if (!take || otherNotes.length === record.otherNotes.length) return settledRecord;
  const note = [record.note, settled.note].filter((words) => words !== '').join('\n\n');
  return { ...settledRecord, note, status: settled.status ?? record.status };
}
