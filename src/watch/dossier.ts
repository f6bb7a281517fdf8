import {
  type Case,
  isOfCorrection,
  type MarkOnPhoto,
  marksOnPhoto,
  ofPage,
  type SentPhoto,
  type WeighedFinding,
  weighedFindings,
} from '../case';
import { isCopy, photoNumber, type Reason } from '../check';
import type { Decoding } from '../code/types';
import { isTooWeakRead } from '../photo/read-types';
import { type Problem, within } from '../problem';
import type { Question } from '../question';
import { pictureOfPhoto } from './look';
import type { KeptPicture, OtherNote, WatchRecord, WatchStatus } from './types';
import { webLink } from './web-link';

/** A finding under its number, by which the questions of the same document name it. */
export type NumberedFinding = WeighedFinding & { number: number };
export type DossierKind = NumberedFinding['finding']['kind'];

/** One code of the case: everywhere it was seen, with the pictures that were kept of it. Photos count from 1. */
export interface DossierStamp {
  decoding: Decoding;
  seenIn: ({ kind: 'photo'; photo: number } | { kind: 'listing' } | { kind: 'typed' })[];
  pictures: { photo: number; picture: string }[];
}

/** A photo that the buyer measured on: its kept picture, or null, and its marks. Photos count from 1. */
export interface MeasuredPhoto {
  photo: number;
  picture: string | null;
  marks: MarkOnPhoto[];
}

/** A photo that came another way than by the page, with its kept picture, or null. Photos count from 1. */
export interface DossierSent {
  sent: SentPhoto;
  photo: number;
  picture: string | null;
}

/** What was not read, or too weak to say anything. Photos count from 1. */
export interface NotLookedAt {
  unread: { photos: number[]; problem: Problem }[];
  /** Offered by the page, and never opened. */
  neverOpened: number[];
  tooWeak: number[];
  /** Read from copies on the page: their size and sharpness were not judged. */
  copied: number[];
  problems: Problem[];
  checks: { check: string; why: Reason }[];
  /** Checks that broke, with what broke them. */
  failed: { check: string; why: string }[];
}

/** Everything that one saved case has to say, in the order in which a reader of the printed document needs it. */
export interface Dossier {
  id: string;
  title: string;
  address: string;
  /** The address where it may be followed. */
  link: string | null;
  /** Data address of the first photo, when it was kept. */
  face: string | null;
  seller: string | null;
  photoCount: number;
  /** ISO dates and times. `lookedBefore` is the look that the present one is compared with. */
  readAt: string;
  judgedAt: string;
  savedAt: string;
  changedAt: string;
  lookedBefore: Case['previous'] | null;
  status: WatchStatus;
  note: string;
  /** What is noted elsewhere and not settled yet. */
  otherNotes: OtherNote[];
  /** Every picture that was kept of the look. */
  pictures: readonly KeptPicture[];
  read: DossierStamp[];
  unclear: DossierStamp[];
  findings: { kind: DossierKind; findings: NumberedFinding[] }[];
  questions: { question: Question; settles: number[] }[];
  measured: MeasuredPhoto[];
  sent: DossierSent[];
  notLookedAt: NotLookedAt;
  /** For what stands in the document as the case has it: claims, evidence, marks. */
  kase: Case;
}

const kinds: readonly DossierKind[] = ['contradiction', 'doubt', 'gap', 'agreement'];

/** One look of a record, as it is judged today. */
export interface JudgedLook {
  record: WatchRecord;
  case: Case;
  pictures: readonly KeptPicture[];
}

/** What the dossier of a saved case holds. Pure: it reads nothing that the record and its look do not have. */
export function dossierOf(judged: JudgedLook): Dossier {
  const { record, case: kase, pictures } = judged;
  const { listing } = kase;
  const findings = numbered(kase);
  const stamps = stampsOf(judged);
  return {
    id: record.id,
    title: record.title,
    address: listing.url,
    link: webLink(listing.url),
    face: pictures.find(({ lineId }) => lineId === null)?.picture ?? null,
    seller: listing.seller.name[0]?.value ?? null,
    photoCount: ofPage(listing).photos.length,
    readAt: listing.readAt,
    judgedAt: kase.judgedAt ?? listing.readAt,
    savedAt: record.savedAt,
    changedAt: record.changedAt,
    lookedBefore: kase.previous ?? null,
    status: record.status,
    note: record.note,
    otherNotes: record.otherNotes,
    pictures,
    read: stamps.filter(({ decoding }) => decoding.accepted),
    unclear: stamps.filter(({ decoding }) => !decoding.accepted),
    findings,
    questions: kase.questions.map((question) => ({
      question,
      settles: findings
        .flatMap((group) => group.findings)
        .filter(({ finding }) => question.settles.includes(finding.id))
        .map(({ number }) => number),
    })),
    measured: measuredOn(judged),
    sent: sentTo(judged),
    notLookedAt: notLookedAt(kase),
    kase,
  };
}

/** The photos that the buyer measured on, in their order. */
export function measuredOn({ case: kase, pictures }: Pick<JudgedLook, 'case' | 'pictures'>): MeasuredPhoto[] {
  return kase.listing.photos.flatMap(({ id }, index) => {
    const marks = marksOnPhoto(kase, id);
    const picture = pictureOfPhoto(pictures, id);
    return marks.length > 0 ? [{ photo: index + 1, picture, marks }] : [];
  });
}

/** The photos that came another way than by the page. */
export const sentTo = ({ case: kase, pictures }: Pick<JudgedLook, 'case' | 'pictures'>): DossierSent[] =>
  (kase.sent ?? []).map((sent) => ({
    sent,
    photo: numberOf(kase, sent.id),
    picture: pictureOfPhoto(pictures, sent.id),
  }));

/** Findings by kind, numbered through the document from the first to the last. */
function numbered(kase: Case): Dossier['findings'] {
  const weighed = weighedFindings(kase);
  const inOrder = kinds.flatMap((kind) => weighed.filter(({ finding }) => finding.kind === kind));
  const all = inOrder.map((one, index): NumberedFinding => ({ ...one, number: index + 1 }));
  return kinds
    .map((kind) => ({ kind, findings: all.filter(({ finding }) => finding.kind === kind) }))
    .filter((group) => group.findings.length > 0);
}

/** The same accepted code in two places stands once; what is not certain stands by itself, for it may be two things. */
function stampsOf({ case: kase, pictures }: JudgedLook): DossierStamp[] {
  const stamps = new Map<string, DossierStamp>();
  for (const decoding of kase.decodings) {
    const { id, accepted, from, readings, code } = decoding;
    const key = accepted ? `code ${readings[0]?.text ?? code}` : `unclear ${id}`;
    const stamp: DossierStamp = stamps.get(key) ?? { decoding, seenIn: [], pictures: [] };
    stamps.set(key, stamp);
    if (from.kind !== 'photo') {
      stamp.seenIn.push({ kind: from.kind === 'claim' ? 'listing' : 'typed' });
      continue;
    }
    const photo = numberOf(kase, from.photoId);
    stamp.seenIn.push({ kind: 'photo', photo });
    const kept = pictures.find(({ photoId, lineId }) => photoId === from.photoId && lineId === from.lineId);
    if (kept) stamp.pictures.push({ photo, picture: kept.picture });
  }
  return [...stamps.values()];
}

function notLookedAt(kase: Case): NotLookedAt {
  const unread = new Map<string, { photos: number[]; problem: Problem }>();
  for (const photo of kase.photos) {
    if (photo.state === 'read') continue;
    const same = JSON.stringify(within(photo.problem));
    const group = unread.get(same) ?? { photos: [], problem: photo.problem };
    unread.set(same, group);
    group.photos.push(numberOf(kase, photo.photoId));
  }
  const opened = new Set(kase.photos.map(({ photoId }) => photoId));
  return {
    unread: [...unread.values()],
    neverOpened: kase.listing.photos.flatMap(({ id }, index) => (opened.has(id) ? [] : [index + 1])),
    tooWeak: kase.photos.flatMap((photo) =>
      isTooWeakRead(photo) && !isCopy(photo) ? [numberOf(kase, photo.photoId)] : [],
    ),
    copied: kase.photos.filter(isCopy).map(({ photoId }) => numberOf(kase, photoId)),
    // The case sums up its unread photos in one line; here they stand with their numbers instead.
    problems: kase.skipped.filter((problem) => problem.code !== 'photos-not-read' && !isOfCorrection(problem)),
    checks: kase.outcomes.flatMap((outcome) =>
      outcome.outcome === 'cannot-tell' ? [{ check: outcome.check, why: outcome.why }] : [],
    ),
    failed: kase.outcomes.flatMap((outcome) =>
      outcome.outcome === 'failed' ? [{ check: outcome.check, why: outcome.why }] : [],
    ),
  };
}

const numberOf = ({ listing }: Case, photoId: string): number => photoNumber(listing, photoId) ?? 0;
