import * as z from 'zod';
import { askFor } from './asks';
import { defineCheck } from './frame';

export const paymentInside = defineCheck({
  id: 'payment-inside',
  family: 'seller',
  kinds: ['doubt'],
  source: {
    kind: 'published',
    text: 'US FTC consumer alert, November 2021, consumer.ftc.gov (stored copy of a reprint)',
  },
  data: z.strictObject({ words: z.string() }),
  needs: { claims: ['payment-outside'] },
  run: ({ claims }) =>
    claims['payment-outside'].map((claim) => ({
      kind: 'doubt' as const,
      key: claim.id,
      data: { words: claim.words },
      claims: [claim.id],
      asks: [askFor('payment', {})],
    })),
});
