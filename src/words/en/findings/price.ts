import type { CheckData } from '../../../check';
import type { WordsFor } from '../../finding-words';
import { saying } from '../saying';

type Prices = 'price-cut-plausible' | 'prices-agree' | 'used-price-plausible' | 'new-price-plausible' | 'sale-channel';
const rates = 'exchange rates from memory, not verified';
const denied: Record<CheckData['sale-channel']['channel'], string> = {
  discount: 'never sells at a discount',
  outlet: 'has no outlets',
  'sample-sale': 'holds no sample sales',
  seconds: 'sells no factory seconds',
};

const newOf = (maker: string, { model }: { model?: string | undefined }) =>
  model === undefined ? `${maker}'s smallest new price` : `the new price of a ${model}`;

export const price: WordsFor<Prices> = {
  'price-cut-plausible': {
    title: 'The price cut is of a usual size',
    failureTitle: 'The price is said to be cut by more than is usual',
    rule: 'A “was” price far above the price asked is often invented.',
    statement: ({ was, sale, cut }, kit) =>
      `The price was cut from ${kit.price(was)} to ${kit.price(sale)}, by ${kit.percent(cut)}.`,
    innocent: 'The higher price may be what the piece cost new in a shop.',
    settles: 'Where the higher price comes from.',
  },
  'prices-agree': {
    title: 'The page gives one price',
    failureTitle: 'The page shows one price and carries another in its data',
    rule: 'The price that a page shows is the price in its data.',
    statement: ({ shown, data, origin }, kit) =>
      `The page shows ${kit.price(shown)}, but its data (${origin}) say ${kit.price(data)}.`,
    innocent: 'The page’s data may be stale, or be in another currency setting.',
    settles: 'The price that the seller asks.',
  },
  'used-price-plausible': {
    title: 'The price fits a used piece of this maker',
    failureTitle: 'The price is very low even for a used piece of this maker',
    rule: 'Even used, a piece rarely goes for less than a fifteenth of the maker’s smallest new price.',
    statement: ({ price: asked, maker, floor, like }, kit) =>
      like
        ? `${kit.price(asked)} is less than a third of what the file of ${maker} gives as the least for ${floor.model ?? 'a piece'} in this condition (${kit.amount(floor)} in ${floor.year}).`
        : `${kit.price(asked)} is less than a fifteenth of ${newOf(maker, floor)} (${kit.amount(floor)} in ${floor.year}), and the listing names no damage.`,
    basis: ({ price: asked, floor, like }) => [
      like
        ? 'A piece rarely goes for less than a third of what such pieces cost in the same condition.'
        : 'Even used, a piece rarely goes for less than a fifteenth of the maker’s smallest new price.',
      ...(asked.currency === floor.currency ? [] : [rates]),
    ],
    innocent: 'The piece may be damaged, a small accessory, or the seller may not know the maker.',
    settles: 'Photos of all parts, and why the price is low.',
  },
  'new-price-plausible': {
    title: 'The price fits a new piece',
    failureTitle: 'The price is implausible for a new piece of this maker',
    rule: 'A new or unused piece is rarely offered for less than a third of the maker’s smallest new price.',
    statement: ({ said, price: asked, maker, floor }, kit) =>
      `${saying(said, kit)} at ${kit.price(asked)}; ${floor.model === undefined ? `${maker}'s smallest new piece` : `a new ${floor.model}`} was ${kit.amount(floor)} in ${floor.year}.`,
    basis: ({ price: asked, floor, share }, kit) => [
      `${kit.price(asked)} is at most ${kit.percent(share)} of ${kit.amount(floor)}`,
      ...(asked.currency === floor.currency ? [] : [rates]),
    ],
    innocent: 'The piece may be a gift that the seller wants gone, or not as new as the seller thinks.',
    settles: 'The receipt, and photos of corners, handles and inside.',
  },
  'sale-channel': {
    title: 'The way the piece was sold is one that the maker uses',
    failureTitle: 'The piece is said to come from a sale that the maker does not hold',
    rule: 'A house that never discounts sells no piece through outlets, sample sales or as factory seconds.',
    statement: ({ words, maker, channel }, kit) =>
      `The listing says ${kit.quote(words)}, but ${maker} ${denied[channel]}.`,
    innocent: 'The seller may mean a shop’s own sale, or pass on what was told at the purchase.',
    settles: 'The receipt of the first purchase.',
  },
};
