import type { Claim } from '../claim/types';
import type { Listing } from '../listing/types';
import { type Observation, type PhotoRead, scaledWhere } from '../photo';
import { type Problem, problem } from '../problem';
import { findMeant, nameWithin } from './correction';
import { type Correction, pieceOfStamp, type SeenByHand } from './correction-types';

/**
 * What became of a correction. `photo-gone`: the listing shows its photo no more. `not-there`: what it corrects is not
 * seen, or not said, any more. `photo-unread`: it waits for its photo.
 */
export type CorrectionOutcome = 'done' | 'photo-gone' | 'photo-unread' | 'not-there';

interface Read {
  listing: Pick<Listing, 'photos'>;
  photos: readonly PhotoRead[];
  /** As found in the listing, before any correction. */
  claims: readonly Claim[];
  corrections: readonly Correction[];
}

export interface Corrected {
  photos: PhotoRead[];
  claims: Claim[];
  outcomes: { correction: Correction; outcome: CorrectionOutcome }[];
}

/** The readings and claims with everything that the buyer set right, and what became of each correction. */
export function applyCorrections({ listing, photos, claims, corrections }: Read): Corrected {
  const corrected: Corrected = { photos: [...photos], claims: [...claims], outcomes: [] };
  for (const correction of corrections) {
    // What is found of the readings and claims, and which piece they are of, is not theirs to correct.
    if (correction.of === 'finding' || correction.of === 'piece') continue;
    const outcome =
      correction.of === 'claim'
        ? correctClaim(corrected, correction)
        : correctPhoto(corrected, correction, listing.photos, photos);
    corrected.outcomes.push({ correction, outcome });
  }
  return corrected;
}

/** A photo's reading with everything that the buyer set right in it. */
export function correctedRead(
  { listing, photos, corrections }: Pick<Read, 'listing' | 'photos' | 'corrections'>,
  photoId: string,
): PhotoRead | undefined {
  const corrected = applyCorrections({ listing, photos, claims: [], corrections });
  return corrected.photos.find((one) => one.photoId === photoId);
}

/** These claims with everything that the buyer set right of them. */
export const correctedClaims = (claims: readonly Claim[], corrections: readonly Correction[]): Claim[] =>
  applyCorrections({ listing: { photos: [] }, photos: [], claims, corrections }).claims;

function correctClaim(
  into: Pick<Corrected, 'claims'>,
  { id, target, to }: Extract<Correction, { of: 'claim' }>,
): CorrectionOutcome {
  if (target === null) {
    if (to) into.claims.push({ ...to, id });
    return 'done';
  }
  if (!into.claims.some((claim) => claim.id === target.id)) return 'not-there';
  into.claims = into.claims.flatMap((claim) => {
    if (claim.id !== target.id) return [claim];
    return to ? [{ ...to, id: claim.id }] : [];
  });
  return 'done';
}

/** The claims as they were found, before these corrections. */
export function uncorrectedClaims(claims: readonly Claim[], corrections: readonly Correction[]): Claim[] {
  const ofClaims = corrections.filter((one) => one.of === 'claim');
  const added = new Set(ofClaims.flatMap(({ id, target }) => (target === null ? [id] : [])));
  const found = ofClaims.flatMap(({ target }) => target ?? []);
  const touched = new Set([...added, ...found.map(({ id }) => id)]);
  return [...claims.filter(({ id }) => !touched.has(id)), ...found];
}

type OfPhoto = Extract<Correction, { of: 'seen' | 'part' | 'mark' }>;

function correctPhoto(
  into: Corrected,
  correction: OfPhoto,
  links: Listing['photos'],
  asRead: readonly PhotoRead[],
): CorrectionOutcome {
  if (correction.photo === null) return 'done';
  const photoId = findMeant(correction.photo, links, asRead);
  if (photoId === null) return mayCome(correction, links, asRead) ? 'photo-unread' : 'photo-gone';
  // How a photo is read is done by whoever reads it; which piece its stamp is on, and what is measured at a mark, change
  // nothing of what is seen.
  if (correction.of !== 'seen' || correction.to?.what === pieceOfStamp) return 'done';
  const at = into.photos.findIndex((photo) => photo.photoId === photoId);
  const photo = into.photos[at];
  if (photo?.state !== 'read') return 'photo-unread';
  const { target, to } = correction;
  const index = target === null ? -1 : photo.observations.findIndex((one) => isTarget(photo, one, target));
  const seen = to && byHand(photo, correction.id, to, photo.observations[index]);
  if (target !== null && index < 0) return 'not-there';
  const observations = [...photo.observations];
  if (target === null) observations.push(...(seen ? [seen] : []));
  else observations.splice(index, 1, ...(seen ? [seen] : []));
  into.photos[at] = { ...photo, observations };
  return 'done';
}

/** Whether the photo may be among those that nobody has seen yet, under a new address. */
function mayCome({ photo }: OfPhoto, links: Listing['photos'], photos: readonly PhotoRead[]): boolean {
  const read = new Set(photos.flatMap(({ state, photoId }) => (state === 'read' ? [photoId] : [])));
  return photo?.hash !== null && links.some(({ id }) => !read.has(id));
}

const isTarget = (
  { photoId }: PhotoRead,
  seen: Observation,
  target: { name: string; what: string; was: Observation['value'] },
): boolean =>
  seen.what === target.what &&
  nameWithin(photoId, seen) === target.name &&
  (seen.value === target.was || seen.by === 'hand');

const byHand = (
  { photoId, width, height }: Extract<PhotoRead, { state: 'read' }>,
  id: string,
  { what, value, unit, where }: SeenByHand,
  was: Observation | undefined,
): Observation => ({
  id: `${photoId}-${id}`,
  what,
  value,
  uncertainty: null,
  unit,
  where: where && scaledWhere(where, width, height),
  by: 'hand',
  // A place that a hand moved leaves what was read there as it is.
  ...(was?.detail !== undefined && was.what === what && was.value === value ? { detail: was.detail } : {}),
});

/** Whether a failure is one of those. */
export const isOfCorrection = ({ code }: Problem): boolean => code.startsWith('correction-');

/** Corrections that could not be made, as failures that say so; what waits for its photo is told with the photo. */
export const unmetCorrections = ({ outcomes }: Pick<Corrected, 'outcomes'>): Problem[] =>
  outcomes.flatMap(({ correction: { id }, outcome }) => {
    if (outcome === 'photo-gone') return [problem('correction-photo-gone', id)];
    if (outcome === 'not-there') return [problem('correction-not-there', id)];
    return [];
  });
