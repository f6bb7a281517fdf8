import type { CheckData } from '../../../check';
import type { WordsFor } from '../../finding-words';
import type { Kit } from '../../kit';

type Seller =
  | 'payment-inside'
  | 'returns-against-trader'
  | 'return-terms'
  | 'trader-stated'
  | 'seller-record'
  | 'pressure-words';

type Told = CheckData['seller-record']['told'][number];
const told = (one: Told, kit: Kit): string => {
  if (one.of === 'since') return `a member since ${kit.span(one.since)}`;
  if (one.of === 'sales') return `with ${kit.count(one.count, { one: '# sale', other: '# sales' })}`;
  const from = one.count === null ? '' : ` from ${kit.count(one.count, { one: '# rating', other: '# ratings' })}`;
  return `rated ${kit.quote(one.words)}${from}`;
};

export const seller: WordsFor<Seller> = {
  'payment-inside': {
    title: 'Payment stays inside the marketplace',
    failureTitle: 'The listing asks for payment outside the marketplace',
    rule: 'Who pays outside the marketplace’s own payment system loses its protection.',
    statement: ({ words }, kit) =>
      `The listing asks for payment outside the marketplace: ${kit.list(words.map(kit.quote))}.`,
    innocent: 'The seller may only want to save the fee.',
    settles: 'Payment through the marketplace, or no purchase.',
  },
  'returns-against-trader': {
    title: 'The return terms are those of the kind of seller',
    failureTitle: 'A business says that it takes no returns',
    rule: 'In the EU and the UK a consumer may cancel a purchase from a trader at a distance within 14 days, whatever the listing says.',
    statement: ({ words }, kit) =>
      `The seller is a business and ${words === null ? 'the page’s data say that nothing is taken back' : `says ${kit.quote(words)}`}.`,
    innocent: 'The seller may be outside the EU and the UK, or an exception may apply.',
    settles: 'Where the business is, and its terms in writing.',
  },
  'return-terms': {
    title: 'Returns are accepted',
    failureTitle: 'No return terms, or no returns',
    rule: 'Check refund and return rules before paying.',
    statement: ({ accepted, days, words }, kit) => {
      if (accepted === null) return 'The listing states no return terms.';
      const said = words === null ? '' : `: ${kit.quote(words)}`;
      if (!accepted) return `The listing takes no returns${said}.`;
      const within = days === null ? '' : ` within ${kit.count(days, { one: '# day', other: '# days' })}`;
      return `The listing accepts returns${within}${said}.`;
    },
    innocent: 'The marketplace may set the terms for all sellers, and private sellers often take no returns.',
    settles: 'The return terms in writing before paying.',
  },
  'trader-stated': {
    title: 'The page says whether the seller is a business',
    failureTitle: 'The page does not say whether the seller is a business',
    rule: 'In the EU and the UK a purchase from a trader at a distance can be cancelled within 14 days; one from a private seller cannot.',
    statement: () => 'The page does not say whether the seller is a private person or a business.',
    innocent: 'Outside the EU and the UK pages need not say it.',
    settles: 'Whether the seller sells as a private person or as a business.',
  },
  'seller-record': {
    title: 'The seller has a record',
    failureTitle: 'The seller’s record is short, missing or weak',
    rule: 'How long a seller has sold here, how much, and how well rated is all that a page shows of the seller.',
    statement: ({ told: all, least }, kit, kind) => {
      const said = kit.list(all.map((one) => told(one, kit)));
      if (said === '') return 'The page shows no record of the seller: no ratings, no sales, no date of joining.';
      if (least !== null)
        return `The seller is ${said}, which is less than ${kit.percent(least)} of the best rating there.`;
      return kind === 'agreement' ? `The seller is ${said}.` : `The seller’s record is short or says little: ${said}.`;
    },
    innocent: 'Every honest seller starts with an empty record.',
    explained: ({ least }) =>
      least === null ? null : 'Ratings also fall for slow post, or for goods of another kind.',
    settles: 'More about the seller, and payment that can be taken back.',
  },
  'pressure-words': {
    title: 'The text leaves time and room for questions',
    failureTitle: 'The text hurries the buyer or refuses questions',
    rule: 'Who hurries a buyer leaves no time for the questions that would settle a doubt.',
    statement: ({ words }, kit) => `The listing says ${kit.list(words.map(kit.quote))}.`,
    innocent: 'The seller may be moving house or tired of idle messages.',
    settles: 'Whether the seller answers a short, polite question.',
  },
};
