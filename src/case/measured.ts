import type { Listing } from '../listing/types';
import type { PhotoRead } from '../photo';
import { findMeant } from './correction';
import type { Correction } from './correction-types';
import type { CaseObservation } from './measured-types';

/** A mark of the buyer on one of the listing's photos, with its correction. */
export type MarkOnPhoto = Extract<Correction, { of: 'mark' }>;

interface Of {
  listing: Pick<Listing, 'photos'>;
  photos: readonly PhotoRead[];
  corrections: readonly Correction[];
}

/** The buyer's marks on one photo, in the order of their numbers. */
export const marksOnPhoto = ({ listing, photos, corrections }: Of, photoId: string): MarkOnPhoto[] =>
  corrections
    .flatMap((one) => (one.of === 'mark' && findMeant(one.photo, listing.photos, photos) === photoId ? [one] : []))
    .sort((a, b) => a.mark.number - b.mark.number);

/** All that was measured at marks of the buyer, photo by photo; what could not be measured is none of it. */
export const measuredByHand = (of: Of): CaseObservation[] =>
  of.listing.photos.flatMap(({ id: photoId }) =>
    marksOnPhoto(of, photoId).flatMap(({ mark, measured }) =>
      measured.flatMap(({ what, value, uncertainty, unit, where }): CaseObservation[] =>
        value === null
          ? []
          : [
              {
                id: `${photoId}-mark-${mark.number}-${what}`,
                photoId,
                mark: mark.number,
                on: mark.name,
                what,
                value,
                uncertainty,
                unit,
                where,
                by: 'hand',
              },
            ],
      ),
    ),
  );
