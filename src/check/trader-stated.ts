import { askFact } from './wording';
import { defineWritten } from './written';

export const traderStated = defineWritten({
  id: 'trader-stated',
  family: 'seller',
  title: 'The page says whether the seller is a business',
  failureTitle: 'The page does not say whether the seller is a business',
  kinds: ['gap'],
  basis:
    'In the EU and the UK a purchase from a trader at a distance can be cancelled within 14 days; one from a private seller cannot.',
  innocent: 'Outside the EU and the UK pages need not say it.',
  settles: 'Whether the seller sells as a private person or as a business.',
  source: {
    kind: 'published',
    text: 'Directive 2011/83/EU as amended by (EU) 2019/2161; UK S.I. 2013/3134 (article numbers from memory, not verified)',
  },
  needs: { listing: ['seller'] },
  run: ({ listing }) =>
    listing.seller.trader.length > 0
      ? []
      : [
          {
            kind: 'gap',
            statement: 'The page does not say whether the seller is a private person or a business.',
            asks: [askFact('trader', 'Do you sell as a private person or as a business?')],
          },
        ],
});
