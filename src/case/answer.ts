import { isCopy, photoNumber } from '../check';
import type { Claim } from '../claim/types';
import type { Decoding, Reading } from '../code/types';
import { fitsClaims } from '../evidence';
import type { Span } from '../span';
import { isOnlyShown } from './decodings';
import { judgingClaims } from './lot';
import type { Case } from './types';

/** Where a code was seen. `number` is the photo's place on the page, from 1; null for one that the page no longer lists. */
export type SeenIn = { kind: 'photo'; number: number | null; copy: boolean } | { kind: 'listing' } | { kind: 'typed' };

/** A reading by a code's form alone, and whether it fits the dates that the listing states; null where nobody can tell. */
export interface FormReading {
  reading: Reading;
  fits: boolean | null;
}

/** What the stamp says, as far as it can be told: the first thing that a buyer wants to know. */
export type StampAnswer =
  /** It reads under a maker's codes. */
  | { kind: 'reads'; seenIn: SeenIn; code: string; reading: Reading; decoding: Decoding }
  /** Two photos show different codes. */
  | { kind: 'several'; codes: string[]; decoding: Decoding }
  /** The characters are read and no maker's file explains them; its form may allow readings. */
  | { kind: 'unexplained'; seenIn: SeenIn; code: string; forms: FormReading[]; decoding: Decoding }
  /** A stamp is seen and not read for certain. */
  | { kind: 'unsure'; seenIn: SeenIn; texts: string[]; decoding: Decoding }
  /** No stamp in the photos that were read. */
  | { kind: 'none'; read: number; unread: number }
  /** None of the photos could be read, or the page has none. */
  | { kind: 'unopened'; photos: number };

/** The answer, and what the listing says of date and place beside it; the reader draws the line between the two. */
export interface CaseAnswer {
  stamp: StampAnswer;
  said: {
    dates: Span[];
    /** Where only a purchase is dated: when, and the days up to it. */
    bought: Span[];
    boughtBy: Span[];
    places: string[];
  };
}

/**
 * What stands first in a case: what the stamp says, and what the listing says. What was typed by hand goes before what a
 * photo shows, and that before what the listing quotes; a code that reads goes before one that does not.
 */
export function answerOf(kase: Case): CaseAnswer {
  return { stamp: stampAnswer(kase), said: saidOf(judgingClaims(kase)) };
}

function stampAnswer(kase: Case): StampAnswer {
  const read = kase.decodings.filter(({ accepted }) => accepted).sort((a, b) => rankOf(a) - rankOf(b));
  const [first] = read;
  if (first) {
    const shown = [...new Set(read.filter(({ from }) => from.kind === 'photo').map(textOf))];
    if (first.from.kind === 'photo' && shown.length > 1) return { kind: 'several', codes: shown, decoding: first };
    const [reading] = first.readings;
    const seenIn = seenInOf(kase, first);
    if (reading && reading.system.maker !== null)
      return { kind: 'reads', seenIn, code: reading.text, reading, decoding: first };
    return {
      kind: 'unexplained',
      seenIn,
      code: textOf(first),
      forms: formsOf(first, judgingClaims(kase)),
      decoding: first,
    };
  }
  const ofPhotos = kase.decodings.filter(({ from }) => from.kind === 'photo');
  const unsure = ofPhotos.find((one) => !isOnlyShown(one));
  if (unsure) {
    const texts = [...new Set([...unsure.readings.map(({ text }) => text), unsure.code])].filter(Boolean);
    return { kind: 'unsure', seenIn: seenInOf(kase, unsure), texts: texts.slice(0, 2), decoding: unsure };
  }
  const opened = kase.photos.filter(({ state }) => state === 'read').length;
  const photos = kase.listing.photos.length;
  return opened === 0 ? { kind: 'unopened', photos } : { kind: 'none', read: opened, unread: photos - opened };
}

const textOf = ({ readings, code }: Decoding): string => readings[0]?.text ?? code;

const sourceRank = { typed: 0, photo: 1, claim: 2 } as const;
const rankOf = ({ from, readings }: Decoding): number => sourceRank[from.kind] + (readings.length > 0 ? 0 : 3);

function seenInOf({ listing, photos }: Case, { from }: Decoding): SeenIn {
  if (from.kind === 'claim') return { kind: 'listing' };
  if (from.kind === 'typed') return { kind: 'typed' };
  const photo = photos.find(({ photoId }) => photoId === from.photoId);
  return { kind: 'photo', number: photoNumber(listing, from.photoId), copy: photo !== undefined && isCopy(photo) };
}

/** Each way to read a code by its form, once by what it says; the likeliest first. */
function formsOf({ readings }: Decoding, claims: readonly Claim[]): FormReading[] {
  const seen = new Set<string>();
  return readings.flatMap((reading) => {
    const { span, places } = reading;
    const says = JSON.stringify([span, places]);
    if (seen.has(says)) return [];
    seen.add(says);
    return [{ reading, fits: fitsClaims(span, claims) }];
  });
}

const keyOf = ({ from, to, about }: Span): string => `${from} ${to} ${about}`;

function saidOf(claims: readonly Claim[]): CaseAnswer['said'] {
  const dates = new Map<string, Span>();
  const bought = new Map<string, Span>();
  const places = new Set<string>();
  for (const claim of claims) {
    if (claim.kind === 'made') dates.set(keyOf(claim.span), claim.span);
    if (claim.kind === 'bought') bought.set(keyOf(claim.span), claim.span);
    if (claim.kind === 'origin') places.add(claim.place);
  }
  const onlyBought = dates.size > 0 ? [] : [...bought.values()];
  const ends = new Set(onlyBought.flatMap(({ to }) => to ?? []));
  return {
    dates: [...dates.values()],
    bought: onlyBought,
    boughtBy: [...ends].map((to): Span => ({ from: null, to, precision: 'range' })),
    places: [...places],
  };
}
