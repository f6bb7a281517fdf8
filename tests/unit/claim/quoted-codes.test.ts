import { expect, it } from 'vitest';
import { findClaims } from '../../../src/claim';
import { builtInMakers } from '../../../src/maker';
import { listingOf, ondrasse } from './listing-of';

const codesIn = (said: string, language: string, title = 'Ondrasse Carryall 30', makers = builtInMakers) =>
  findClaims(listingOf(title, said, language), makers).flatMap((claim) => (claim.kind === 'code' ? [claim.code] : []));
const codesOfNoFile = (said: string, language: string) => codesIn(said, language, 'Leather bag by Holloway', []);

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
  ['Stamp on the inner tab says VN 4 7 / 9 6 - I think', 'en', 'VN 4 7 / 9 6'],
  ['Innen ist ein Stempel "R 8 - 0 3 1 2", keine Ahnung', 'de', 'R 8 - 0 3 1 2'],
  ['Im Innenfach ist eine geprägte Nummer: 8 3 0 4 - 1 7. Höhe 24', 'de', '8 3 0 4 - 1 7'],
  ['Numéro gravé sous la languette: AB·1174.', 'fr', 'AB·1174'],
  ['Le tampon à l’intérieur indique 10 / 27', 'fr', '10 / 27'],
  ['Tiene un número por dentro: 35-0489.', 'es', '35-0489'],
  ['En la etiqueta interior pone B18-12.', 'es', 'B18-12'],
  ['Label binnenin: "DR 23-08".', 'nl', 'DR 23-08'],
  ['製造番号はタブに「ＯＬ０９９４」とあります。', 'ja', 'OL0994'],
  ['内側のタグに「VR1908」と記載があります。', 'ja', 'VR1908'],
  ['a leather patch inside with the number F9K-1147', 'en', 'F9K-1147'],
  ['stamped H.F. 6 5 0 3 to the gusset', 'en', 'H.F. 6 5 0 3'],
  // Where all is in capitals a word behind the code is no letters of it, however short.
  ['NUMERO E3055998 IN TASCA', 'it', 'E3055998'],
  ['NUMERO E3055998 DENTRO LA TASCHINA', 'it', 'E3055998'],
  ['SERIAL NUMBER AB 4417 ON THE TAB', 'en', 'AB 4417'],
])('a code of a maker that no file knows: %s', (said, language, code) =>
  expect(codesOfNoFile(said, language)).toEqual([code]),
);

it.each([
  ['Sotto la patta c’è un timbro con 4 0 8 2, poco leggibile', 'it', '4 0 8 2'],
  ['Stempel mit „R 6 / 8 1“ hinten', 'de', 'R 6 / 8 1'],
  ['In het vak nr. 30917, verder niets', 'nl', '30917'],
  ['On the underside, no. 51120', 'en', '51120'],
  ['Lleva un número grabado, parece que pone C14-207', 'es', 'C14-207'],
  ['There is a number stamped, I think it says HL 3310', 'en', 'HL 3310'],
  ['内側の革に「８０２２１」と打刻されています', 'ja', '80221'],
  ['Im Futter ist 77 204 eingestanzt', 'de', '77 204'],
  ['Le numéro, je crois : sous la patte ED 1190 est gravé', 'fr', 'ED 1190'],
  ['Has TN-4471 embossed by the zip', 'en', 'TN-4471'],
  ['Borsetta foderata in seta, impressa a secco 2248016', 'it', '2248016'],
  ['Auf der Lasche eingeprägt: GH 7712', 'de', 'GH 7712'],
  ['it reads RB 2206 on the small tag by the seam', 'en', 'RB 2206'],
  // Where on the piece it stands comes between.
  ['It has a stamp reading WS 0487 under the flap.', 'en', 'WS 0487'],
  ['Lleva grabado por detrás del bolsillo T2209.', 'es', 'T2209'],
  ['Dentro porta stampigliato M4410.', 'it', 'M4410'],
  ['Ha impresso all’interno della tasca M4410.', 'it', 'M4410'],
  ['Estampillé au dos de la languette R2041.', 'fr', 'R2041'],
  ['Gestempelt hinter der Lasche W3310.', 'de', 'W3310'],
  ['Gestempeld aan de binnenkant D5102.', 'nl', 'D5102'],
  ['es steht „LK 0417“ auf dem Etikett', 'de', 'LK 0417'],
  ['C’è scritto TF-5530 sulla linguetta', 'it', 'TF-5530'],
  ['er staat HV 1293 op het lipje', 'nl', 'HV 1293'],
  ['on lit BD 7741 sur la languette', 'fr', 'BD 7741'],
  ['pone MQ 3308 en la etiqueta de dentro', 'es', 'MQ 3308'],
  ['Unter der Klappe ist 6 1 9 eingeprägt', 'de', '6 1 9'],
])('a code with its word behind it, a number sign or a guess ahead: %s', (said, language, code) =>
  expect(codesOfNoFile(said, language)).toEqual([code]),
);

it.each([
  ['We sold 1200 printed catalogues last year', 'en'],
  ['a clasp of 925 stamped silver', 'en'],
  ['Strap drop 45, stamped leather', 'en'],
  ['Das Muster von 1987 ist geprägt', 'de'],
  ['Im Fach eine Rechnung Nr. 88231 vom Laden', 'de'],
  ['Label inside: no. 5 of 200', 'en'],
  ['Timbro con 14 carati', 'it'],
  ['Initials engraved in 1988', 'en'],
  ['Colour code BR2234 stamped inside the pocket', 'en'],
  ['It says A4 paper fits inside', 'en'],
  ['The ad says 100 % leather, pocket inside', 'en'],
  ['Auf Seite 3 steht B2B 2020 im Katalog', 'de'],
  ['Iniziali incise, 1990 circa', 'it'],
  ['Cuero grabado 30 x 20', 'es'],
  ['Cuir embossé, 30 x 22 imprimé', 'fr'],
  ['Gedrukt katoen van 140 gram, binnenvak nr. 2', 'nl'],
])('numbers beside such words that are no code: %s', (said, language) =>
  expect(codesOfNoFile(said, language)).toEqual([]),
);

it.each([
  ['Pocket inside: 2 of 15 cm', 'en'],
  ['Número de unidades: edición limitada, la mía es la nº 087/200', 'es'],
  ['inside pocket with 2 card slots and 1 zip', 'en'],
  ['Label: 100 % leather', 'en'],
  ['Innentasche: 12 x 15 cm', 'de'],
  ['número de teléfono: 600123456', 'es'],
])('numbers in and on a bag that are no code: %s', (said, language) =>
  expect(codesOfNoFile(said, language)).toEqual([]),
);

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

it.each<[string, string, object]>([
  ['Stamp inside pocket says KV 09 15', 'en', { by: 'words', words: 'Stamp inside pocket says' }],
  ['Date code: KV0915', 'en', { by: 'words', words: 'Date code' }],
  ['Numéro gravé sous la languette : AB·1174.', 'fr', { by: 'words', words: 'Numéro gravé sous la languette' }],
  ['En la etiqueta interior pone B18-12.', 'es', { by: 'place', words: 'etiqueta interior pone' }],
  ['製造番号はタブに「ＯＬ０９９４」とあります。', 'ja', { by: 'words', words: '製造番号はタブに' }],
  ['A nice bag, KV 0915, hardly worn.', 'en', { by: 'layout', words: 'Ondrasse' }],
])('by what a number is taken for a code: %s', (said, language, takenBy) => {
  const claims = findClaims(listingOf('Ondrasse bag', said, language), [ondrasse]);
  expect(claims.flatMap((claim) => (claim.kind === 'code' ? [claim.takenBy] : []))).toEqual([takenBy]);
});

it.each<[string, number, { by: string; words: string }]>([
  ['Date code KV0915.', 0.85, { by: 'words', words: 'Date code' }],
  ['Number under the tab: KV0915.', 0.7, { by: 'words', words: 'Number under the tab' }],
  ['It has a tag that reads KV0915.', 0.6, { by: 'place', words: 'tag that reads' }],
  ['"B 84 112" is stamped inside.', 0.7, { by: 'words', words: 'stamped' }],
])('the plainer the words that lead to a code, the surer it is: %s', (text, confidence, takenBy) => {
  const found = findClaims(listingOf('', text, null), []).filter((claim) => claim.kind === 'code');
  expect(found).toEqual([expect.objectContaining({ confidence, takenBy })]);
});

it.each([
  ['20817 stamped inside.', ['20817']],
  ['It has 20817 stamped inside.', ['20817']],
  ['It cost 12,20817 stamped inside.', []],
])('digits behind a stop or a comma begin no code: %s', (text, codes) => {
  const found = findClaims(listingOf('', text, null), []);
  expect(found.flatMap((claim) => (claim.kind === 'code' ? [claim.code] : []))).toEqual(codes);
});

it.each([
  ['Stamped leather 1978.', 'en'],
  ['Poinçon de 1990.', 'fr'],
  ['Tampon du 12.04.1998 sur la facture.', 'fr'],
  ['Timbro del 1998 sulla fattura.', 'it'],
  ['Lleva un sello de 1990.', 'es'],
  ['Stempel van 1990 op de bon.', 'nl'],
])('a stamp of a year is no code: %s', (said, language) => expect(codesOfNoFile(said, language)).toEqual([]));
