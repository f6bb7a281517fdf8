import { describe, expect, it } from 'vitest';
import { asLabelled } from '../../../src/claim/asked';
import { claimsOf } from './listing-of';

/** Questions of a buyer and their answers in a seller's text: a question that only names a field is its label. */
const answered: [text: string, language: string, claims: string[]][] = [
  ['Innen? Wildleder rostfarben.', 'de', ['lining = rust suede']],
  ['P: ¿forro? R: piel de cerdo. P: ¿cierra? R: no.', 'es', ['lining = pigskin']],
  ['Q: date code?\nA: KV0915 on the tab.', 'en', ['code KV0915']],
  ['Q.内装は？ A.ネイビーのコットンです。', 'ja', ['lining = navy cotton']],
  ['Q.製造番号は？ A.見当たりません。', 'ja', ['no-code']],
  ['Q.本物ですか？ A.2003年に購入しました。Q.箱は？ A.あります。', 'ja', ['bought 2003-2003']],
  ['Baujahr? 98 laut Nummer.', 'de', ['made 1998-1998']],
  ['Code? none.', 'en', ['no-code']],
  // What a question names besides a field is asked, and no answer makes it said.
  ['Leather? I do not know.', 'en', []],
  ['Red suede lining? No idea.', 'en', []],
  ['Zip replaced in 2010? Never.', 'en', []],
  ['Vom Outlet? Nein.', 'de', []],
  ['Innen?', 'de', []],
];

describe('questions and answers in a text', () => {
  it.each(answered)('%s', (text, language, claims) => expect(claimsOf(text, language)).toEqual(claims));

  it.each(answered)('leave every place of the text what it was: %s', (text) => {
    expect(asLabelled(text)).toHaveLength(text.length);
  });

  it.each<[string, string]>([
    // Marks go ahead of any answer; a question that names no field of the piece stays one.
    ['Q: date code? A: HJ1929', '   date code:    HJ1929'],
    ['Q: is it yours? A: yes', '   is it yours?    yes'],
    ['Q1. Colour? A1. Red', '    Colour:     Red'],
    ['Q: who sold it? me', 'Q: who sold it? me'],
    ['Q: colour', 'Q: colour'],
    // Each field that a piece has.
    ['Condition? worn', 'Condition: worn'],
    ['Material? calf', 'Material: calf'],
    ['Serial number? KV0915', 'Serial number: KV0915'],
    ['Colour? red', 'Colour: red'],
    ['Dimensions? 30 cm', 'Dimensions: 30 cm'],
    ['Size? 30 cm', 'Size: 30 cm'],
    ['Lining? suede', 'Lining: suede'],
    ['Price? 300', 'Price? 300'],
    ['Brand? Velmont', 'Brand? Velmont'],
  ])('“%s” reads as “%s”', (text, read) => expect(asLabelled(text)).toBe(read));
});

it('a question behind which nothing is answered stays one', () => {
  for (const text of ['Innen?', 'Wildleder. Innen?', 'Lining?   ']) expect(asLabelled(text)).toBe(text);
  expect(asLabelled('Innen? Wildleder')).toBe('Innen: Wildleder');
});
