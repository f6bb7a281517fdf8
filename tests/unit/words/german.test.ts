import { expect, it } from 'vitest';
import type { CheckData } from '../../../src/check';
import type { FindingKind } from '../../../src/check/types';
import { monthSpan } from '../../../src/span';
import { sayFinding } from '../../../src/words';

type Case = { [Id in keyof CheckData]: [Id, FindingKind, CheckData[Id], string] }[keyof CheckData];
const cases: Case[] = [
  ['return-terms', 'agreement', { accepted: true, days: 14, words: null }, 'Rückgabe ist binnen 14 Tagen möglich.'],
  ['return-terms', 'gap', { accepted: false, days: null, words: null }, 'Das Angebot schließt die Rückgabe aus.'],
  [
    'seller-record',
    'agreement',
    {
      told: [
        { of: 'since', since: monthSpan(2016, 3) },
        { of: 'sales', count: 1 },
      ],
      least: null,
    },
    'Zum Konto steht da: Mitglied seit März 2016 und 1 Verkauf.',
  ],
  [
    'seller-record',
    'doubt',
    { told: [{ of: 'rating', words: '80%', count: 60 }], least: 0.85 },
    'Zum Konto steht da: Bewertung „80%“ aus 60 Urteilen. Das sind unter 85 % der besten Bewertung dort.',
  ],
  [
    'sale-channel',
    'doubt',
    { words: 'aus dem Outlet', maker: 'Ondrasse', channel: 'outlet' },
    'Im Angebot steht „aus dem Outlet“, aber Ondrasse hat keine Outlets.',
  ],
  ['grade-words', 'doubt', { words: ['AAA', '1:1'] }, 'Im Angebot steht „AAA“ und „1:1“.'],
  [
    'condition-words-agree',
    'doubt',
    { said: { words: 'neu', inData: false }, against: 'Kratzer' },
    'Im Angebot steht „neu“ und auch „Kratzer“.',
  ],
  [
    'condition-words-agree',
    'doubt',
    { said: { words: 'https://schema.org/NewCondition', inData: false }, against: 'Kratzer' },
    'In den Daten der Seite steht new condition, und im Angebot steht „Kratzer“.',
  ],
  [
    'metal-words-agree',
    'doubt',
    { solid: 'massives Gold', other: 'vergoldet', part: 'schnalle' },
    'Im Angebot steht „massives Gold“ und auch „vergoldet“, beides vom selben Teil („schnalle“).',
  ],
  [
    'size-plausible',
    'doubt',
    { side: 'width', words: '300 cm', mm: 3000, limit: 'largest' },
    'Die Breite ist mit „300 cm“ = 300 cm (118,1 Zoll) angegeben, das ist über 2 m.',
  ],
  [
    'measures-agree',
    'doubt',
    { side: 'strap', one: { words: '90 cm', mm: 900 }, other: { words: '40 in', mm: 1016 } },
    'Die Länge des Riemens ist einmal mit „90 cm“ = 90 cm (35,4 Zoll) und einmal mit „40 in“ = 101,6 cm (40 Zoll) angegeben.',
  ],
  [
    'size-against-model',
    'doubt',
    { model: 'Carryall 30', off: [{ side: 'width', mm: 254, words: '10 in', expectedMm: 300 }], fits: [] },
    'Das Angebot nennt Carryall 30, gibt aber an: Breite „10 in“ = 25,4 cm (10 Zoll) statt 30 cm (11,8 Zoll).',
  ],
  [
    'measures-proportion',
    'doubt',
    {
      fault: 'unit',
      model: 'Carryall 30',
      sides: [
        { side: 'width', mm: 118 },
        { side: 'height', mm: 83 },
      ],
      factor: 1 / 2.54,
      mistaken: 'inches-as-cm',
    },
    'Angegeben: Breite 11,8 cm (4,6 Zoll) und Höhe 8,3 cm (3,3 Zoll), jeweils um den Faktor 2,54 kleiner als bei Carryall 30. Das wäre erklärt, wenn Zoll als Zentimeter geschrieben sind.',
  ],
  [
    'measures-proportion',
    'doubt',
    {
      fault: 'shape',
      one: { side: 'width', mm: 400 },
      other: { side: 'height', mm: 120 },
      models: ['Carryall 30', 'Carryall 50'],
      least: 1.21,
      most: 1.43,
    },
    'Breite 40 cm (15,7 Zoll) ist das 3,3-Fache von Höhe 12 cm (4,7 Zoll); bei Carryall 30 und Carryall 50 ist es das 1,2 bis 1,4-Fache.',
  ],
  [
    'code-slot-possible',
    'contradiction',
    {
      shown: { from: 'photo', photo: 1, code: 'KV1995' },
      slot: 'month',
      value: '19',
      expected: { kind: 'range', first: '01', last: '12' },
      unlistedBy: null,
      near: { code: 'KV0995', differences: [] },
    },
    'Der Stempel in Foto 1 lautet KV1995: den Monat „19“ gibt es nicht, erwartet 01 bis 12. KV0995 wäre lesbar.',
  ],
  [
    'code-slot-possible',
    'gap',
    {
      shown: { from: 'typed', photo: null, code: 'QX0915' },
      slot: 'plant',
      value: 'QX',
      expected: { kind: 'plant', codes: 'KV, LT' },
      unlistedBy: 'Ondrasse',
      near: null,
    },
    'Der eingegebene Code ist QX0915: die Datei von Ondrasse nennt keine Werkstatt „QX“ und sagt nicht, dass sie alle nennt.',
  ],
];

it.each(cases)('says %s, a finding of the kind %s, in German: %j', (check, kind, data, statement) => {
  const said = sayFinding({ check, kind, data }, 'de').statement;
  expect(said.replace(/\u00a0/g, ' ')).toBe(statement);
});
