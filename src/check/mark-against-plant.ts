import { evidenceId } from '../evidence';
import { placeName, placesAgree } from '../place';
import { settledCodes } from './codes';
import { makerFileSource } from './frame';
import { markWords, placedMarks } from './marks';
import { commonAsks, listWords, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const markAgainstPlant = defineWritten({
  id: 'mark-against-plant',
  family: 'place',
  title: "Wording on the piece names the plant's country",
  failureTitle: "Wording on the piece names another country than the plant's",
  kinds: ['doubt', 'agreement'],
  basis: 'The country wording and the plant letters of one piece name the same country.',
  innocent: 'The wording may be that of a part, and some makers cut and sew in different countries.',
  settles: 'A photo of the country wording and the stamp together.',
  source: makerFileSource,
  needs: { marks: true, maker: ['plants'], decodings: true, photos: 'any' },
  run(facts) {
    const placed = placedMarks(facts.marks).filter(({ foundIn }) => foundIn === 'photo');
    if (placed.length === 0) return { notApplicable: 'no photo shows a mark that names a place' };
    const settled = settledCodes(facts, facts.maker.name);
    if (!('codes' in settled)) return settled;
    return settled.codes.flatMap(({ decoding, readings, words, photos }) => {
      const places = [...new Set(readings.flatMap((reading) => reading.places))];
      if (places.length === 0) return [];
      return placed.map((mark): WrittenSpeech => {
        const same = mark.places.some((one) => places.some((other) => placesAgree(one, other)));
        const shown = `${markWords(mark, facts.photoWords)}: ${listWords(mark.places.map(placeName))}`;
        return {
          kind: same ? 'agreement' : 'doubt',
          key: `${decoding.id}/${mark.id}`,
          statement: `${sentence(words)}: ${listWords(places.map(placeName))}${same ? ', and' : ', but'} ${shown}.`,
          photos: [...photos, ...(mark.photoId ? [mark.photoId] : [])],
          evidence: [evidenceId.reading(decoding.id), evidenceId.mark(mark.id)],
          source: mark.source,
          asks: [commonAsks.origin],
        };
      });
    });
  },
});
