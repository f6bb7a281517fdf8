import type * as z from 'zod';

/** What a failure is made with that says it in words: nothing, where the code tells all. */
type None = Record<never, never>;
/** In the words of a program: for a report, not for a reader. */
type Reported = { said: string };
/** Another failure, within this one; `what` in English, where it is an older record's. */
export type Within = { code: string; data?: Record<string, Json>; what?: string };
type Json = z.infer<ReturnType<typeof z.json>>;

/** Why a picture of the page was thrown away, or none was taken. */
export const disturbances = [
  'in-background',
  'other-tab',
  'other-window',
  'other-page',
  'resized',
  'moved',
  'taken-off',
  'gone',
  'no-answer',
  'other-shape',
] as const;
export type Disturbance = (typeof disturbances)[number];

/** Why the page shows a photo otherwise than it is, or not at all. */
export type NotShown = 'not-there' | 'too-small' | 'faded' | 'filtered' | 'turned';

/** What is wrong at one place of a record. */
export type RecordFault = 'missing' | 'wrong-kind' | 'too-large' | 'too-small' | 'not-possible' | 'more';

/** Every failure by its code, and what its sentence is made with. Sentences stand in `words`. */
export interface ProblemData {
  'page-is-picture': None;
  'page-is-pdf': None;
  'page-is-a-list': None;
  'page-is-an-article': None;
  'page-too-large-to-tell': None;
  'no-listing': None;
  'page-is-a-wanted-ad': None;
  'page-empty': None;
  'page-busy': None;
  'page-not-readable': None;
  'page-changing': None;
  'page-still-loading': None;
  'page-cut': { nodesRead: number | null; attributes: number; characters: number };
  'tab-gone': None;
  'right-lapsed': None;
  'which-product': { pieces: number };
  'pick-the-variant': { variants: number };
  'pick-not-found': { field: string };
  'pick-unreadable': { field: string };
  'price-not-in-text': None;
  'price-conflict': { inData: string; seen: string };
  'frame-not-read': None;
  'data-unreadable': None;
  'data-too-long-to-repair': { kilobytes: number };
  /** `levels` is null where it holds too many parts. */
  'data-cut': { levels: number | null };
  'data-stale': None;
  'no-maker-file': { names: string[]; possible: string | null };
  'correction-photo-gone': None;
  'correction-not-there': None;
  'correction-found-otherwise': None;

  'photos-not-read': { unread: number; of: number; reasons: Within[] };
  'photo-not-fetched': None;
  'photo-unknown': None;
  'photo-empty': None;
  'photo-svg': None;
  'photo-not-image': None;
  'photo-truncated': None;
  'photo-damaged': None;
  'photo-foreign-format': { format: 'HEIC' | 'CR3' | 'PDF' | 'TIFF' | 'JPEG XL' | 'JPEG 2000' };
  'photo-no-size': { width: number; height: number };
  'photo-too-small': { width: number; height: number };
  /** `most`: million pixels, pixels of a side. */
  'photo-too-large': { width: number; height: number; most: [pixels: number, side: number] } | { megabytes: number };
  'photo-is-drawing': None;
  'photo-missing': { status: number };
  'photo-unreachable': None;
  'photo-redirected': None;
  /** By itself, or with all of them; null where nobody counted. */
  'photo-late': { seconds: number | null; all?: true };
  'photo-without-address': { photos: number };
  'photo-not-shown': { why: NotShown };
  'photo-covered': None;
  'photo-file-gone': None;
  'photo-reading-failed': Reported;
  'over-budget': { most: number };
  'address-refused': None;
  'host-not-granted': { host: string };
  'capture-disturbed': { why: Disturbance };
  'capture-failed': { why: 'late' | 'no-picture' };

  'no-stamp-engine': None;
  'stamp-engine-failed': Reported;
  'nets-not-loaded': { why: 'card-not-json' | 'card-unfit' | 'not-started'; said: string };
  'reader-failed': Reported;
  'reader-late': { seconds: number };
  'reader-stopped': Reported;
  'measuring-failed': Reported;

  'file-address': None;
  'file-not-secure': None;
  'file-with-password': None;
  'file-not-allowed': None;
  'file-led-on': None;
  'file-too-large': None;
  'file-cut': None;
  'file-late': None;
  'file-offline': None;
  'file-unreachable': None;
  'file-missing': None;
  'file-refused': None;
  'file-answer': { status: number };
  'file-not-text': None;
  'file-is-page': None;
  'file-other-maker': { now: string; before: string };

  'message-refused': { why: 'no-handler' | 'not-from' | 'from-nowhere' | 'malformed'; said: string };
  'no-answer': None;
  'reply-malformed': Reported;
  unforeseen: Reported;

  'watch-list-newer': None;
  'watch-list-closed': None;
  'watch-list-failed': None;
  'disk-full': None;
  'case-not-shown': None;
  /** Of the record or of its look; `differs` from what the list has of it. */
  'record-newer': { version: number | null; differs?: true };
  'record-older': None;
  'record-missing': None;
  'record-none': None;
  'record-not-raised': { to: number };
  'record-damaged': { place: string; fault: RecordFault };
  'record-refused': { place: string; fault: RecordFault } | { reply: true };
  /** The list has it already, and cannot read it there. */
  'record-here-unread': { why: Within };
  'look-missing': None;
  'look-spoilt': None;
  'import-too-large': None;
  'import-cut-off': None;
  'import-not-json': None;
  'import-other-format': None;
  'import-newer': None;
}

export type ProblemCode = keyof ProblemData;
/** What a failure's sentence takes: its data, where it has any. */
export type DataOf<C extends ProblemCode> = None extends ProblemData[C] ? [] : [data: ProblemData[C]];
/** A failure as a place writes it that can load nothing else. */
export type Told = {
  [C in ProblemCode]: { code: C; where: string } & (DataOf<C> extends [infer D] ? { data: D } : { data?: never });
}[ProblemCode];
