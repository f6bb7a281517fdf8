import type { Decoding, Reading } from '../code/types';
import { likelyReadings } from '../evidence';
import { isTooWeakRead, type PhotoRead } from '../photo/read-types';
import { spansMeet } from '../span';
import { type ShownCode, shownFrom } from './code-data';
import { isCopy, whyCopied } from './copies';
import { whyUnread } from './facts';
import { because } from './reasons';
import type { Reason } from './types';

/** A code that counts as read, with its likely readings under the maker's systems, best first. */
export interface SettledCode {
  decoding: Decoding;
  readings: Reading[];
  /** Seen in a photo or typed by the user; a code that the listing only quotes is a statement of the seller. */
  hard: boolean;
  /** Where it was seen, and its text. */
  shown: ShownCode;
  photos: string[];
}

/** The likely readings under systems of `maker`, best first. */
export const readingsOf = (decoding: Decoding, maker: string): Reading[] =>
  likelyReadings(decoding.readings.filter((reading) => reading.system.maker === maker));

const trust = { photo: 0, typed: 1, claim: 2 } as const;

/**
 * The codes that count as read, the same text once (a photo before a typed code before a quoted one), or why there
 * is none: a stamp that is too unclear and photos that were not read are "cannot tell", never "no code".
 */
export function settledCodes(
  facts: {
    decodings: Decoding[];
    photos: PhotoRead[];
    photoNumber: (id: string) => number | null;
  },
  maker: string,
): { codes: SettledCode[] } | { cannotTell: Reason } | { notApplicable: Reason } {
  const accepted = facts.decodings
    .filter((decoding) => decoding.accepted)
    .sort((a, b) => trust[a.from.kind] - trust[b.from.kind]);
  const codes = new Map<string, SettledCode>();
  for (const decoding of accepted) {
    const readings = readingsOf(decoding, maker);
    const text = readings[0]?.text ?? decoding.code;
    if (codes.has(text)) continue;
    codes.set(text, {
      decoding,
      readings,
      hard: decoding.from.kind !== 'claim',
      shown: shownFrom(decoding, text, facts.photoNumber),
      photos: decoding.from.kind === 'photo' ? [decoding.from.photoId] : [],
    });
  }
  if (codes.size > 0) return { codes: [...codes.values()] };
  const unclear = facts.decodings[0];
  if (unclear) return { cannotTell: because('code-unclear', { photo: numberOf(unclear, facts.photoNumber) }) };
  if (!allReadClearly(facts.photos)) return { cannotTell: whyNotRead(facts.photos) };
  return { notApplicable: because('no-code', {}) };
}

/**
 * The readings that a date may be taken from: all, or none where no system was in use at the date that it gives. That
 * such a code cannot be is a finding of its own, and what it would agree with is no agreement.
 */
export const datingReadings = ({ readings }: Pick<SettledCode, 'readings'>): Reading[] =>
  readings.some(({ span, systemUsed }) => span === null || spansMeet(span, systemUsed)) ? readings : [];

const numberOf = ({ from }: Decoding, number: (photoId: string) => number | null): number | null =>
  from.kind === 'photo' ? number(from.photoId) : null;

/** Whether every photo was read as it is and was sharp enough to show a stamp if there were one. */
export const allReadClearly = (photos: PhotoRead[]): boolean =>
  photos.length > 0 && photos.every((photo) => photo.state === 'read' && !isTooWeakRead(photo) && !isCopy(photo));

/** Why the photos show no stamp for certain: not all were read, or not sharply enough. */
export function whyNotRead(photos: PhotoRead[]): Reason {
  if (photos.length === 0 || photos.some((photo) => photo.state === 'unread')) return whyUnread(photos);
  const copied = whyCopied(photos);
  if (copied) return copied;
  const weak = photos.filter(isTooWeakRead).length;
  return because('photos-too-weak', { weak, of: photos.length });
}
