import { evidenceId, roomDays } from '../evidence';
import { spanWords } from '../span';
import { settledCodes } from './codes';
import { daysApart } from './dates';
import { fromMakerFile, makerFileSource } from './frame';
import { misfitInTime } from './in-time';
import { commonAsks, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const codeSystemInUse = defineWritten({
  id: 'code-system-in-use',
  family: 'code',
  title: "The code's system was in use at the code's own date",
  failureTitle: "The code's system was not in use at the code's own date",
  kinds: ['contradiction', 'doubt'],
  basis: 'A maker stamps in the layout of its day.',
  innocent: 'The start or end of a system in the maker file may be off by some months, or a character misread.',
  settles: 'A sharper photo of the stamp, and another piece of that period to compare.',
  source: makerFileSource,
  needs: { maker: ['codeSystems', 'plants'], decodings: true, photos: 'any' },
  run(facts) {
    const settled = settledCodes(facts, facts.maker.name);
    if (!('codes' in settled)) return settled;
    return settled.codes.flatMap((code): WrittenSpeech[] => {
      const { decoding, readings, words, hard, photos } = code;
      const dated = readings.flatMap((reading) => (reading.span ? [{ reading, span: reading.span }] : []));
      const first = dated[0];
      if (!first) return [];
      const apart = Math.min(...dated.map(({ reading, span }) => daysApart(span, reading.systemUsed)));
      if (apart === 0 || misfitInTime(code, facts.maker)) return [];
      return [
        {
          kind: hard && apart > roomDays.makerPeriod ? 'contradiction' : 'doubt',
          key: decoding.id,
          statement: `${sentence(words)}: ${spanWords(first.span)} by the system ${first.reading.system.id}, which ${facts.maker.name} used ${usedWords(spanWords(first.reading.systemUsed))}.`,
          photos,
          evidence: [evidenceId.reading(decoding.id), evidenceId.system(decoding.id)],
          source: fromMakerFile(
            facts.maker.name,
            `code system ${first.reading.system.id}`,
            first.reading.system.source,
          ),
          asks: [commonAsks.stampPhoto],
        },
      ];
    });
  },
});

const usedWords = (period: string) => (/^(from|up to|the|about)/.test(period) ? period : `from ${period}`);
