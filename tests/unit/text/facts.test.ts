import { describe, expect, it } from 'vitest';
import {
  findAvailability,
  findBids,
  findConditions,
  findItemCodes,
  findMemberSince,
  findPayment,
  findRatings,
  findReturns,
  findSalesCounts,
  findShipping,
  findTraders,
  findWatchers,
} from '../../../src/text';

const now = '2026-11-25';
const values = <T>(found: { value: T }[]) => found.map((item) => item.value);

describe('number of watchers', () => {
  it.each([
    ['12 people are watching this', [12]],
    ['12 watchers', [12]],
    ['Beobachter: 4', [4]],
    ['8 Beobachter', [8]],
    ['35 favoris', [35]],
    ['1.2k likes', [1200]],
    ['いいね 35', [35]],
    ['Preferiti: 7', [7]],
    ['23 keer bewaard', [23]],
    ['38 Mal gemerkt', [38]],
    ['12 fois ajouté aux favoris', [12]],
    ['vu 38 fois', []],
    ['dreimal getragen, 2 Mal gereinigt', []],
    ['watch strap, 30 cm', []],
  ])('%s → %j', (text, expected) => expect(values(findWatchers(text))).toEqual(expected));
});

describe('the French word for used', () => {
  it.each([
    ['Usagé, poignées noircies', ['used']],
    ['Sac usagé', ['used']],
    ['Usage quotidien possible', []],
    ['jamais usagé', []],
  ])('%s → %j', (text, expected) => expect(values(findConditions(text))).toEqual(expected));
});

describe('number of bids', () => {
  it.each([
    ['7 bids', [7]],
    ['[ 0 bids ]', [0]],
    ['No bids yet', [0]],
    ['Gebote: 3', [3]],
    ['11 enchères', [11]],
    ['5 pujas', [5]],
    ['入札：12', [12]],
    ['9 biedingen', [9]],
    ['forbids copying', []],
  ])('%s → %j', (text, expected) => expect(values(findBids(text))).toEqual(expected));
});

describe('number of sales', () => {
  it.each([
    ['1,234 sales', [1234]],
    ['56 items sold', [56]],
    ['Verkaufte Artikel: 56', [56]],
    ['12 ventes', [12]],
    ['1.024 vendite', [1024]],
    ['No sales yet', [0]],
    ['販売実績: 45', [45]],
    ['£450 sales price', []],
  ])('%s → %j', (text, expected) => expect(values(findSalesCounts(text))).toEqual(expected));
});

describe('when the seller joined', () => {
  const spans = (text: string, language: string | null = null) =>
    findMemberSince(text, { language, now }).map(({ value }) => [value.from, value.to]);
  it.each([
    ['Member since March 2019', [['2019-03-01', '2019-03-31']]],
    ['Joined in 2015', [['2015-01-01', '2015-12-31']]],
    ['Mitglied seit 12.03.2014', [['2014-03-12', '2014-03-12']]],
    ['Membre depuis 2012', [['2012-01-01', '2012-12-31']]],
    ['Iscritto dal 2018', [['2018-01-01', '2018-12-31']]],
    ['Miembro desde enero de 2020', [['2020-01-01', '2020-01-31']]],
    ['Lid sinds 2011', [['2011-01-01', '2011-12-31']]],
    ['登録日: 2016年6月', [['2016-06-01', '2016-06-30']]],
    ['Member for ages', []],
    ['Bag made in 1994', []],
  ])('%s → %j', (text, expected) => expect(spans(text)).toEqual(expected));

  it('counts years back from the reading day and says that it is about', () => {
    expect(values(findMemberSince('Member since 6 years', { language: 'en', now }))).toEqual([
      { from: '2019-01-01', to: '2020-12-31', precision: 'range', about: true },
    ]);
  });
});

describe('private or trading seller', () => {
  it.each([
    ['Privatverkauf, keine Rücknahme', ['private']],
    ['Gewerblicher Anbieter', ['trader']],
    ['Seller type: private seller', ['private']],
    ['Vendeur professionnel', ['trader']],
    ['Particulier', ['private']],
    ['Verkäufer: Firma', ['trader']],
    ['Seller type: private', ['private']],
    ['die Firma fertigt nur Taschen', []],
    ['Venditore privato', ['private']],
    ['Zakelijke verkoper', ['trader']],
    ['古物商許可 第1号', ['trader']],
    ['a private pocket inside', []],
    ['un sac très particulier pour elle', []],
  ])('%s → %j', (text, expected) => expect(values(findTraders(text))).toEqual(expected));
});

describe('whether the piece is still offered', () => {
  it.each([
    ['SOLD', ['sold']],
    ['This item has been sold.', ['sold']],
    ['Sold by a private collector', []],
    ['Sold as seen', []],
    ['1,234 sold', []],
    ['Verkauft', ['sold']],
    ['Verkauft von Privat', []],
    ['Vendu', ['sold']],
    ['Reserviert', ['reserved']],
    ['予約済み', ['reserved']],
    ['売り切れ', ['sold']],
    ['売り切れ次第終了します', []],
    ['Add to basket', ['offered']],
    ['Annonce supprimée', ['removed']],
    ['not sold yet', []],
  ])('%s → %j', (text, expected) => expect(values(findAvailability(text))).toEqual(expected));
});

describe('return terms', () => {
  it.each([
    ['No returns.', [{ accepted: false, days: null }]],
    ['30 day returns', [{ accepted: true, days: 30 }]],
    ['Returns accepted within 14 days', [{ accepted: true, days: 14 }]],
    ['Returns are not accepted', [{ accepted: false, days: null }]],
    ['Keine Garantie oder Rücknahme', [{ accepted: false, days: null }]],
    ['14 Tage Widerrufsrecht', [{ accepted: true, days: 14 }]],
    ['Kein Rückgaberecht', [{ accepted: false, days: null }]],
    ['Ni repris ni échangé', [{ accepted: false, days: null }]],
    ['Retours acceptés sous 14 jours', [{ accepted: true, days: 14 }]],
    ['Non si accettano resi', [{ accepted: false, days: null }]],
    ['Resi accettati entro 14 giorni', [{ accepted: true, days: 14 }]],
    ['No se aceptan devoluciones', [{ accepted: false, days: null }]],
    ['Geen retour', [{ accepted: false, days: null }]],
    ['Retourneren mogelijk binnen 2 weken', [{ accepted: true, days: 14 }]],
    ['返品不可', [{ accepted: false, days: null }]],
    ['returns home in style', []],
    ['Full refund if you write to me inside 14 days.', [{ accepted: true, days: 14 }]],
    ['Remboursement sous 14 jours si ça ne convient pas.', [{ accepted: true, days: 14 }]],
    ['Bei Nichtgefallen Geld zurück innerhalb von 10 Tagen.', [{ accepted: true, days: 10 }]],
    ['Rimborso entro 7 giorni dalla consegna.', [{ accepted: true, days: 7 }]],
    [
      'Te reembolso si me la devuelves en 5 días.',
      [
        { accepted: true, days: 5 },
        { accepted: true, days: 5 },
      ],
    ],
    ['Niet tevreden? Binnen 8 dagen geld terug.', [{ accepted: true, days: 8 }]],
    [
      '到着後7日以内であれば返金いたします。',
      [
        { accepted: true, days: 7 },
        { accepted: true, days: 7 },
      ],
    ],
    ['Keine Erstattung, auch nicht nach 14 Tagen.', []],
    ['Je me suis fait rembourser le fermoir cassé.', []],
    ['No refunds after 14 days.', [{ accepted: false, days: null }]],
  ])('%s → %j', (text, expected) => expect(values(findReturns(text))).toEqual(expected));
});

describe('codes with the word that announces them', () => {
  it.each([
    ['Date code: KV0915', ['KV0915']],
    ['Item number: 4455-AB', ['4455-AB']],
    ['Artikelnummer: 99120', ['99120']],
    ['Réf. A1203', ['A1203']],
    ['シリアルナンバー：KV0915', ['KV0915']],
    ['刻印はKV0915です。', ['KV0915']],
    ['刻印は「KV 0915」です', ['KV 0915']],
    ['シリアル番号：TV 1204', ['TV 1204']],
    ['刻印は1995年のものです', []],
    ['刻印は30cmの位置です', []],
    ['刻印は消えて読めません。', []],
    ['code is illegible', []],
  ])('%s → %j', (text, expected) => expect(values(findItemCodes(text))).toEqual(expected));
});

describe('shipping terms', () => {
  it.each([
    ['Free postage', ['free']],
    ['Nur Abholung', ['pickup-only']],
    ['zzgl. Versand', ['charged']],
    ['送料込み', ['free']],
    ['Spedizione gratuita', ['free']],
    ['Dispatched with tracked delivery', ['stated']],
    ['a bag', []],
  ])('%s → %j', (text, expected) => expect(findShipping(text).map(({ value }) => value.kind)).toEqual(expected));
});

describe('ways to pay', () => {
  it.each([
    ['Bank transfer or cash on collection', ['bank-transfer', 'cash']],
    ['No cheques, credit card only', ['card']],
    ['Überweisung', ['bank-transfer']],
    ['Virement ou espèces', ['bank-transfer', 'cash']],
    ['銀行振込', ['bank-transfer']],
    ['お支払いは振込で', ['bank-transfer']],
    ['Geld per Post', ['by-post']],
    ['key pouch', []],
  ])('%s → %j', (text, expected) => expect(values(findPayment(text))).toEqual(expected));
});

describe('ratings of any scale', () => {
  const shares = (text: string) =>
    findRatings(text).map(({ value, best, share, count }) => [value, best, share, count]);
  it.each([
    ['4.5/5', [[4.5, 5, 0.9, null]]],
    ['4,1 su 5', [[4.1, 5, 0.82, null]]],
    ['4.8 ★ (178)', [[4.8, null, 0.96, 178]]],
    ['98.5% positive feedback', [[98.5, 100, 0.985, null]]],
    ['8,9/10 (189 Bewertungen)', [[8.9, 10, 0.89, 189]]],
    ['5つ星のうち4.2', [[4.2, 5, 0.84, null]]],
    ['評価：99.1%', [[99.1, 100, 0.991, null]]],
    ['Bewertung: 98 %', [[98, 100, 0.98, null]]],
    ['Rating 30% off', []],
    ['30% off', []],
    ['7/5', []],
  ])('%s → %j', (text, expected) => {
    const got = shares(text);
    expect(got.length).toBe(expected.length);
    got.forEach((row, index) => {
      const want = expected[index]!;
      expect([row[0], row[1], row[3]]).toEqual([want[0], want[1], want[3]]);
      expect(row[2]).toBeCloseTo(want[2] as number, 6);
    });
  });
});
