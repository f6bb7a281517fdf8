import { describe, expect, it } from 'vitest';
import { claimsBeginning as heard } from './listing-of';

describe('what somebody else holds, and the seller does not, judges nothing', () => {
  it.each([
    ['en', 'A neighbour told me it was made in Spain, which is wrong.'],
    ['de', 'Jemand meinte, hergestellt in Spanien, das stimmt nicht.'],
    ['fr', 'Une voisine dit fabriqué en Espagne, c’est faux.'],
    ['it', 'Un amico la voleva prodotta in Spagna, non è vero.'],
    ['es', 'Decían que era hecho en Francia, no es cierto.'],
    ['nl', 'Volgens een buurvrouw gemaakt in Spanje, klopt niet.'],
    ['ja', 'フランス製と言われましたが違います。'],
  ])('a country that is taken back (%s)', (language, words) => expect(heard('origin', words, language)).toEqual([]));

  it.each([
    ['en', 'My brother thinks it was made in 1981.'],
    ['en', 'Apparently made in 1981.'],
    ['de', 'Meine Oma sagt hergestellt 1981.'],
    ['fr', 'Paraît-il fabriqué en 1981.'],
    ['it', 'Mia zia dice prodotta nel 1981.'],
    ['es', 'Al parecer fabricado en 1981.'],
    ['nl', 'Naar verluidt gemaakt in 1981.'],
    ['ja', '1981年に作られたと聞いています。'],
  ])('a year of making by hearsay (%s)', (language, words) => expect(heard('made', words, language)).toEqual([]));

  it('but what a label or a stamp says is no hearsay, nor a range that is told of a code', () => {
    expect(heard('made', 'The label says it was made in 1981.', 'en')).toEqual(['made 1981-1981']);
    expect(heard('made', 'B1042173, I was told made between 2002 and 2004.', 'en')).toEqual(['made 2002-2004']);
  });

  it.each([
    ['en', 'Today’s models have a satin lining, mine does not.', 'lining'],
    ['de', 'Die aktuellen Modelle haben ein Futter aus Satin.', 'lining'],
    ['it', 'I modelli attuali hanno la fodera in raso, questa no.', 'lining'],
    ['es', 'Los modelos actuales llevan forro de raso, este no.', 'lining'],
    ['nl', 'De huidige modellen hebben een voering van satijn, deze niet.', 'lining'],
    ['ja', '現行品の内側はサテンです。', 'lining'],
    ['en', 'I own a second one, unused, not for sale.', 'condition'],
    ['fr', 'J’en ai une deuxième jamais portée que je garde.', 'condition'],
    ['de', 'Ich habe noch eine, ungetragen, die bleibt bei mir.', 'condition'],
    ['nl', 'Ik heb een tweede, ongedragen, die hou ik.', 'condition'],
    ['ja', '新品をもう一個持っているので手放します。', 'condition'],
  ])('of another piece (%s): %s', (language, words, kind) => expect(heard(kind, words, language)).toEqual([]));

  it('one owner who never used it is not all of them', () => {
    for (const [language, words] of [
      ['en', 'Never worn on my part.'],
      ['fr', 'Jamais portée de ma part.'],
      ['nl', 'Van mijn kant nooit gedragen.'],
      ['es', 'De mi parte nunca usado.'],
    ] as const)
      expect(heard('condition unused', words, language)).toEqual([]);
    expect(heard('condition', 'Never worn, on its stand since.', 'en')).toEqual(['condition unused']);
  });
});

describe('a way to pay that the seller refuses is not asked for', () => {
  it.each([
    ['en', 'Paying by bank transfer off the site is not an option.'],
    ['de', 'Überweisung ohne die Plattform kommt nicht in Frage.'],
    ['fr', 'Nous refusons tout virement direct.'],
    ['it', 'Rifiuto bonifici fuori dal sito.'],
    ['es', 'Transferencia por fuera, ni hablar.'],
    ['nl', 'Overschrijven buiten de site om doen we niet.'],
    ['ja', '直接の銀行振込はお断りします。'],
  ])('%s: %s', (language, words) => expect(heard('payment', words, language)).toEqual([]));
  it('but whoever asks for it is heard', () =>
    expect(heard('payment', 'The fees here I refuse to pay. Please send a bank transfer.', 'en')).toHaveLength(1));
});

describe('years and countries as dealers and sellers write them', () => {
  it.each([
    ['en', 'Scotland, 1972'],
    ['fr', 'Espagne, 1972\nCuir'],
    ['de', 'Portugal, 1972'],
    ['it', 'Borsa a mano, Portogallo, 1972. Ottime condizioni.'],
    ['nl', 'Handtas, Frankrijk, ca. 1972, messing slot'],
    ['ja', 'フランス製、1972年。'],
  ])('a country and a year by themselves (%s)', (language, words) => {
    expect(heard('made', words, language)).toEqual(['made 1972-1972']);
    expect(heard('origin', words, language)).toHaveLength(1);
  });
  it.each([
    'Bought in Nice, France, 1972.',
    'My honeymoon: France, 1972, what a summer.',
    'A handbag that I purchased in Rome, Italy, 1972.',
  ])('but not where the year is of something else: %s', (words) =>
    expect([...heard('made', words, 'en'), ...heard('origin', words, 'en')]).toEqual([]),
  );
  it.each([
    ['en', 'Made in 1982... or was it 1984?'],
    ['de', 'Hergestellt 1982... oder 1984?'],
    ['fr', 'Fabriqué en 1982… ou 1984 ?'],
    ['es', 'Fabricado en 1982... ¿o 1984?'],
    ['nl', 'Gemaakt in 1982... of was het 1984?'],
  ])('a seller who wavers states nothing (%s)', (language, words) =>
    expect(heard('made', words, language)).toEqual([]),
  );
  it('what a code is read to say is the making, and a log of repairs is none', () => {
    expect(heard('made', 'Stamp KV0915: January 1995.', 'en')).toEqual(['made 1995-1995']);
    expect(heard('made', '2014: buckle polished by me.\n2019: cleaned.', 'en')).toEqual([]);
  });
  it('a year is no code, whatever word leads to it', () => {
    for (const [language, words] of [
      ['de', 'Geprägt ist 1987.'],
      ['en', 'The stamp: 1987'],
      ['fr', 'Poinçon : 1987'],
    ] as const)
      expect(heard('code', words, language)).toEqual([]);
    expect(heard('code', 'Geprägt ist 8411.', 'de')).toEqual(['code 8411']);
  });
  it.each([
    ['de', 'Von meiner Mutter Erna (Jahrgang 1934).'],
    ['nl', 'Van mijn oma, bouwjaar 1934.'],
    ['en', 'Bought along with the trunk, which was from 1934.'],
    ['fr', 'Le portefeuille, qui est de 1934, reste ici.'],
    ['ja', '1998年の旅行で使いました。'],
    ['en', 'They stopped making this shade in 1998.'],
  ])('of a person, another thing, an event or a run (%s): %s', (language, words) =>
    expect(heard('made', words, language)).toEqual([]),
  );
});

describe('things beside the piece', () => {
  it('a label in what comes along tells of that', () => {
    expect(heard('origin', 'The pouch has a label that says made in Turkey.', 'en')).toEqual([]);
    expect(heard('origin', 'The bag has a label that says made in Turkey.', 'en')).toEqual(['origin TR']);
  });
  it('an outlet where something else was bought sells no bag', () => {
    expect(heard('channel', 'Next to the outlet where I got my belt.', 'en')).toEqual([]);
    expect(heard('channel', 'I bought it in an outlet, with a belt.', 'en')).toEqual(['channel outlet']);
    expect(heard('channel', 'A boutique, and beside the boutique an outlet with the scarf I wanted.', 'en')).toEqual(
      [],
    );
  });
  it.each([
    ['en', 'On the shelf it looks unused, but the handles are dark.'],
    ['de', 'Sie könnte neu sein, aber der Boden hat Kratzer.'],
    ['fr', "Il semble être neuf sur l'image, mais la doublure est tachée."],
    ['it', 'Sembra mai usata, ma gli angoli sono consumati.'],
  ])('what only seems so is not so (%s): %s', (language, words) => {
    expect(heard('condition new', words, language)).toEqual([]);
    expect(heard('condition unused', words, language)).toEqual([]);
  });
  it('a code that a sign only seems to be is not read beside the one that it is', () => {
    const words = 'The stamp looks like KV0975 on my phone, but it is KV0915.';
    expect(heard('code', words, 'en')).toEqual(['code KV0915']);
    expect(heard('code', 'De stempel lijkt KV0386 op de foto, maar er staat KV0388.', 'nl')).toEqual(['code KV0388']);
  });
  it('what leather is likened to, it is not', () => {
    expect(heard('leather', 'Light, it feels like faux leather.', 'en')).toEqual([]);
    expect(heard('leather', 'ビニールレザーのように軽い。', 'ja')).toEqual([]);
  });
});
