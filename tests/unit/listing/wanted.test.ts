import { describe, expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { builtInMakers } from '../../../src/maker';
import { readHtml } from './page';

const read = (title: string, text = 'Velmar Lane, brown leather.', rest = '') =>
  readHtml(
    `<main><h1>${title}</h1><p class="price">€180</p><div class="description"><p>${text}</p></div>${rest}</main>` +
      '<aside>Seller: <a href="/u/kistenweise">kistenweise</a> <button>Message seller</button></aside>',
  );
const kindOf = async (...from: Parameters<typeof read>) => (await read(...from)).kind;

describe('an ad of somebody who looks for a piece', () => {
  it.each([
    'WTB: Velmar Lane Tilda',
    '✨ looking to buy: Tilda in tan',
    "I'm looking for a Tilda, large",
    'Velmar Lane Tilda - wanted!',
    'Suche Velmar Lane Tilda',
    'Wir suchen eine Tilda',
    'Tilda 30 gesucht',
    'Je recherche un Tilda marron',
    'À la recherche d’un sac Tilda',
    'Cerco Tilda di Velmar Lane',
    'Borsa Tilda cercasi',
    'Busco Tilda mediano',
    'Se busca bolso Tilda',
    'Ik zoek een Tilda',
    'Tas Tilda gezocht',
    '【求む】Velmar Lane Tilda',
    'Velmar Lane のバッグを探しています',
  ])('offers none, its title says so: %s', async (title) => {
    const { kind, page, problems, title: own, price } = await read(title);
    expect([kind, page?.kind, own, price]).toEqual(['none', 'none', [], []]);
    expect(problems.map(({ code }) => code)).toContain('page-is-a-wanted-ad');
  });

  it.each([
    ['Tilda 30', 'Hello, I am looking for this bag in green. If anyone has one, send me a photo.'],
    ['Tilda 30', 'Moin! Ich suche die Tilda in Grün. Wer verkauft eine?'],
    ['Tilda 30', 'Bonsoir, je cherche ce sac en vert. Si vous en avez un, écrivez-moi.'],
    ['Tilda 30', 'Salve, cerco la Tilda verde. Chi ce l’ha mi scriva.'],
    ['Tilda 30', 'Hola, busco la Tilda en verde. Si alguien la tiene, que me escriba.'],
    ['Tilda 30', 'Hoi, ik zoek de Tilda in groen. Wie heeft er een?'],
    ['Tilda 30', '緑のバッグを探しています。お持ちの方はコメントください。'],
  ])('offers none, it opens so and asks: %s, %s', async (title, text) => {
    expect(await kindOf(title, text)).toBe('none');
  });

  it('is told by the page’s row for the kind of ad', async () => {
    const row = (name: string, value: string) => `<dl><dt>${name}</dt><dd>${value}</dd></dl>`;
    expect(await kindOf('Tilda 30', undefined, row('Anzeigentyp', 'Gesuch'))).toBe('none');
    expect(await kindOf('Tilda 30', undefined, row('Anzeigentyp', 'Angebot'))).toBe('listing');
    expect(await kindOf('Tilda 30', undefined, row('Farbe', 'Gesuch'))).toBe('listing');
  });

  it('says nothing of a piece on offer', async () => {
    const listing = await read('Looking for an Ondrasse Carryall 30', 'Worn is fine, made before 1990 if you can.');
    expect(findClaims(listing, builtInMakers)).toEqual([]);
  });
});

describe('an offer', () => {
  it.each([
    'Tilda looking for a new owner',
    'Looking for a loving home: Tilda 30',
    'Looking for something special? Velmar Lane Tilda',
    'Most wanted Tilda 30',
    'Suche neuen Besitzer für meine Tilda',
    'Tilda sucht neues Zuhause',
    'Sehr gesucht: Tilda 30',
    'Neues Zuhause gesucht für Tilda',
    'Recherché : Tilda 30 vert',
    'Cherche nouveau foyer pour ma Tilda',
    'Cerco casa per la mia Tilda',
    'La Tilda que estabas buscando',
    'Busco dueña para esta Tilda',
    'Zoekt nieuw baasje: Tilda',
    'Veel gezochte Tilda',
    '新しい持ち主を探しています Tilda',
  ])('may look for somebody: %s', async (title) => {
    expect(await kindOf(title)).toBe('listing');
  });

  it.each([
    'I am looking for a smaller one, so this has to go. If anyone has questions, ask.',
    'Ich suche nichts dafür, nur den vollen Preis. Wer hat Fragen?',
    'Vendo perché cerco spazio. Se avete domande scrivetemi.',
    '大切に使ってくださる方を探しています。予算はご相談ください。',
  ])('may wish for something else: %s', async (text) => {
    expect(await kindOf('Velmar Lane Tilda', text)).toBe('listing');
  });

  it('that can be bought on the page is one, whatever it is called', async () => {
    expect(await kindOf('Wanted: the Tilda', undefined, '<button>Add to basket</button>')).toBe('listing');
  });
});
