import * as z from 'zod';
import { isExact, roomDays } from '../evidence';
import { askFor } from './asks';
import { claimedDate, claimedDateSchema } from './date-data';
import { daysBefore, distinctDates } from './dates';
import { defineCheck, practice, type Speech } from './frame';
import { because } from './reasons';

const dataSchema = z.strictObject({ making: claimedDateSchema, purchase: claimedDateSchema });

export const boughtAfterMaking = defineCheck({
  id: 'bought-after-making',
  family: 'time',
  kinds: ['doubt', 'agreement'],
  source: practice,
  data: dataSchema,
  needs: { claims: ['made', 'bought'] },
  run({ claims: all }) {
    const made = distinctDates(all.made);
    const bought = distinctDates(all.bought);
    if (made.length === 0 || bought.length === 0) return { notApplicable: because('not-made-and-bought', {}) };
    return bought.flatMap((purchase) =>
      made.flatMap((making): Speech<z.infer<typeof dataSchema>>[] => {
        const early = daysBefore(purchase.span, making.span);
        const late = daysBefore(making.span, purchase.span);
        const common = {
          key: `${making.id}/${purchase.id}`,
          data: { making: claimedDate(making), purchase: claimedDate(purchase) },
          claims: [making.id, purchase.id],
        };
        if (early > (making.span.about ? roomDays.hedgedMaking : 0))
          return [{ kind: 'doubt', ...common, asks: [askFor('made-date', {})] }];
        const asNew = early === 0 && isExact(making.span) && late < roomDays.boughtNew;
        return asNew ? [{ kind: 'agreement', ...common }] : [];
      }),
    );
  },
});
