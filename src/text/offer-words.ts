import { foldWords } from './fold';
import { wordsOf } from './lexicon';
import { phrasePattern } from './phrases';

/**
 * Words of a control with which a reader buys, bids or writes to the seller. They stand on buttons and links only: in
 * running text "buy" says nothing of the page.
 */
const words = phrasePattern(wordsOf('buy-or-bid', 'offer-control'), 'u');

/** Whether a text tells a sum: a currency's sign beside a digit. */
export const tellsSum = (text: string): boolean => /\p{Sc}\s?\d|\d\s?\p{Sc}/u.test(text);

/** A control says one thing in a few words. */
const longest = 40;

/** Whether the words of a button or link invite to buy, to bid or to write to the seller. */
export function isOfferControl(text: string): boolean {
  const plain = text.replace(/\s+/g, ' ').trim();
  const found = plain.length <= longest ? words.exec(foldWords(plain).text) : null;
  // "Buy album $9.49": a control that begins with buying and tells the sum sells, whatever it calls the piece.
  return found !== null && (found[0].length * 2 >= plain.length || (found.index === 0 && tellsSum(plain)));
}

const buying = phrasePattern(wordsOf('buy-or-bid'), 'u');

/** Whether the words of a button or link invite to buy or to bid: a form to write to somebody stands beside any ad. */
export const isBuyControl = (text: string): boolean => isOfferControl(text) && buying.test(foldWords(text).text);

/** Words of a site's own menus, which stand where a name or a place might. */
const menu = phrasePattern(wordsOf('menu'), 'u');

/** Whether words are those of a menu or a control and name nobody and no place. */
export function isMenuWord(text: string): boolean {
  const folded = foldWords(text.trim()).text;
  return menu.exec(folded)?.[0] === folded || isOfferControl(text);
}
