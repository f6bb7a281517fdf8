import { commonAsks, quote } from './wording';
import { defineWritten, type WrittenSpeech } from './written';

export const paymentInside = defineWritten({
  id: 'payment-inside',
  family: 'seller',
  title: 'Payment stays inside the marketplace',
  failureTitle: 'The listing asks for payment outside the marketplace',
  kinds: ['doubt'],
  basis: 'Who pays outside the marketplace’s own payment system loses its protection.',
  innocent: 'The seller may only want to save the fee.',
  settles: 'Payment through the marketplace, or no purchase.',
  source: {
    kind: 'published',
    text: 'US FTC consumer alert, November 2021, consumer.ftc.gov (stored copy of a reprint)',
  },
  needs: { claims: ['payment-outside'] },
  run: ({ claims }) =>
    claims['payment-outside'].map(
      (claim): WrittenSpeech => ({
        kind: 'doubt',
        key: claim.id,
        statement: `The listing asks for payment outside the marketplace: ${quote(claim.words)}.`,
        claims: [claim.id],
        asks: [commonAsks.payment],
      }),
    ),
});
