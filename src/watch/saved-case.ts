import {
  buildCase,
  type Case,
  type CaseInput,
  type Correction,
  correctionSchema,
  findingsOf,
  headOf,
  previousOf,
  sameData,
} from '../case';
import { type Listing, pageToldSchema } from '../listing/types';
import type { MakerFile } from '../maker/types';
import { fail, type Problem, type Result, succeed } from '../problem';
import { foundOf, lookOf, openLook, storeFiles, storeLook } from './look';
import type { Packing } from './ports';
import type { Found, KeptFile, KeptPicture, Look, LookName, Parts, WatchRecord } from './types';

/** One look with its content, or what keeps it from being read; the record stands without it. */
export type SavedLook = Pick<LookName, 'readAt' | 'judgedAt' | 'corrections'> &
  (
    | {
        state: 'readable';
        look: Look;
        pictures: KeptPicture[];
        /** Photos that are kept whole, each with the name of its file. */
        files: LookName['files'];
        /** What has become of the maker file by which it was judged; `unknown` where that was not written down. */
        makerFile: 'same' | 'changed' | 'gone' | 'unknown';
      }
    | { state: 'newer' | 'damaged'; problem: Problem }
  );

/** A record with its looks, the latest first, and the maker files of today. */
export interface SavedCase {
  record: WatchRecord;
  looks: SavedLook[];
  makers: readonly MakerFile[];
}

/**
 * A look's case by the rules and maker files of today; null for a look that cannot be read. It is judged as of the moment
 * at which it was judged first, so that time alone changes nothing.
 */
export function caseOf(saved: SavedCase, at = 0): Case | null {
  const input = caseInputOf(saved, at);
  return input && buildCase(input);
}

/** What a look's case is judged from; changes are told from the look before it. */
export function caseInputOf({ looks, makers }: SavedCase, at = 0): CaseInput | null {
  const saved = looks[at];
  if (saved?.state !== 'readable') return null;
  const before = looks.slice(at + 1).find((one) => one.state === 'readable');
  const previous = before && previousOf(listingOf(before.look), makers, before.look.replies);
  const { photos, replies, sent, judged } = saved.look;
  return {
    listing: listingOf(saved.look),
    photos,
    replies,
    sent,
    corrections: knownCorrections(saved),
    makers,
    now: judged.at,
    previous,
  };
}

/** What a look says of the page; why it was taken for one of its kind is left out where today's words do not know it. */
export function listingOf({ listing: { page, ...listing } }: Look): Listing {
  const told = pageToldSchema.safeParse(page);
  return told.success ? { ...listing, page: told.data } : listing;
}

/** Of a statement whose kind has gone nothing can be set right any more; the record keeps what the buyer said of it. */
export const knownCorrections = ({ corrections }: Pick<LookName, 'corrections'>): Correction[] =>
  corrections.flatMap((one) => correctionSchema.safeParse(one).data ?? []);

/** What was found when a look was judged and is not found today, and the other way round. */
export interface ThenAndNow {
  then: Found[];
  now: Found[];
}

export function compareFound({ judged: { found } }: Look, kase: Case): ThenAndNow {
  const now = findingsOf(kase).map(foundOf);
  const then: Found[] = [];
  for (const one of found) {
    const at = now.findIndex((other) => isSame(one, other));
    if (at < 0) then.push(one);
    else now.splice(at, 1);
  }
  return { then, now };
}

/** Sentences that older builds kept in place of data cannot be compared with data: the rule and the kind decide there. */
function isSame(one: Found, other: Found): boolean {
  if (one.check !== other.check || one.kind !== other.kind) return false;
  return 'written' in one.data !== 'written' in other.data || sameData(one.data, other.data);
}

const titleOf = ({ listing }: Case): string => (listing.title[0]?.value || listing.url).slice(0, 500);

/** What a record says of a case that is saved, with the look and pictures that go with it. */
export async function latestLookOf(
  kase: Case,
  kept: readonly KeptPicture[],
  judges: { rules: string; makers: readonly MakerFile[] },
  packing: Packing,
  whole: readonly KeptFile[] = [],
): Promise<Result<{ latest: Pick<WatchRecord, 'title' | 'shown' | 'looks'>; parts: Parts }>> {
  const look = await lookOf(kase, judges, packing);
  const opened = openLook(look);
  if (opened.state !== 'readable') return fail({ ...opened.problem, code: 'record-refused' });
  const { hash, pictures, parts } = await storeLook(look, kept, packing);
  const { files, stored } = await storeFiles(whole, packing);
  parts.pictures.push(...stored);
  const { listing, corrections } = kase;
  const shown: WatchRecord['shown'] = {
    address: listing.url,
    price: listing.price[0]?.value ?? null,
    face: pictures.find(({ lineId }) => lineId === null)?.picture ?? null,
    head: firstOf(headOf(kase)),
  };
  const name: LookName = { look: hash, readAt: listing.readAt, judgedAt: look.judged.at, corrections, pictures, files };
  return succeed({ latest: { title: titleOf(kase), shown, looks: [name] }, parts });
}

/** What speaks against a piece comes first; of a case that holds nothing, what was not looked at. */
function firstOf({ against, open, aside, notLookedAt }: ReturnType<typeof headOf>): WatchRecord['shown']['head'] {
  const isSilent = against.length === 0 && open.length === 0;
  return {
    aside,
    against: against.slice(0, 1).map(foundOf),
    open: against.length === 0 ? open.slice(0, 1).map(foundOf) : [],
    notLookedAt: isSilent
      ? { ...notLookedAt, reasons: notLookedAt.reasons.slice(0, 1) }
      : { photos: [], failed: [], withoutFile: null, reasons: [] },
  };
}
