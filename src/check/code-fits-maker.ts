import { differenceWords } from '../code';
import type { Nearest, Reading } from '../code/types';
import { spansMeet, spanWords } from '../span';
import { readingsWords, readingWords, settledCodes } from './codes';
import { fromMakerFile, makerFileSource } from './frame';
import { commonAsks, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const codeFitsMaker = defineWritten({
  id: 'code-fits-maker',
  family: 'code',
  title: "The code reads under one of the maker's code systems",
  failureTitle: "The code reads under none of the maker's code systems",
  kinds: ['doubt', 'agreement'],
  basis: "A code that the maker stamped follows one of the maker's code systems.",
  innocent:
    'A character may be misread, the mark may be a repair or batch number, or the maker file may lack a system.',
  settles: 'A sharper photo of the stamp, straight from above.',
  source: makerFileSource,
  needs: { maker: ['codeSystems'], decodings: true, photos: 'any' },
  run(facts) {
    const settled = settledCodes(facts, facts.maker.name);
    if (!('codes' in settled)) return settled;
    return settled.codes.flatMap(({ decoding, readings, words, photos }): WrittenSpeech[] => {
      const source = fromMakerFile(facts.maker.name, 'code systems', readings[0]?.system.source);
      const key = decoding.id;
      if (readings[0]) {
        // Out of its system's time it is another check's contradiction, not an agreement here.
        if (!readings.some(inPeriod)) return [];
        const statement = `${sentence(words)}: ${readingsWords(readings)}, by ${facts.maker.name}'s system ${readings[0].system.id}.`;
        return [{ kind: 'agreement', key, statement, photos, source }];
      }
      if (decoding.misfits.length > 0) return [];
      const near = decoding.nearest[0];
      const hint = near ? nearWords(decoding.code, near) : '';
      const statement = `${sentence(words)}, which fits none of ${facts.maker.name}'s code systems.${hint}`;
      return [{ kind: 'doubt', key, statement, photos, source, asks: [commonAsks.stampPhoto] }];
    });
  },
});

const inPeriod = ({ span, systemUsed }: Reading) => span === null || spansMeet(span, systemUsed);

/** The nearest code in a sentence; the same text is one whose only reading lies out of its system's time. */
function nearWords(read: string, near: Nearest): string {
  const { text, reading } = near;
  const difference = differenceWords(read, near);
  if (difference !== null) return ` The nearest code that does is ${text}${difference ? ` (${difference})` : ''}.`;
  const used = spanWords(reading.systemUsed);
  return ` By the system ${reading.system.id} (${used}) it would read ${readingWords(reading)}, which is not certain enough.`;
}
