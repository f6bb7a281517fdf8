import { askFor } from './asks';
import { defineCheck } from './frame';
import { saidData, tellSaid } from './said-claims';

export const paymentInside = defineCheck({
  id: 'payment-inside',
  family: 'seller',
  kinds: ['doubt'],
  source: {
    kind: 'published',
    text: 'US FTC consumer alert, November 2021, consumer.ftc.gov (stored copy of a reprint)',
  },
  data: saidData,
  needs: { claims: ['payment-outside'] },
  run: ({ claims }) => tellSaid('doubt', claims['payment-outside'], askFor('payment', {})),
});
