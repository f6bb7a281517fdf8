import { expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import type { Gathered } from '../../../src/evidence';
import type { MakerFile } from '../../../src/maker/types';
import { monthSpan, type Span, widenSpan, yearSpan, yearsSpan } from '../../../src/span';
import { farTurnsOf, turnsOf } from '../../turning';
import { claim, ondrasse } from '../check/sample';
import { decoding, mark, reading } from './samples';
import { gathered, shown, stand } from './stands';

/*
 * Where the answer of a rule turns, as a date moves. Where it changes on purpose, `npm test -- unit/evidence/kept --update` writes it
 * anew.
 */

const day = (steps: number) => new Date(Date.UTC(1990, 0, 1) + steps * 86_400_000).toISOString().slice(0, 10);
const dayOf = (steps: number): Span => ({ from: day(steps), to: day(steps), precision: 'day' });

const said: Record<string, Claim[]> = {
  'a day': [claim('made', 'x', { span: dayOf(0) })],
  'a month': [claim('made', 'x', { span: monthSpan(1990, 1) })],
  'a year': [claim('made', 'x', { span: yearSpan(1990) })],
  'a year and a day': [claim('made', 'x', { span: widenSpan(yearSpan(1990), { before: 0, after: 1 }) })],
  'about a year': [claim('made', 'x', { span: { ...yearSpan(1990), about: true } })],
  'a decade': [claim('made', 'x', { span: yearsSpan(1990, 1993) })],
  'a year hardly read': [{ ...claim('made', 'x', { span: yearSpan(1990) }), confidence: 0.49 } as Claim],
  'a year read half': [{ ...claim('made', 'x', { span: yearSpan(1990) }), confidence: 0.5 } as Claim],
  'a purchase': [claim('bought', 'x', { span: yearSpan(1990) })],
  'a purchase about then': [claim('bought', 'x', { span: { ...yearSpan(1990), about: true } })],
  'a purchase within years': [claim('bought', 'x', { span: yearsSpan(1990, 1993) })],
};
const inTitle = (claims: Claim[]): Claim[] =>
  claims.map((one) => ({ ...one, at: { ...one.at, field: 'title' } }) as Claim);

it('what is claimed of a date, against a code of each day', async () => {
  const turns = Object.entries(said).flatMap(([name, claims]) =>
    (['description', 'title'] as const).map((field): [string, string[]] => [
      `${name}, in the ${field}`,
      farTurnsOf(-2600, 3300, 61, (steps) => {
        const own = [reading({ span: dayOf(steps), systemUsed: yearsSpan(1900, 2026), places: [], plant: null })];
        return stand(
          gathered({
            claims: field === 'title' ? inTitle(claims) : claims,
            decodings: [decoding('d', { readings: own })],
            maker: ondrasse,
          }),
        );
      }),
    ]),
  );
  await expect(shown(Object.fromEntries(turns))).toMatchFileSnapshot('./kept/turns-claimed.txt');
});

const periods: Record<string, (span: Span) => Partial<Gathered>> = {
  'the years of a system and of a plant': (span) => ({
    decodings: [
      decoding('d', {
        readings: [
          reading({
            span,
            systemUsed: yearsSpan(1990, 1992),
            plant: { code: 'KV', place: 'BE', used: [yearsSpan(1991, 1992)] },
          }),
        ],
      }),
    ],
  }),
  'the years of a system, and a claimed day': (span) => ({
    claims: [claim('made', 'x', { span })],
    decodings: [
      decoding('d', {
        readings: [reading({ span: null, systemUsed: yearsSpan(1990, 1992), places: [], plant: null })],
      }),
    ],
  }),
  'a material and a model': (span) => ({
    claims: [
      claim('made', 'x', { span }),
      claim('material', 'olive twill', { part: 'lining', material: 'olive twill' }),
      claim('material', 'suede', { part: 'lining', material: 'suede' }),
      claim('model', 'Carryall 30', { model: 'Carryall 30' }),
    ],
  }),
  'a hard material': (span) => ({
    claims: [claim('made', 'x', { span }), claim('material', 'coil zip', { part: 'zip', material: 'coil zip' })],
  }),
  'the years of a system, and every other date': (span) => ({
    claims: [
      claim('bought', 'b', { span }),
      claim('origin', 'DDR', { place: 'DDDE' }),
      claim('material', 'olive twill', { part: 'lining', material: 'olive twill' }),
      claim('material', 'suede', { part: 'lining', material: 'suede' }),
      claim('model', 'Carryall 30', { model: 'Carryall 30' }),
    ],
    marks: [mark('m', { spans: [span] })],
    decodings: [
      decoding('d', {
        readings: [
          reading({ span: null, systemUsed: yearsSpan(2004, 2006), plant: { code: 'KV', place: 'BE', used: [span] } }),
          reading({ span: null, systemUsed: yearsSpan(2005, 2007), probability: 0.09 }),
        ],
      }),
    ],
  }),
  'a material of one model only': (span) => ({
    claims: [
      claim('made', 'x', { span }),
      claim('model', 'Satchel', { model: 'Satchel' }),
      claim('model', 'Carryall 30', { model: 'Carryall 30' }),
      claim('material', 'sand suede', { part: 'trim', material: 'sand suede' }),
    ],
    maker: {
      ...ondrasse,
      models: [...ondrasse.models, { name: 'Satchel', runs: [{ made: ['1985', null] }] }],
      construction: [
        {
          part: 'trim',
          is: 'sand suede',
          models: ['Satchel'],
          used: ['1990', '1995'],
          strength: 'hard',
          sources: ['s'],
        },
        {
          part: 'trim',
          is: 'satin',
          not: ['suede'],
          models: ['Carryall 30'],
          used: ['1980', '1985'],
          strength: 'hard',
          sources: ['s'],
        },
      ],
    } as MakerFile,
  }),
  'a part that was replaced, and a piece restored': (span) => ({
    claims: [
      claim('made', 'x', { span }),
      claim('material', 'coil zip', { part: 'zip', material: 'coil zip' }),
      claim('replaced', 'r', { parts: [] }),
    ],
  }),
  'two dates of making': (span) => ({
    claims: [claim('made', 'x', { span }), claim('made', 'y', { span: { ...yearSpan(1990), about: true } })],
  }),
  'the first stamps': (span) => ({ claims: [claim('made', 'x', { span })], decodings: [decoding('d')] }),
  'a country that is no more': (span) => ({
    claims: [claim('made', 'x', { span }), claim('origin', 'DDR', { place: 'DDDE' })],
  }),
  'a mark': (span) => ({
    claims: [claim('made', 'x', { span })],
    marks: [mark('m', { spans: [yearsSpan(1990, 1992)] })],
  }),
  'a mark in the text, and a purchase': (span) => ({
    claims: [claim('bought', 'x', { span })],
    marks: [mark('m', { spans: [yearsSpan(1990, 1992)], foundIn: 'listing', photoId: null } as never)],
  }),
  'a purchase after a making': (span) => ({
    claims: [claim('made', 'x', { span: yearSpan(1990) }), claim('bought', 'y', { span })],
  }),
  'the day of the look': (span) => ({
    claims: [claim('made', 'x', { span }), claim('bought', 'y', { span })],
    now: '1992-05-05T10:00:00Z',
  }),
};

it('a day, against the periods of a maker, a country and a mark', async () => {
  const turns = Object.entries(periods).map(([name, given]): [string, string[]] => [
    name,
    farTurnsOf(-7400, 6000, 61, (steps) => stand(gathered({ maker: ondrasse, ...given(dayOf(steps)) }))),
  ]);
  await expect(shown(Object.fromEntries(turns))).toMatchFileSnapshot('./kept/turns-periods.txt');
});

it('words of age, by the year that is claimed', async () => {
  const words = {
    vintage: claim('age-word', 'x', { word: 'vintage', polarity: 'is' }),
    antique: claim('age-word', 'x', { word: 'antique', polarity: 'is' }),
    'not antique': claim('age-word', 'x', { word: 'antique', polarity: 'is-not' }),
    pale: claim('fresh-part', 'x', { polarity: 'is' }),
    'not pale': claim('fresh-part', 'x', { polarity: 'is-not' }),
  };
  const why: Record<string, Claim[]> = {
    '': [],
    ', stored': [claim('stored', 's', { polarity: 'is' })],
    ', not stored': [claim('stored', 's', { polarity: 'is-not' })],
    ', new': [claim('condition', 's', { condition: 'new' })],
    ', unused': [claim('condition', 's', { condition: 'unused' })],
    ', worn': [claim('condition', 's', { condition: 'worn' })],
    ', with a part replaced': [claim('replaced', 's', { parts: ['zip'] })],
  };
  const turns = Object.entries(words).flatMap(([name, word]) =>
    Object.entries(why).map(([more, besides]): [string, string[]] => [
      name + more,
      turnsOf(
        2026,
        (year) =>
          stand(
            gathered({
              claims: [claim('made', 'm', { span: yearSpan(year) }), word, ...besides],
              now: '2026-01-15T10:00:00Z',
            }),
          ),
        1900,
      ),
    ]),
  );
  await expect(shown(Object.fromEntries(turns))).toMatchFileSnapshot('./kept/turns-ages.txt');
});
