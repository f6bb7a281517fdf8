import { evidenceId, roomDays } from '../evidence';
import { placeName } from '../place';
import { spanWords } from '../span';
import { datingReadings, settledCodes } from './codes';
import { daysApart } from './dates';
import { fromMakerFile, makerFileSource } from './frame';
import { commonAsks, listWords, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const plantInUse = defineWritten({
  id: 'plant-in-use',
  family: 'code',
  title: "The plant worked at the code's date",
  failureTitle: "The plant did not work at the code's date",
  kinds: ['contradiction', 'doubt', 'agreement'],
  basis: 'A plant stamps pieces only while it works for the maker.',
  innocent: 'The plant’s first or last year in the maker file may be off, or a character of the code misread.',
  settles: 'A sharper photo of the stamp.',
  source: makerFileSource,
  needs: { maker: ['plants'], decodings: true, photos: 'any' },
  run(facts) {
    const settled = settledCodes(facts, facts.maker.name);
    if (!('codes' in settled)) return settled;
    const codes = settled.codes.map((code) => ({ ...code, readings: datingReadings(code) }));
    const withPlant = codes.filter(({ readings }) => readings.some(({ plant, span }) => plant && span));
    if (withPlant.length === 0) return { notApplicable: 'no code names a plant and a date' };
    return withPlant.flatMap(({ decoding, readings, words, hard, photos }): WrittenSpeech[] => {
      const known = readings.flatMap(({ plant, span }) =>
        plant && span && plant.used.length > 0 ? [{ plant, span }] : [],
      );
      const first = known[0];
      if (!first || known.length < readings.length) return [];
      const apart = Math.min(...known.flatMap(({ plant, span }) => plant.used.map((used) => daysApart(used, span))));
      const source = fromMakerFile(facts.maker.name, `plant ${first.plant.code}`, first.plant.source);
      const used = listWords(first.plant.used.map(spanWords));
      const plant = `plant ${first.plant.code} (${placeName(first.plant.place)})`;
      const key = decoding.id;
      const evidence = [evidenceId.reading(decoding.id), evidenceId.plant(decoding.id)];
      if (apart === 0) {
        const statement = `${sentence(words)}: ${plant} worked then (${used}).`;
        return [{ kind: 'agreement', key, statement, photos, evidence, source }];
      }
      return [
        {
          kind: hard && apart > roomDays.makerPeriod ? 'contradiction' : 'doubt',
          key,
          statement: `${sentence(words)}: ${spanWords(first.span)}, but ${plant} worked ${used}.`,
          photos,
          evidence,
          source,
          asks: [commonAsks.stampPhoto],
        },
      ];
    });
  },
});
