import { expect, test } from 'vitest';
import { buildCase, correct, findingsOf, typedCode } from '../../../src/case';
import { parseMakerFile } from '../../../src/maker';
import { saySource } from '../../../src/words';
import { listingOf } from './sample-listing';

/** A maker file in which every entry has a source of its own, so that each can be followed to the buyer. */
const parsed = parseMakerFile({
  format: 1,
  maker: 'Ondrasse',
  stamped: { from: '1985', to: null, source: 'stamping ledger' },
  plants: [{ code: 'KV', place: 'BE', used: ['1988', '2003'], source: 'plant register' }],
  codeSystems: [
    {
      id: 'month-year',
      used: ['1990', '2006'],
      layout: [{ plant: 2 }, { month: 2 }, { year: 2 }],
      examples: [{ code: 'KV0195', reads: '1995-01, BE' }],
      source: 'foreman’s notebook',
    },
  ],
  construction: [
    { part: 'lining', is: 'olive twill', used: ['1970', '1980'], strength: 'hard', source: 'lining order book' },
  ],
  models: [
    {
      name: 'Carryall 30',
      made: ['1960', '1975'],
      size: { width: 30, height: 21, depth: 17, unit: 'cm', tolerance: 1 },
      source: 'spring catalogue',
    },
  ],
  trade: {
    discounts: 'never',
    newPriceFloor: [{ amount: 6000, currency: 'EUR', year: 2015 }],
    source: 'price lists',
  },
});
const file = parsed.ok ? parsed.file : null;

const words =
  'Ondrasse Carryall 30, new and unused, bought at the outlet, made in Belgium in 1995. Olive twill lining. Width 50 cm, height 45 cm, depth 40 cm.';
const built = () =>
  buildCase({
    listing: listingOf('Ondrasse Carryall 30', words, 6, {
      price: [{ value: { kind: 'sale', amount: '90', currency: 'EUR' }, words: '€90', from: 'page', certainty: 1 }],
    } as never),
    photos: [],
    corrections: correct([], typedCode('KV0195')),
    makers: [file!],
    now: '2026-01-15T10:00:00Z',
  });

test('each finding names the source that the maker file gives for the entry it uses', { timeout: 60_000 }, () => {
  const sources = new Map(findingsOf(built()).map(({ check, source }) => [check, saySource(source, 'en')]));
  const told = [
    'code-fits-maker',
    'plant-in-use',
    'plant-against-origin',
    'construction-against-date',
    'model-made-then',
    'size-against-model',
    'sale-channel',
  ].map((check) => sources.get(check));
  expect(told).toEqual([
    'maker file of Ondrasse: code systems (source: foreman’s notebook)',
    'maker file of Ondrasse: workshop KV (source: plant register)',
    'maker file of Ondrasse: workshop KV (source: plant register)',
    'maker file of Ondrasse: lining order book',
    'maker file of Ondrasse: years of Carryall 30 (source: spring catalogue)',
    'maker file of Ondrasse: size of Carryall 30 (source: spring catalogue)',
    'maker file of Ondrasse: how it is sold (source: price lists)',
  ]);
});

test('evidence on the time axis names its entry’s source, and the reading carries its system’s and plant’s', () => {
  const { evidence, decodings } = built();
  const texts = evidence.map(({ source }) => saySource(source, 'en'));
  expect(texts).toEqual(
    expect.arrayContaining([
      'maker file of Ondrasse: foreman’s notebook',
      'maker file of Ondrasse: plant register',
      'maker file of Ondrasse: lining order book',
      'maker file of Ondrasse: spring catalogue',
    ]),
  );
  const [reading] = decodings.flatMap(({ readings }) => readings);
  expect([reading?.system.source, reading?.plant?.source]).toEqual(['foreman’s notebook', 'plant register']);
});
