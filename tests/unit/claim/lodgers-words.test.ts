import { describe, expect, it } from 'vitest';
import { claimsOf, claimsBeginning as heard } from './listing-of';

describe('verbs that tell of making where the piece is their subject', () => {
  it.each([
    ['de', 'Diese Handtasche wurde 1979 gemacht.'],
    ['de', 'Die Tasche ist um 1979 entstanden.'],
    ['fr', 'Ce sac a été cousu en 1979.'],
    ['fr', 'Elle fut créée en 1979.'],
    ['it', 'La borsa fu confezionata nel 1979.'],
    ['it', 'Fatta nel 1979.'],
    ['es', 'Este bolso se confeccionó en 1979.'],
    ['es', 'La cartera fue elaborada en 1979.'],
    ['nl', 'De tas werd in 1979 genaaid.'],
    ['en', 'The bag was created in 1979.'],
    ['en', 'This is a 1979 bag.'],
    ['fr', 'Estampillé B2-118, soit le deuxième trimestre 1979.'],
    ['en', 'A serial that dates it between 1978 and 1980.'],
  ])('%s: %s', (language, words) => expect(heard('made', words, language)).toHaveLength(1));
  it.each([
    ['de', 'Die Fotos wurden 1979 gemacht.'],
    ['de', 'Wir haben 1979 Urlaub gemacht.'],
    ['fr', 'Une réparation a été faite en 1979.'],
    ['fr', "J'ai fait un voyage en 1979."],
    ['it', 'La revisione fu fatta nel 1979.'],
    ['es', 'Se hizo una foto en 1979.'],
    ['nl', 'De foto is in 1979 genaaid.'],
  ])('but not what else was made (%s): %s', (language, words) => expect(heard('made', words, language)).toEqual([]));
  it('an article and a year are no code', () => {
    expect(heard('code', 'A 1979 bag, hardly used.', 'en')).toEqual([]);
  });
  it.each([
    ['de', 'Die Tasche wurde in Portugal genäht.', 'origin PT'],
    ['de', 'In Rumänien hergestellt.', 'origin RO'],
    ['nl', 'De tas is in Portugal gemaakt.', 'origin PT'],
    ['nl', 'In Roemenië met de hand vervaardigd.', 'origin RO'],
    ['it', 'In Portogallo fu cucita.', 'origin PT'],
  ])('a country ahead of its verb (%s): %s', (language, words, short) =>
    expect(heard('origin', words, language)).toEqual([short]),
  );
  it('a country where something was bought is none', () =>
    expect(heard('origin', 'In Portugal gekauft, die Schuhe wurden in Rumänien verkauft.', 'de')).toEqual([]));
});

describe('what the piece and its fittings are of', () => {
  it.each([
    ['en', 'Black bridle leather with brass rings, lined in linen.', ['body = black bridle leather', 'lining = linen']],
    ['en', 'Twill inside, everything brass.', ['hardware = brass', 'lining = twill']],
    ['de', 'Schwarzes genarbtes Leder, alles aus Messing.', ['body = black leather', 'hardware = brass']],
    ['fr', 'Cuir tressé noir, métal doré.', ['body = black woven leather', 'hardware = gold-tone']],
    ['it', 'Pelle martellata nera, tutto in ottone.', ['body = black leather', 'hardware = brass']],
    ['es', 'Piel granulada negra, todo de latón.', ['body = black leather', 'hardware = brass']],
    ['nl', 'Gekorreld leer zwart, alles van messing.', ['body = black leather', 'hardware = brass']],
    ['ja', '黒の型押しレザー、内側は錆色のスエード。', ['body = black leather', 'lining = rust suede']],
    ['en', "Buckle's nickel.", ['hardware = nickel']],
    ['it', 'Borsa a tracolla nera in cuoio.', ['body = black leather']],
    ['fr', 'Coutures jaune fluo.', ['stitching = neon yellow']],
    ['de', 'Nähte neongelb.', ['stitching = neon yellow']],
  ])('%s: %s', (language, words, said) =>
    expect(
      claimsOf(words, language)
        .filter((claim) => claim.includes(' = '))
        .sort(),
    ).toEqual(said),
  );
  it('behind the words of the title', () =>
    expect(claimsOf('Boulevard 25 in grained calf, hardly used.', 'en', 'Ondrasse Boulevard 25')).toContain(
      'body = calfskin',
    ));
});

describe('what else lodgers write', () => {
  it.each([
    ['de', 'Ich besitze sie seit 2009.'],
    ['fr', "Je l'ai depuis 2009."],
    ['it', "Ce l'ho dal 2009."],
    ['es', 'Lo tengo desde 2009.'],
    ['nl', 'Ik heb hem sinds 2009.'],
    ['fr', 'Offert pour ma retraite en 2009.'],
    ['it', "Presa a Lucca nell'estate del 2009."],
  ])('since when it is theirs (%s): %s', (language, words) =>
    expect(heard('bought', words, language)).toEqual(['bought 2009-2009']),
  );
  it('an Italian year without its century', () =>
    expect(heard('bought', "La comprai a Lucca nella primavera dell'87.", 'it')).toEqual(['bought 1987-1987']));
  it.each([
    ['30 x 22ish cm, 11 deep.', ['unknown 300', 'unknown 220', 'depth 110']],
    ['36 cm messenger. Sized 36 x 28 x 10 cm.', ['unknown 360', 'unknown 280', 'unknown 100']],
  ])('sizes: %s', (words, said) => expect(claimsOf(words, 'en')).toEqual(said));
  it('the length in a name is one of the sides', () =>
    expect(
      claimsOf('Busta, 28 cm, black. Width 28 height 17 depth 5.', 'en').filter((one) => one.endsWith(' 280')),
    ).toEqual(['width 280']));
  it.each([
    ['en', 'Never used for travelling, only to the office.'],
    ['fr', 'Jamais porté au travail.'],
    ['de', 'Nie im Büro getragen.'],
    ['it', 'Mai usata per viaggiare.'],
    ['es', 'Nunca usado para viajar.'],
    ['nl', 'Nooit gebruikt op reis.'],
  ])('what it was not used for (%s): %s', (language, words) =>
    expect(heard('condition unused', words, language)).toEqual([]),
  );
  it('other pieces of a shop', () => {
    expect(heard('made', 'Vendiamo anche una cartella degli anni Novanta.', 'it')).toEqual([]);
    expect(heard('made', 'Wir verkaufen auch eine Mappe aus den Neunzigern.', 'de')).toEqual([]);
  });
  it.each([
    ['de', 'Sie können innerhalb von 14 Tagen widerrufen.', 'returns yes'],
    ['fr', 'Les articles ne sont ni repris ni échangés.', 'returns no'],
    ['nl', 'Kavels worden niet teruggenomen.', 'returns no'],
  ])('returns (%s): %s', (language, words, said) => expect(heard('returns', words, language)).toEqual([said]));
});
