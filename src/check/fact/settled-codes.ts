import type { Decoding, Reading } from '../../code/types';
import { isInOwnTime, readingsThatCount } from '../../evidence';
import { type ShownCode, shownFrom } from '../code-data';
import { photoNumberer } from '../photo-places';
import { because } from '../reasons';
import { clearPhotos } from './clear-photos';
import { defineFact } from './define';

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

/** The readings that count under systems of `maker`, best first. */
const readingsOf = (decoding: Decoding, maker: string): Reading[] =>
  readingsThatCount(decoding, maker).filter((reading) => reading.system.maker === maker);

const trust = { photo: 0, typed: 1, claim: 2 } as const;

/**
 * The codes that count as read, the same text once (a photo before a typed code before a quoted one), or why there
 * is none: a stamp that is too unclear and photos that were not read are "cannot tell", never "no code".
 */
export const settledCodes = defineFact<SettledCode[]>(({ maker, decodings, listing }, ask) => {
  if (!maker) return { cannotTell: because('no-maker-file', {}) };
  const number = photoNumberer(listing);
  const accepted = decodings
    .filter((decoding) => decoding.accepted)
    .sort((a, b) => trust[a.from.kind] - trust[b.from.kind]);
  const codes = new Map<string, SettledCode>();
  for (const decoding of accepted) {
    const readings = readingsOf(decoding, maker.maker);
    const text = readings[0]?.text ?? decoding.code;
    if (codes.has(text)) continue;
    codes.set(text, {
      decoding,
      readings,
      hard: decoding.from.kind !== 'claim',
      shown: shownFrom(decoding, text, number),
      photos: decoding.from.kind === 'photo' ? [decoding.from.photoId] : [],
    });
  }
  if (codes.size > 0) return { is: [...codes.values()] };
  const from = decodings[0]?.from;
  if (from)
    return { cannotTell: because('code-unclear', { photo: from.kind === 'photo' ? number(from.photoId) : null }) };
  const clear = ask(clearPhotos);
  return 'is' in clear ? { notApplicable: because('no-code', {}) } : clear;
});

/**
 * The readings that a date may be taken from: all, or none where no system was in use at the date that it gives. That
 * such a code cannot be is a finding of its own, and what it would agree with is no agreement.
 */
export const datingReadings = ({ readings }: Pick<SettledCode, 'readings'>): Reading[] =>
  readings.some(isInOwnTime) ? readings : [];
