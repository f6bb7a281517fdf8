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
];

it.each(cases)('says %s, a finding of the kind %s, in German: %j', (check, kind, data, statement) => {
  const said = sayFinding({ check, kind, data }, 'de').statement;
  expect(said.replace(/\u00a0/g, ' ')).toBe(statement);
});
