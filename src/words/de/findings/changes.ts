import type { WordsFor } from '../../finding-words';

export const changes: WordsFor<'price-changed'> = {
  'price-changed': {
    title: 'Der Preis ist nicht stark gefallen',
    failureTitle: 'Der Preis ist seit dem letzten Blick stark gefallen',
    statement: ({ before, now, readAt, fall }, kit) =>
      `Der Preis fiel von ${kit.price(before)} am ${kit.day(readAt)} auf ${kit.price(now)}, um ${kit.percent(fall)}.`,
    rule: 'Fällt ein Preis in kurzer Zeit um viel, lohnt es sich, den Grund zu kennen.',
    innocent: 'Vielleicht will man vor einem Umzug verkaufen, oder es war zu viel verlangt.',
    settles: 'Warum der Preis gesenkt wurde.',
  },
};
