import type { WordsFor } from '../../finding-words';

export const changes: WordsFor<'price-changed'> = {
  'price-changed': {
    title: 'The price has not fallen steeply',
    failureTitle: 'The price has fallen steeply since the last look',
    statement: ({ before, now, readAt, fall }, kit) =>
      `The price fell from ${kit.price(before)} on ${kit.day(readAt)} to ${kit.price(now)}, by ${kit.percent(fall)}.`,
    rule: 'A price that falls by much in a short time has a reason worth knowing.',
    innocent: 'The seller may want to sell before a move, or had asked too much.',
    settles: 'Why the price was lowered.',
  },
};
