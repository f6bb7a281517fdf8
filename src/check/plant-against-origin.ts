import { evidenceId, isSure } from '../evidence';
import { placeName, placesAgree } from '../place';
import { settledCodes } from './codes';
import { fromMakerFile, makerFileSource } from './frame';
import { commonAsks, listWords, quote, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const plantAgainstOrigin = defineWritten({
  id: 'plant-against-origin',
  family: 'place',
  title: "The plant's country is the claimed country",
  failureTitle: "The plant's country is not the claimed country",
  kinds: ['contradiction', 'doubt', 'agreement'],
  basis: 'The plant letters of a code stand for the country where the piece was made.',
  innocent: 'The seller may name the country of the house or of the shop, not that of the workshop.',
  settles: 'A photo of the country wording on the piece itself.',
  source: makerFileSource,
  needs: { maker: ['plants'], claims: ['origin'], decodings: true, photos: 'any' },
  run(facts) {
    if (facts.claims.origin.length === 0) return { notApplicable: 'the listing names no country of making' };
    const settled = settledCodes(facts, facts.maker.name);
    if (!('codes' in settled)) return settled;
    const placed = settled.codes.filter(({ readings }) => readings.some(({ places }) => places.length > 0));
    if (placed.length === 0) return { notApplicable: 'no code names a place' };
    return placed.flatMap(({ decoding, readings, words, hard, photos }): WrittenSpeech[] => {
      const places = [...new Set(readings.flatMap((reading) => reading.places))];
      // A reading without a place leaves every country possible.
      if (readings.some((reading) => reading.places.length === 0)) return [];
      const agrees = (claim: { place: string }) => places.some((place) => placesAgree(place, claim.place));
      const anyAgrees = facts.claims.origin.some(agrees);
      return facts.claims.origin.map((claim) => {
        const same = agrees(claim);
        // A listing that also names the plant's country contradicts itself before it contradicts the stamp.
        const firm = hard && isSure(claim) && !anyAgrees;
        const plant = readings[0]?.plant?.code;
        const reads = `${sentence(words)}: ${plant ? `plant ${plant}, ` : ''}${listWords(places.map(placeName))}`;
        return {
          kind: same ? 'agreement' : firm ? 'contradiction' : 'doubt',
          key: `${decoding.id}/${claim.id}`,
          statement: `${reads}${same ? ', as the listing says: ' : '. The listing says '}${quote(claim.words)}.`,
          photos,
          claims: [claim.id],
          evidence: [evidenceId.reading(decoding.id)],
          source: fromMakerFile(facts.maker.name, plant ? `plant ${plant}` : 'plants', readings[0]?.plant?.source),
          asks: [commonAsks.origin],
        };
      });
    });
  },
});
