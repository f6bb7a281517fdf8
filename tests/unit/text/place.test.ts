import { expect, test } from 'vitest';
import { findPlaces } from '../../../src/text';

const found = (text: string) => findPlaces(text).map(({ place, form }) => `${place} ${form}`);

test.each([
  ['Shoulder bag, made in France in 1994', ['FR made-in']],
  ['MADE IN ITALY', ['IT made-in']],
  ['Italian-made, very soft', ['IT made-in']],
  ['soft Italian calf', ['IT adjective']],
  ['fabriqué en France', ['FR made-in']],
  ["fabriquée à l'étranger, expédiée d'Allemagne", ['DE name']],
  ['Hergestellt in der Schweiz', ['CH made-in']],
  ['handgefertigt in Österreich', ['AT made-in']],
  ['fatta a mano in Italia', ['IT made-in']],
  ['Hecho en España', ['ES made-in']],
  ['gemaakt in Nederland', ['NL made-in']],
  ['gemaakt in de Verenigde Staten', ['US made-in']],
  ['フランス製のバッグ', ['FR made-in']],
  ['日本製', ['JP made-in']],
  ['Made in the U.S.A.', ['US made-in']],
  ['made in the USA', ['US made-in']],
  ['Made in England by hand', ['GB made-in']],
  ['Made in Czechoslovakia', ['CSHH made-in']],
  ['Fabriqué en Tchécoslovaquie', ['CSHH made-in']],
  ['Made in GDR', ['DDDE made-in']],
  ['Made in West Germany', ['DE made-in']],
  ['Made in Yugoslavia', ['YUCS made-in']],
  ['Made in Northern Ireland', ['GB made-in']],
  ['fabriqué en Suède', ['SE made-in']],
  ['Country of origin: Spain', ['ES made-in']],
  ['de fabrication française', ['FR made-in']],
  ['Produziert 2009 (Ungarn), wenig getragen', ['HU made-in']],
  ['Fab. 1998 (Espagne)', ['ES made-in']],
  ['Prodotta nel 2004 (Romania)', ['RO made-in']],
  ['Vervaardigd 2012 (Portugal)', ['PT made-in']],
  ['製造 2011年（イタリア）', ['IT made-in']],
  ['Made 2011 (UK)', ['GB made-in']],
  ['Bought 2009 (Italy)', ['IT name']],
  ['gekauft 2016 (Kroatien, Urlaub)', ['HR name']],
  ['Made 2009 (Italy trip photos)', ['IT name']],
])('%s', (text, places) => expect(found(text)).toEqual(places));

test.each([
  'suede lining, made in suede and calf',
  'grey jersey dust bag',
  'made in morocco leather',
  'red morocco with a panama weave',
  'ships to us within two days, please tell us more',
  'shop in New Jersey, New England stock',
  'a bone china cup in the photo',
  'Island find, man bag',
])('no country is read from "%s"', (text) => expect(found(text)).toEqual([]));

test('a country that is also a material counts after "made in"', () => {
  expect(found('Made in Morocco')).toEqual(['MA made-in']);
  expect(found('made in china')).toEqual(['CN made-in']);
  expect(found('Made in Turkey.')).toEqual(['TR made-in']);
});

test('positions are those of the text', () => {
  const text = 'Bought in Japan. Made in Great Britain, sold in Spain';
  for (const { words, start, end } of findPlaces(text)) expect(text.slice(start, end)).toBe(words);
  expect(found(text)).toEqual(['JP name', 'GB made-in', 'ES name']);
});

test('a name does not run across the end of a sentence', () => {
  expect(found('We love the North. Korea is not where it was made')).toEqual([]);
});

test('50,000 characters are read to their end', () => {
  const text = 'Made in France, from the Netherlands to Japan. '.repeat(1070);
  expect(findPlaces(text)).toHaveLength(3210);
});
