import { describe, expect, it } from 'vitest';
import { buildCase, correct, typedCode } from '../../../src/case';
import { parseMakerFile } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { sayQuestion } from '../../../src/words';
import { photoRead } from '../../photo-read';
import { inEnglish } from '../../said';
import { listingOf } from './sample-listing';

const size = (width: number) => ({ width, unit: 'cm', tolerance: 1 });
const maker = (value: object): MakerFile => {
  const result = parseMakerFile({ format: 2, maker: 'Velmar Lane', ...value });
  if (!result.ok) throw new Error(result.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'));
  return result.file;
};
const interleaved = {
  layout: [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }],
  examples: [{ code: 'KV0915', reads: '1995-01' }],
};

/** What is found of a listing of Velmar Lane: kind and check of each finding that compares something with the file. */
function found(
  file: MakerFile,
  description: string,
  { code, title = 'Velmar Lane Tote' }: { code?: string; title?: string } = {},
) {
  const kase = buildCase({
    listing: listingOf(title, description),
    photos: [],
    corrections: code ? correct([], typedCode(code)) : [],
    makers: [file],
    now: '2026-11-29T10:00:00.000Z',
  });
  const findings = kase.outcomes.flatMap((outcome) => ('findings' in outcome ? outcome.findings : []));
  return {
    kinds: (check: string) => findings.filter((one) => one.check === check).map(({ kind }) => kind),
    says: (check: string) => findings.filter((one) => one.check === check).map((one) => inEnglish(one).statement),
  };
}

describe('sizes and years of a model in several rows', () => {
  const runs = [
    { made: ['1980', '1990'], size: size(25) },
    { made: ['1991', '2005'], size: size(31) },
    { made: ['2012', '2012'], kind: 'edition', name: 'Tote Gala', size: size(40) },
  ];
  const file = maker({ models: [{ name: 'Tote', runs }] });

  it('hold a size against the row of its date: the other size of the model is no doubt', () => {
    expect(found(file, 'Made in 1985. Width 25 cm.').kinds('size-against-model')).toEqual(['agreement']);
    expect(found(file, 'Made in 1998. Width 31 cm.').kinds('size-against-model')).toEqual(['agreement']);
    expect(found(file, 'Made in 1998. Width 31 cm.').kinds('model-made-then')).toEqual(['agreement']);
    expect(found(file, 'Made in 1998. Width 25 cm.').says('size-against-model')).toEqual([
      'The listing says Tote, but states width “25 cm” = 25 cm (9.8 in) and not 31 cm (12.2 in) (the size made from 1991 to 2005).',
    ]);
  });

  it('hold it against the row that fits best where no date tells, and against all where none is of the date', () => {
    expect(found(file, 'Width 25 cm.').kinds('size-against-model')).toEqual(['agreement']);
    expect(found(file, 'Width 31 cm.').kinds('size-against-model')).toEqual(['agreement']);
    expect(found(file, 'Width 22 cm.').kinds('size-against-model')).toEqual(['doubt']);
    expect(found(file, 'Made in 2008. Width 31 cm.').kinds('size-against-model')).toEqual(['agreement']);
  });

  it('hold it against the edition that is named, and the years against all rows together', () => {
    const edition = found(file, 'Made in 2012. Width 40 cm.', { title: 'Velmar Lane Tote Gala' });
    expect(edition.kinds('size-against-model')).toEqual(['agreement']);
    expect(found(file, 'Made in 1998. Width 31 cm.').says('model-made-then')).toEqual([
      'Velmar Lane made the Tote from 1980 to 2005 or in 2012, and it is said to be of “1998”.',
    ]);
    expect(found(file, 'Made in 1970. A tote.').kinds('model-made-then')).toEqual(['doubt']);
    const open = maker({ models: [{ name: 'Tote', runs: [...runs, { size: size(20) }] }] });
    expect(found(open, 'Made in 1970. A tote.').kinds('model-made-then')).toEqual([]);
  });
});

describe('what is disputed, withdrawn or hedged', () => {
  const lining = { part: 'lining', is: 'olive twill', used: ['1970', '1985'], strength: 'hard' };
  const said = (fact: object, code = 'KV0915') =>
    found(
      maker({
        codeSystems: [{ id: 'one', used: ['1990', '2006'], ...interleaved }],
        construction: [{ ...lining, ...fact }],
      }),
      'Lining of olive twill.',
      { code },
    ).kinds('construction-against-date');

  it('makes no contradiction: a disputed fact and one with an open exception are soft, a withdrawn one says nothing', () => {
    expect(said({})).toEqual(['contradiction']);
    expect(said({ standing: { is: 'disputed', why: 'seen in 1992' } })).toEqual(['doubt']);
    expect(said({ exceptions: [{ what: 'some workshops used up old stock' }] })).toEqual(['doubt']);
    expect(said({ standing: { is: 'withdrawn' } })).toEqual([]);
    expect(said({ strength: undefined })).toEqual(['doubt']);
  });

  it('“about” is five years off either way and never hard, “unknown” ends nothing', () => {
    expect(said({ used: ['1970', 'about 1985'] })).toEqual(['doubt']);
    expect(said({ used: ['1970', 'about 1991'] })).toEqual([]);
    expect(said({ used: ['1970', 'unknown'] })).toEqual(['agreement']);
  });

  it('exceptions hold for their models and years', () => {
    expect(said({ exceptions: [{ what: 'later on some', used: ['1994', '1996'] }] })).toEqual(['agreement']);
    expect(said({ exceptions: [{ what: 'purses', models: ['Purse'] }] })).toEqual(['contradiction']);
  });

  it('of a code system or a plant leaves the code a habit', () => {
    const dated = (system: object, plant: object = {}) =>
      found(
        maker({
          plants: [{ code: 'KV', place: 'BE', used: ['1980', null], ...plant }],
          codeSystems: [{ id: 'one', used: ['1990', '2006'], ...interleaved, ...system }],
        }),
        'Made in 1970. Made in Italy.',
        { code: 'KV0915' },
      );
    expect(dated({}).kinds('code-against-claimed-date')).toEqual(['contradiction']);
    expect(dated({ standing: { is: 'disputed' } }).kinds('code-against-claimed-date')).toEqual(['doubt']);
    expect(dated({}).kinds('plant-against-origin')).toEqual(['contradiction']);
    expect(dated({}, { standing: { is: 'disputed' } }).kinds('plant-against-origin')).toEqual(['doubt']);
    expect(dated({}, { standing: { is: 'withdrawn' } }).kinds('plant-against-origin')).toEqual([]);
    expect(dated({ standing: { is: 'withdrawn' } }).kinds('code-against-claimed-date')).toEqual([]);
    expect(dated({ strength: 'soft' }).kinds('code-against-claimed-date')).toEqual(['doubt']);
  });
});

describe('where the code sits', () => {
  const file = maker({
    models: [{ name: 'Tote' }],
    carriers: [
      { kind: 'stamp', where: 'on the back' },
      { kind: 'tab', where: 'behind the inner pocket, on the leather tab', models: ['Tote'], used: ['1990', null] },
      { kind: 'stamp', where: 'under the flap', models: ['Tote'], used: ['1970', '1989'] },
      { kind: 'chip', where: 'under the lining', models: ['Tote'], readable: false },
    ],
  });
  const asked = (title: string, description: string) => {
    const kase = buildCase({
      listing: { ...listingOf(title, description), photos: listingOf(title, description).photos.slice(0, 1) },
      photos: [photoRead('p1')],
      corrections: [],
      makers: [file],
      now: '2026-11-29T10:00:00.000Z',
    });
    return kase.questions.filter(({ id }) => id === 'stamp-photo').map((one) => sayQuestion(one, 'en'));
  };
  it('is said in the question for its photo, by model and period, where a buyer can read it', () => {
    const ask = 'Could you add a sharp, close photo of the stamped code, straight from above and in daylight?';
    const at = (where: string) => [`${ask} It should be here: “${where}”.`];
    expect(asked('Velmar Lane Tote', 'Made in 1995.')).toEqual(at('behind the inner pocket, on the leather tab'));
    expect(asked('Velmar Lane Tote', 'Made in 1980.')).toEqual(at('under the flap'));
    expect(asked('Velmar Lane Purse', 'Made in 1980.')).toEqual(at('on the back'));
  });
});

describe('parts that no listing is sorted by', () => {
  const clasp = { part: 'clasp', is: 'steel', not: ['brass'], used: ['1970', '2000'], strength: 'hard' };
  const said = (parts: object[], fact: object, words: string) =>
    found(maker({ parts, construction: [{ ...clasp, ...fact }] }), `Made in 1980. ${words}`).says(
      'construction-against-date',
    );

  it('are found by their own words among the metal parts, and called by them', () => {
    expect(said([], {}, 'Brass hardware.')).toEqual([]);
    const own = [{ id: 'bridge', words: ['buckle'] }];
    expect(said(own, { part: 'bridge' }, 'Brass buckle.')).toEqual([
      "The listing says “Brass buckle”, but Velmar Lane's bridge was steel from 1970 to 2000, and it is said to be of “1980”.",
    ]);
  });
});
