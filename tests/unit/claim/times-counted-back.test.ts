import { describe, expect, it } from 'vitest';
import { claimsBeginning, claimsOf } from './listing-of';

/** The sentences are read as if written on 25 November 2026. */
const bought = (text: string, language: string) => claimsBeginning('bought', text, language);

describe('a purchase whose time is counted back from the day of the listing', () => {
  it.each([
    ['en', 'I bought it last year.', '2025-2025'],
    ['en', 'Purchased two years ago, hardly used.', '2024-2024'],
    ['en', 'It was a gift last March.', '2026-2026'],
    ['fr', "Acheté l'année dernière en boutique.", '2025-2025'],
    ['fr', "Je l'ai acheté il y a trois ans.", '2023-2023'],
    ['fr', "Prise l'an passé dans une brocante.", '2025-2025'],
    ['de', 'Letztes Jahr gekauft.', '2025-2025'],
    ['de', 'Vor vier Jahren habe ich sie geschenkt bekommen.', '2022-2022'],
    ['de', 'Hab sie voriges Jahr auf dem Trödel gefunden.', '2025-2025'],
    ['it', "Comprata l'anno scorso.", '2025-2025'],
    ['it', 'Presa due anni fa al mercatino.', '2024-2024'],
    ['es', 'La compré el año pasado.', '2025-2025'],
    ['es', 'Me la regalaron hace cinco años.', '2021-2021'],
    ['nl', 'Vorig jaar gekocht.', '2025-2025'],
    ['nl', 'Drie jaar geleden gekregen van mijn zus.', '2023-2023'],
    ['ja', '去年購入しました。', '2025-2025'],
    ['ja', '4年前に購入したものです。', '2022-2022'],
  ])('%s: %s', (language, text, years) => {
    expect(bought(text, language)).toEqual([`bought ${years}`]);
  });

  it.each([
    ['en', "Last year's colour, made in Spain."],
    ['en', 'The zip was replaced last year.'],
    ['en', 'My sister bought hers last year.'],
    ['de', 'Der Reißverschluss wurde letztes Jahr erneuert, die Rechnung habe ich noch.'],
    ['fr', "La couture a été refaite l'an dernier."],
    ['it', "La tracolla l'ho fatta rifare l'anno scorso."],
    ['nl', 'Vorig jaar is de rits vervangen.'],
    ['es', 'El año pasado cambiaron la cremallera.'],
    ['ja', '去年ファスナーを交換しました。'],
  ])('none of what else was done then: %s: %s', (language, text) => {
    expect(bought(text, language)).toEqual([]);
  });
});

describe('what is told of a piece that somebody had before', () => {
  it.each([
    ['en', 'My previous one had a suede lining and was from 1988.'],
    ['fr', "J'en ai eu un autre, de 1999, dont l'anse avait été changée."],
    ['de', 'Ich hatte früher eine von 1985, die hatte ein Futter aus Schweinsleder.'],
    ['it', 'La mia, quella rossa, è del 1999 e non si vende.'],
    ['es', 'Mi anterior bolso era de 1991 y tenía el forro de ante.'],
    ['nl', 'Mijn vorige was van 1990 en had een voering van suède.'],
    ['ja', '以前持っていた1978年のものは裏地が豚革でした。'],
  ])('is said of nothing on offer: %s: %s', (language, text) => {
    expect(claimsBeginning('made', text, language)).toEqual([]);
    expect(claimsBeginning('lining', text, language)).toEqual([]);
  });

  it('leaves the piece itself its year where the sentence comes back to it', () => {
    expect(claimsBeginning('made', 'Meine vorige Tasche war von 1990, diese ist von 2001.', 'de')).toEqual([
      'made 2001-2001',
    ]);
  });
});

describe('sizes in words', () => {
  const sides = (text: string, language: string) =>
    ['width', 'height', 'depth'].flatMap((side) => claimsBeginning(side, text, language));

  it.each([
    ['en', 'Sixteen inches wide, eleven tall, nine deep.', ['width 406.4', 'height 279.4', 'depth 228.6']],
    ['fr', 'Largeur trente-deux centimètres, hauteur vingt-quatre.', ['width 320', 'height 240']],
    ['de', 'Breite dreißig Zentimeter, Höhe fünfundzwanzig, Tiefe zehn.', ['width 300', 'height 250', 'depth 100']],
    ['it', 'Larga trentacinque centimetri, alta ventisei.', ['width 350', 'height 260']],
    ['es', 'Veintiocho centímetros de ancho, veinte de alto.', ['width 280', 'height 200']],
    ['nl', 'Breedte dertig centimeter, hoogte tweeëntwintig.', ['width 300', 'height 220']],
    ['ja', '幅三十センチ、高さ二十二センチ。', ['width 300', 'height 220']],
  ])('%s: %s', (language, text, said) => {
    expect(sides(text, language)).toEqual(said);
  });

  it.each([
    ['en', 'Two handles, one strap, six card slots and two zips.'],
    ['fr', 'Un sac neuf, six poches, deux anses.'],
    ['de', 'Zwei Henkel, drei Fächer, acht Kartenfächer.'],
    ['it', 'Sei una cliente fedele? Due manici, tre tasche.'],
    ['es', 'Once bolsillos y dos asas.'],
    ['nl', 'Twee hengsels, drie vakken.'],
  ])('none where numbers count other things: %s: %s', (language, text) => {
    expect(claimsBeginning('width', text, language)).toEqual([]);
    expect(claimsBeginning('unknown', text, language)).toEqual([]);
    expect(claimsBeginning('handle', text, language)).toEqual([]);
  });
});

describe('returns and exchanges', () => {
  it.each([
    ['en', 'Ex-hire goods are sold without returns.'],
    ['de', 'Rücknahme gibt es nicht.'],
    ['de', 'Rückgabe ist leider nicht möglich.'],
    ['it', 'Non si accettano restituzioni.'],
    ['es', 'No se admiten devoluciones.'],
    ['nl', 'Retour kan niet.'],
  ])('a denied return is a refusal: %s: %s', (language, text) => {
    expect(claimsBeginning('returns', text, language)).toEqual(['returns no']);
  });

  it.each([
    ['en', 'No swaps please, no exchanges.'],
    ['fr', "Pas d'échange, merci."],
    ['de', 'Kein Tausch.'],
    ['it', 'Non faccio scambi.'],
    ['es', 'No la cambio por otra cosa, no acepto cambios.'],
    ['nl', 'Geen ruil.'],
  ])('no exchange is no word on returns: %s: %s', (language, text) => {
    expect(claimsBeginning('returns', text, language)).toEqual([]);
  });

  it('a week is told in words as well', () => {
    expect(claimsBeginning('returns', 'I can take it back within a week.', 'en')).toEqual(['returns yes']);
  });
});

describe('regions and towns', () => {
  it.each([
    ['it', 'Fatta a mano in Toscana.', 'IT'],
    ['fr', 'Fabriqué en Vendée.', 'FR'],
    ['en', 'Handmade in Somerset, bought in Paris.', 'GB'],
    ['de', 'In Bayern gefertigt, in Wien gekauft.', 'DE'],
    ['nl', 'Met de hand gemaakt in Friesland.', 'NL'],
    ['es', 'Bolso hecho en Andalucía.', 'ES'],
  ])('tell of their country where a piece is made there: %s: %s', (language, text, place) => {
    expect(claimsBeginning('origin', text, language)).toEqual([`origin ${place}`]);
  });

  it.each([
    ['en', 'Bought in Florence, posted from London.'],
    ['it', 'Comprata a Firenze.'],
    ['de', 'Versand aus Bayern.'],
  ])('and of none elsewhere: %s: %s', (language, text) => {
    expect(claimsBeginning('origin', text, language)).toEqual([]);
  });
});

describe('straps of a rucksack', () => {
  it.each([
    ['it', 'Zaino in vera pelle blu, con spallacci in similpelle.'],
    ['es', 'Mochila de piel auténtica con tirantes de polipiel.'],
    ['fr', 'Sac à dos en cuir véritable, bretelles en simili cuir.'],
  ])('are of what they are said to be, and the piece is not: %s: %s', (language, text) => {
    expect(claimsBeginning('leather-like', text, language)).toEqual(['leather-like of strap']);
  });
});

describe('a year of making that has not come', () => {
  it.each([
    ['en', 'Made in 2031.', '2031'],
    ['fr', 'Fabriqué en 2033.', '2033'],
    ['de', 'Hergestellt 2033.', '2033'],
    ['it', 'Prodotta nel 2031, usata due volte.', '2031'],
    ['es', 'Fabricado en 2032.', '2032'],
    ['nl', 'Gemaakt in 2035.', '2035'],
    ['ja', '2031年製です。', '2031'],
  ])('is read where only a year can stand: %s: %s', (language, text, year) => {
    expect(claimsBeginning('made', text, language)).toEqual([`made ${year}-${year}`]);
  });

  it.each([
    ['en', 'Number 2045 of the list, model 2031.'],
    ['de', 'Artikel 2033, Regal 2040.'],
  ])('and nowhere else: %s: %s', (language, text) => {
    expect(claimsBeginning('made', text, language)).toEqual([]);
  });
});

describe('quarters and what was added to a lot', () => {
  it('an ordinal in digits ends no sentence', () => {
    expect(claimsBeginning('made', 'Entst. 1. Quartal 1982.', 'de')).toEqual(['made 1982-1982']);
    expect(claimsBeginning('made', 'Made in the third quarter of 1985.', 'en')).toEqual(['made 1985-1985']);
  });

  it.each([
    ['de', 'Entstanden 1970. Beigegeben: Kofferanhänger aus Leder, um 1990.'],
    ['de', 'Hergestellt 1970. Beiliegend ein Schlüsselanhänger, um 1990.'],
  ])('has a date of its own: %s', (language, text) => {
    expect(claimsBeginning('made', text, language)).toEqual(['made 1970-1970']);
  });
});

describe('one unknown name of a title', () => {
  const makers = (title: string, language: string) =>
    claimsOf('', language, title).filter((claim) => claim.startsWith('maker'));

  it.each([
    ['it', 'Borsa Montaldino color miele', 'Montaldino'],
    ['de', 'Umhängetasche Bergmoser schwarz', 'Bergmoser'],
    ['fr', 'Sac de voyage Castelvieu', 'Castelvieu'],
    ['es', 'Mochila Alquezar gris', 'Alquezar'],
  ])('is the maker right behind what the piece is called: %s: %s', (language, title, maker) => {
    expect(makers(title, language)).toEqual([`maker ${maker}`]);
  });

  it.each([
    ['it', 'Borsa Firenze in pelle'],
    ['fr', 'Sac Noël rouge'],
    ['en', 'Bag, brown leather'],
    ['de', 'Tasche Leder braun'],
  ])('and no plain word or place is: %s: %s', (language, title) => {
    expect(makers(title, language)).toEqual([]);
  });
});
