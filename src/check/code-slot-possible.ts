import * as z from 'zod';
import { type Difference, differenceSchema, differencesBetween, expectedSchema, placeOfCodeSchema } from '../code';
import type { Nearest } from '../code/types';
import { askFor } from './asks';
import { shownCodeSchema } from './code-data';
import type { SettledCode } from './fact/settled-codes';
import { defineCheck, fromMakerFile, makerFileSource, type Speech } from './frame';

/** From this likelihood on, a look-alike character explains an impossible value as well as the stamp itself does. */
const misreadExplains = 0.2;

/** What of a code cannot be, and the nearest code that reads with what tells it apart. */
const dataSchema = z.strictObject({
  shown: shownCodeSchema,
  slot: placeOfCodeSchema,
  value: z.string(),
  expected: expectedSchema,
  /** The maker whose file does not say that it lists all plants; null where the value is impossible. */
  unlistedBy: z.string().nullable(),
  near: z.strictObject({ code: z.string(), differences: z.array(differenceSchema) }).nullable(),
});

export const codeSlotPossible = defineCheck({
  id: 'code-slot-possible',
  family: 'code',
  kinds: ['contradiction', 'doubt', 'gap'],
  source: makerFileSource,
  data: dataSchema,
  limits: { misreadExplains },
  needs: { maker: ['codeSystems', 'plants'], facts: ['settledCodes', 'misfitsInTime'] },
  run(facts) {
    return facts.fact.settledCodes.flatMap((code): Speech<z.infer<typeof dataSchema>>[] => {
      const { decoding, readings, shown, hard, photos } = code;
      const own = decoding.misfits.find((one) => one.system.maker === facts.maker.name);
      const inTime = facts.fact.misfitsInTime.get(decoding.id);
      const misfit = inTime?.misfit ?? (readings.length > 0 ? undefined : own);
      if (!misfit) return [];
      const system = facts.maker.codeSystems.find(({ id }) => id === misfit.system.id);
      const near = (inTime ?? decoding).nearest[0];
      const maybeMisread = near !== undefined && near.likelihood >= misreadExplains;
      const source = fromMakerFile(facts.maker.name, { of: 'code-system', name: misfit.system.id }, system?.sources);
      const unlisted = misfit.slot === 'plant' && !facts.maker.plantsComplete;
      const { slot, value, expected } = misfit;
      const unlistedBy = unlisted ? facts.maker.name : null;
      const data = { shown, slot, value, expected, unlistedBy, near: near ? nearCode(code, near) : null };
      const common = { key: decoding.id, data, photos, source };
      // Nothing that a seller could answer: what is missing is missing in the file.
      if (unlisted) return [{ kind: 'gap', ...common }];
      const kind = hard && !misfit.system.soft && !maybeMisread ? 'contradiction' : 'doubt';
      return [{ kind, ...common, asks: [askFor('stamp-photo', {})] }];
    });
  },
});

function nearCode(
  { decoding, readings }: SettledCode,
  near: Nearest,
): { code: string; differences: Difference[] } | null {
  const differences = differencesBetween(readings[0]?.text ?? decoding.code, near.text);
  return differences === null ? null : { code: near.text, differences };
}
