import { isDataTerm } from '../claim';
import { askFact, quote } from './wording';
import { defineWritten } from './written';

export const returnsAgainstTrader = defineWritten({
  id: 'returns-against-trader',
  family: 'seller',
  title: 'The return terms are those of the kind of seller',
  failureTitle: 'A business says that it takes no returns',
  kinds: ['doubt'],
  basis:
    'In the EU and the UK a consumer may cancel a purchase from a trader at a distance within 14 days, whatever the listing says.',
  innocent: 'The seller may be outside the EU and the UK, or an exception may apply.',
  settles: 'Where the business is, and its terms in writing.',
  source: {
    kind: 'published',
    text: 'UK S.I. 2013/3134 regs 27 to 30 (29 and 30 from memory); Directive 2011/83/EU Arts 9 to 16 (article numbers from memory)',
  },
  needs: { listing: ['seller', 'returns'], claims: ['returns'] },
  run({ listing, claims }) {
    if (listing.seller.trader[0]?.value !== 'trader')
      return { notApplicable: 'the seller is not said to be a business' };
    const refused = [...listing.returns.map(({ value }) => value), ...claims.returns].find(({ accepted }) => !accepted);
    if (!refused) return [];
    const said = isDataTerm(refused.words)
      ? 'the page’s data say that nothing is taken back'
      : `says ${quote(refused.words)}`;
    const statement = `The seller is a business and ${said}.`;
    const ask = askFact('returns', 'Could you tell me whether you accept returns, and within how many days?');
    return [{ kind: 'doubt', statement, claims: claims.returns.map(({ id }) => id), asks: [ask] }];
  },
});
