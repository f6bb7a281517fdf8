import { expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { builtInMakers } from '../../../src/maker';
import { listingOf } from './listing-of';

const codesIn = (said: string, language: string) =>
  findClaims(listingOf('Ondrasse Carryall 30', said, language), builtInMakers).flatMap((claim) =>
    claim.kind === 'code' ? [claim.code] : [],
  );

it.each([
  ['The date code is K V 0 9 1 5.', 'en', 'K V 0 9 1 5'],
  ['Date code: KV 0915', 'en', 'KV 0915'],
  ['stamped KV.0915 inside', 'en', 'KV.0915'],
  ['Code K/V/0915', 'en', 'K/V/0915'],
  ['the tab reads KV0915', 'en', 'KV0915'],
  ['auf der Lasche steht KV0915', 'de', 'KV0915'],
  ['Stempel: (K)V0915', 'de', '(K)V0915'],
  ['date code (A)2417', 'en', '(A)2417'],
  ['date code [A] 2417', 'en', '[A] 2417'],
  ['製造番号 KV0915', 'ja', 'KV0915'],
  ['製造番号：ＫＶ０９１５', 'ja', 'KV0915'],
  ['numero di serie: KV 09 15', 'it', 'KV 09 15'],
])('a code in a seller’s own words: %s', (said, language, code) => expect(codesIn(said, language)).toEqual([code]));

it.each([
  ['colour code BR2234', 'en'],
  ['Farbcode BR2234', 'de'],
  ['code couleur BR2234', 'fr'],
  ['codice colore BR2234', 'it'],
  ['código de color BR2234', 'es'],
  ['kleurcode BR2234', 'nl'],
  ['カラーコード BR2234', 'ja'],
  ['discount code BAG2026', 'en'],
  ['stock number AB1234', 'en'],
  ['ref. KV0915', 'en'],
  ['Art.-Nr. KV0915', 'de'],
  ['repair no. 55123', 'en'],
  ['bought on 12.04.1995', 'en'],
])('a number of something else is no code of the maker: %s', (said, language) =>
  expect(codesIn(said, language)).toEqual([]),
);
