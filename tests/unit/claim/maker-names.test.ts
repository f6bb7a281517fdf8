import { expect, it } from 'vitest';
import { possibleMakerName } from '../../../src/claim';
import { listingOf } from './listing-of';

it.each([
  ['Handtasche Brandt & Söhne Leder cognac', 'de', 'Brandt & Söhne'],
  ['Sac à main Maison Aubrac, cuir noir', 'fr', 'Maison Aubrac'],
  ['Vintage tas Ter Linden & Zonen, jaren 90', 'nl', 'Ter Linden & Zonen'],
  ['Schoudertas De Rijk, cognac', 'nl', 'De Rijk'],
  ['Van Oldenhove schoudertas, cognac', 'nl', 'Van Oldenhove'],
  ['Von der Aue Handtasche, Rindsleder', 'de', 'Von der Aue'],
  ['Del Prato borsa a tracolla', 'it', 'Del Prato'],
  ['De mooiste Oldenhove schoudertas', 'nl', 'Oldenhove'],
  ['Echte Van der Velde boekentas 1985', 'nl', 'Van der Velde'],
  ['Originale Arnsberg Aktentasche 1972', 'de', 'Arnsberg'],
  ['Cartera maletín Ubrique Hermanos Salcedo', 'es', 'Hermanos Salcedo'],
  ['Borsa Fratelli Orsini anni 50', 'it', 'Fratelli Orsini'],
  ['オルモ・ディ・ラーゴ ハンドバッグ 黒', 'ja', 'オルモ・ディ・ラーゴ'],
  ['Auction lot: ladies handbag by Holloway Fenn, 1960s', 'en', 'Holloway Fenn'],
  ['Bolso Sarrabla Tenor 35 marrón', 'es', 'Sarrabla'],
  ['Lot 212. Marlow & Pryce. A tan leather satchel', 'en', 'Marlow & Pryce'],
  ['Sac Aubrac. Cuir noir', 'fr', 'Aubrac'],
  ['Wenlow Forge & Sons satchel, oxblood', 'en', 'Wenlow Forge & Sons'],
  ['Musette Verlaine Sellier & Cie fauve', 'fr', 'Verlaine Sellier & Cie'],
  ['Aktentasche Hinrich Gold & Söhne', 'de', 'Hinrich Gold & Söhne'],
  ['Rugzak Lederwerf Van der Meulen 1988', 'nl', 'Lederwerf Van der Meulen'],
  ['Handtas Merle De Graaf cognac', 'nl', 'Merle De Graaf'],
  ['Borsa Sandrelli Di Lauro nera', 'it', 'Sandrelli Di Lauro'],
])('a maker that no file knows, by the shape of the words: %s', (title, language, name) =>
  expect(possibleMakerName(listingOf(title, '', language))).toBe(name),
);

it.each([
  ['Velmont and box', 'Velmont'],
  ['Velmont & Leather bag', 'Velmont'],
  ['Velmont and Bag', 'Velmont'],
  ['Velmont und Leder Tasche', 'Velmont'],
  ['Velmont Satchel & Strap', 'Velmont'],
  ['Velmont Tote & Wallinga pouch', 'Velmont'],
  ['Velmont De Luxe handbag', 'Velmont'],
])('nothing but what is surely of the name goes into it: %s', (title, name) =>
  expect(possibleMakerName(listingOf(title, ''))).toBe(name),
);
