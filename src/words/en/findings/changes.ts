import type { WordsFor } from '../../finding-words';
import { subjects } from '../subjects';

export const changes: WordsFor<'price-changed' | 'photos-changed' | 'seller-changed' | 'claims-changed'> = {
  'price-changed': {
    title: 'The price has not fallen steeply',
    failureTitle: 'The price has fallen steeply since the last look',
    rule: 'A price that falls by much in a short time has a reason worth knowing.',
    statement: ({ before, now, readAt, fall }, kit) =>
      `The price fell from ${kit.price(before)} on ${kit.day(readAt)} to ${kit.price(now)}, by ${kit.percent(fall)}.`,
    innocent: 'The seller may want to sell before a move, or had asked too much.',
    settles: 'Why the price was lowered.',
  },
  'photos-changed': {
    title: 'No photo was taken away',
    failureTitle: 'Photos were taken away since the last look',
    rule: 'A photo that was shown and is gone may have shown something that matters.',
    statement: ({ gone, of, left, readAt }, kit) =>
      `${kit.count(gone, { one: '# photo', other: '# photos' })} of ${of} shown on ${kit.day(readAt)} ${gone === 1 ? 'is' : 'are'} gone; ${left} are left.`,
    innocent: 'The seller may have replaced poor photos with better ones.',
    settles: 'The photos that are gone.',
  },
  'seller-changed': {
    title: 'The seller is the same',
    failureTitle: 'The listing has another seller than at the last look',
    rule: 'A listing stays with the one who sells.',
    statement: ({ before, now, readAt }, kit) =>
      `On ${kit.day(readAt)} the seller was ${kit.quote(before)}; now it is ${kit.quote(now)}.`,
    innocent: 'The seller may have changed the name of the account, or sold on to another.',
    settles: 'Whether the piece changed hands.',
  },
  'claims-changed': {
    title: 'What the listing claims has not changed',
    failureTitle: 'What the listing claims has changed since the last look',
    rule: 'A piece does not change its age, maker or country between two looks.',
    statement: ({ subject, before, now, readAt }, kit) =>
      `On ${kit.day(readAt)} the listing gave ${subjects[subject]} as ${kit.quote(before)}; now it says ${kit.quote(now)}.`,
    innocent: 'The seller may have corrected a mistake, perhaps after a question.',
    settles: 'What led to the change.',
  },
};
