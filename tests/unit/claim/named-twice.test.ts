import { describe, expect, it } from 'vitest';
import { claimsOf } from './listing-of';

const makers = (text: string, title: string) =>
  claimsOf(text, null, title).filter((claim) => claim.startsWith('maker '));

describe('an unknown word at the head of a title', () => {
  it.each([
    ['Corvane navy tote', 'A donated Corvane tote in navy leather.', 'maker Corvane'],
    ['Merrowdale tan tote', 'Roomy, lovely. It is a big Merrowdale tote.', 'maker Merrowdale'],
    ['Pellowe music satchel', 'Given by a friend. It is a Pellowe, made in England.', 'maker Pellowe'],
    ['Hawkesmere suitcase', 'The purser bought this Hawkesmere suitcase in 1957.', 'maker Hawkesmere'],
    ['Terhorne rode tas', 'Een ruime Terhorne tas.', 'maker Terhorne'],
    ['Haldenhof braune Tasche', 'Eine geräumige Haldenhof Tasche.', 'maker Haldenhof'],
  ])('names the maker where the text has it with its capital before the bag: %s', (title, text, maker) => {
    expect(makers(text, title)).toEqual([maker]);
  });
  it.each([
    ['Chunky tan tote', 'A chunky tote in leather.'],
    ['Preppy tan tote', 'Preppy tote. A big bag.'],
    ['Pellowe music satchel', 'She said to a Pellowe, go on.'],
    ['Boston navy bag', 'A donated Boston bag.'],
    ['Corvane navy tote', 'My Corvane purse is not for sale.'],
    ['Tatty brown satchel', 'A satchel like a Corvane satchel.'],
  ])('names nobody else: %s', (title, text) => {
    expect(makers(text, title)).toEqual([]);
  });
});
