import { practice } from './frame';
import { priceWords } from './money';
import { askFact } from './wording';
import { defineWritten } from './written';

export const pricesAgree = defineWritten({
  id: 'prices-agree',
  family: 'price',
  title: 'The page gives one price',
  failureTitle: 'The page shows one price and carries another in its data',
  kinds: ['doubt'],
  basis: 'The price that a page shows is the price in its data.',
  innocent: 'The page’s data may be stale, or be in another currency setting.',
  settles: 'The price that the seller asks.',
  source: practice,
  needs: { stated: ['price'], listing: ['price'] },
  run({ listing }) {
    const sales = listing.price.filter(({ value, caveats }) => value.kind === 'sale' && !caveats?.includes('stale'));
    const shown = sales.find(({ origin }) => origin === 'visible');
    const other = sales.find(
      ({ origin, value }) =>
        origin !== 'visible' &&
        origin !== 'user-pick' &&
        shown &&
        !value.otherMinor?.length &&
        !shown.value.otherMinor?.length &&
        value.currency === shown.value.currency &&
        value.minor * 10 ** (shown.value.exponent - value.exponent) !== shown.value.minor,
    );
    if (!shown || !other) return [];
    const statement = `The page shows ${priceWords(shown.value)}, but its data (${other.origin}) say ${priceWords(other.value)}.`;
    return [{ kind: 'doubt', statement, asks: [askFact('price', 'Could you confirm the price that you ask?')] }];
  },
});
