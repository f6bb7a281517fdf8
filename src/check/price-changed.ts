import { defineCheck, practice } from './frame';
import { amountOf, priceWords } from './money';
import { askFact } from './wording';

/** A fall by more than this share between two looks. Common practice, no source. */
const steepFall = 0.4;

export const priceChanged = defineCheck({
  id: 'price-changed',
  family: 'changes',
  title: 'The price has not fallen steeply',
  failureTitle: 'The price has fallen steeply since the last look',
  kinds: ['doubt'],
  basis: 'A price that falls by much in a short time has a reason worth knowing.',
  innocent: 'The seller may want to sell before a move, or had asked too much.',
  settles: 'Why the price was lowered.',
  source: practice,
  needs: { previous: true, stated: ['price'] },
  run({ previous, stated }) {
    const now = stated.price.value;
    const before = previous.price;
    if (!before || before.currency !== now.currency || now.currency === null)
      return { cannotTell: 'the earlier price is not known in the same currency' };
    const fall = 1 - amountOf(now) / amountOf(before);
    if (!(fall > steepFall)) return [];
    const statement = `The price fell from ${priceWords(before)} on ${previous.readAt.slice(0, 10)} to ${priceWords(now)}, by ${Math.round(fall * 100)}%.`;
    return [{ kind: 'doubt', statement, asks: [askFact('price', 'Is there a reason for the lower price?')] }];
  },
});
