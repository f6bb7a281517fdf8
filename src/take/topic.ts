import type { Context } from './propose';
import { isSecondHand } from './said/second-hand';
import { tellingFinder } from './words';

const where = tellingFinder('column-where', 'sits', 'sits-on');
const codeWords = tellingFinder('code');
const numbers = tellingFinder('numbers-by-year');
const prices = tellingFinder('new-price', 'column-price', 'cost');
const plants = tellingFinder('plant');

/** What a page is about, by its title and its first heading. */
export const topicOf = (told: string): Context['about'] => ({
  plants: plants(told).length > 0,
  carriers: codeWords(told).length > 0 && where(told).length > 0,
  numbers: numbers(told).length > 0,
  prices: prices(told).length > 0,
  secondHand: isSecondHand(told),
});
