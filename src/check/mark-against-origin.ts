import { evidenceId } from '../evidence';
import { placeName, placesAgree } from '../place';
import { practice } from './frame';
import { markWords, placedMarks } from './marks';
import { commonAsks, listWords, quote, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const markAgainstOrigin = defineWritten({
  id: 'mark-against-origin',
  family: 'place',
  title: 'Wording on the piece names the claimed country',
  failureTitle: 'Wording on the piece names another country',
  kinds: ['doubt', 'agreement'],
  basis: 'A label, stamp or address on a piece names where it, or a part of it, was made.',
  innocent: 'The wording may be that of a part (zip, lining) or of the office of the house.',
  settles: 'A photo of the whole label.',
  source: practice,
  needs: { marks: true, claims: ['origin'] },
  run({ marks, claims, photoWords }) {
    if (claims.origin.length === 0) return { notApplicable: 'the listing names no country of making' };
    const placed = placedMarks(marks).filter(({ foundIn }) => foundIn === 'photo');
    if (placed.length === 0) return { notApplicable: 'no photo shows a mark that names a place' };
    return placed.flatMap((mark) =>
      claims.origin.map((claim): WrittenSpeech => {
        const same = mark.places.some((place) => placesAgree(place, claim.place));
        const shown = `${sentence(markWords(mark, photoWords))}: ${listWords(mark.places.map(placeName))}`;
        return {
          kind: same ? 'agreement' : 'doubt',
          key: `${mark.id}/${claim.id}`,
          statement: `${shown}${same ? ', as the listing says: ' : '. The listing says '}${quote(claim.words)}.`,
          photos: mark.photoId ? [mark.photoId] : [],
          claims: [claim.id],
          evidence: [evidenceId.mark(mark.id)],
          source: mark.source,
          asks: [commonAsks.origin],
        };
      }),
    );
  },
});
