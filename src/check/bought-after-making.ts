import * as z from 'zod';
import { evidenceId } from '../evidence';
import { askFor } from './asks';
import { claimedDate, claimedDateSchema } from './date-data';
import { distinctDates } from './dates';
import { defineCheck, practice, type Speech } from './frame';
import { pairKind } from './pairs';
import { because } from './reasons';

const dataSchema = z.strictObject({ making: claimedDateSchema, purchase: claimedDateSchema });

export const boughtAfterMaking = defineCheck({
  id: 'bought-after-making',
  family: 'time',
  kinds: ['doubt', 'agreement'],
  source: practice,
  data: dataSchema,
  needs: { claims: ['made', 'bought'], pairs: true },
  run({ claims: all, pairOf }) {
    const made = distinctDates(all.made);
    const bought = distinctDates(all.bought);
    if (made.length === 0 || bought.length === 0) return { notApplicable: because('not-made-and-bought', {}) };
    return bought.flatMap((purchase) =>
      made.flatMap((making): Speech<z.infer<typeof dataSchema>>[] => {
        const evidence = [evidenceId.claim(making.id), evidenceId.claim(purchase.id)] as const;
        const kind = pairKind(pairOf('making-purchase', ...evidence));
        if (!kind) return [];
        return [
          {
            kind,
            key: `${making.id}/${purchase.id}`,
            data: { making: claimedDate(making), purchase: claimedDate(purchase) },
            claims: [making.id, purchase.id],
            evidence: [...evidence],
            asks: [askFor('made-date', {})],
          },
        ];
      }),
    );
  },
});
