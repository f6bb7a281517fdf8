import { differenceWords } from '../code';
import type { Nearest } from '../code/types';
import { type SettledCode, settledCodes } from './codes';
import { fromMakerFile, makerFileSource } from './frame';
import { misfitInTime } from './in-time';
import { commonAsks, sentence } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

/** From this likelihood on, a look-alike character explains an impossible value as well as the stamp itself does. */
const misreadExplains = 0.2;

/** Nothing that a seller could answer: what is missing is missing in the file. */
const unlisted = {
  innocent: 'The maker may have had plants that nobody has entered into the file yet.',
  settles: 'A maker file that lists all plants, or another piece that is known to be from this one.',
};

export const codeSlotPossible = defineWritten({
  id: 'code-slot-possible',
  family: 'code',
  title: 'Month, week and plant of the code exist',
  failureTitle: 'The code names a month, week or plant that does not exist',
  kinds: ['contradiction', 'doubt', 'gap'],
  basis:
    'A year has 12 months and 52 or 53 weeks (ISO 8601). A plant that the maker file does not list speaks against the code only where the file says that its list is complete.',
  innocent: 'One worn or badly lit character may have been taken for another.',
  settles: 'A sharper photo of the stamp, straight from above.',
  source: makerFileSource,
  needs: { maker: ['codeSystems', 'plants'], decodings: true, photos: 'any' },
  run(facts) {
    const settled = settledCodes(facts, facts.maker.name);
    if (!('codes' in settled)) return settled;
    return settled.codes.flatMap((code): WrittenSpeech[] => {
      const { decoding, readings, words, hard, photos } = code;
      const own = decoding.misfits.find((one) => one.system.maker === facts.maker.name);
      const inTime = misfitInTime(code, facts.maker);
      const misfit = inTime?.misfit ?? (readings.length > 0 ? undefined : own);
      if (!misfit) return [];
      const system = facts.maker.codeSystems.find(({ id }) => id === misfit.system.id);
      const near = (inTime ?? decoding).nearest[0];
      const maybeMisread = near !== undefined && near.likelihood >= misreadExplains;
      const hint = near ? hintWords(code, near) : '';
      const source = fromMakerFile(facts.maker.name, `code system ${misfit.system.id}`, system?.source);
      const common = { key: decoding.id, photos, source };
      if (misfit.slot === 'plant' && !facts.maker.plantsComplete) {
        const statement = `${sentence(words)}: the file of ${facts.maker.name} does not list a plant “${misfit.value}”, and does not say that it lists all.${hint}`;
        return [{ kind: 'gap', statement, innocent: unlisted.innocent, settles: unlisted.settles, ...common }];
      }
      return [
        {
          kind: hard && !maybeMisread ? 'contradiction' : 'doubt',
          statement: `${sentence(words)}: ${misfit.slot} “${misfit.value}” does not exist, expected ${misfit.expected}.${hint}`,
          ...common,
          asks: [commonAsks.stampPhoto],
        },
      ];
    });
  },
});

function hintWords({ decoding, readings }: SettledCode, near: Nearest): string {
  const difference = differenceWords(readings[0]?.text ?? decoding.code, near);
  if (difference === null) return '';
  return ` ${near.text} would read${difference ? ` (${difference})` : ''}.`;
}
