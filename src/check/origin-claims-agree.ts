import { placeName, placesAgree } from '../place';
import { practice } from './frame';
import { commonAsks, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const originClaimsAgree = defineWritten({
  id: 'origin-claims-agree',
  family: 'place',
  title: 'The listing names one country of making',
  failureTitle: 'The listing names more than one country of making',
  kinds: ['doubt'],
  basis: 'A piece is made in one country.',
  innocent: 'One may be the country of the house, of the leather or of the shop.',
  settles: 'A photo of the country wording on the piece itself.',
  source: practice,
  needs: { claims: ['origin'] },
  run({ claims: { origin } }) {
    if (origin.length < 2) return { notApplicable: 'the listing names fewer than two countries of making' };
    const first = origin[0];
    const other = first && origin.find(({ place }) => !placesAgree(first.place, place));
    if (!first || !other) return [];
    const statement = `The listing says ${quote(first.words)} (${placeName(first.place)}) and also ${quote(other.words)} (${placeName(other.place)}).`;
    const speech: WrittenSpeech = { kind: 'doubt', statement, claims: [first.id, other.id], asks: [commonAsks.origin] };
    return [speech];
  },
});
