import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import { editionsNamed, fromMaker } from '../../../src/evidence/from-maker';
import type { Model, Run } from '../../../src/maker/types';
import { yearsSpan } from '../../../src/span';
import { file, model, told } from './called-up';
import { inFile } from './samples';

describe('a model that the words name', () => {
  const of = (name: string, ...models: Model[]) => fromMaker([model(name)], file([], { models }));

  it('is told whole, by the years of its runs, by its name or another one, written in any way', () => {
    const satchel: Model = { name: 'Satchel', aliases: ['The Post'], runs: [{ made: ['1990', '1995'] }] };
    const wanted = (words: string) => ({
      id: 'model-mo',
      about: 'date',
      from: { kind: 'construction', id: 'mo' },
      basis: `model:${words.toLowerCase()}`,
      spans: [yearsSpan(1990, 1995)],
      reach: [{ from: '1988-12-31', to: '1996-12-31', precision: 'range' }],
      places: [],
      strength: 'soft',
      says: { kind: 'model', field: 'description', words, maker: 'Ondrasse', model: 'Satchel' },
      source: { ...inFile, part: { of: 'model', name: 'Satchel' }, sources: [] },
    });
    expect(of('SATCHEL', satchel)).toEqual([wanted('SATCHEL')]);
    expect(of('the post', { name: 'Tote' }, satchel)).toEqual([wanted('the post')]);
    expect(of('Satchel bag', satchel)).toEqual([]);
  });

  it('is the first of its name, with the sources that the file gives', () => {
    const twice: Model[] = [
      { name: 'Satchel', runs: [{ made: ['1990', '1995'], sources: ['a'] }], sources: ['m'] },
      { name: 'satchel', runs: [{ made: ['2000', '2005'] }] },
    ];
    expect(of('satchel', ...twice)).toMatchObject([
      { spans: [yearsSpan(1990, 1995)], source: { part: null, sources: ['a'] } },
    ]);
  });

  it('is nothing where the words only liken the piece to it', () => {
    const maker = file([], { models: [{ name: 'Satchel', runs: [{ made: ['1990', '1995'] }] }] });
    const sure = (confidence: number) => told([{ ...model('Satchel'), confidence } as Claim], maker);
    expect([0.49, 0.5].map(sure)).toEqual([[], ['model-mo model 1990-1995 soft']]);
  });
});

describe('editions that the words name', () => {
  const named = (run: Run, ...words: string[]) => editionsNamed({ name: 'Satchel', runs: [run] }, words);
  it.each<[string, Run, string[], string[]]>([
    ['one', { kind: 'edition', name: 'Harbour' }, ['the harbour edition'], ['Harbour']],
    ['one that any of the words name', { kind: 're-issue', name: 'Harbour' }, ['bag', 'Harbour'], ['Harbour']],
    ['none by a part of a word', { kind: 'edition', name: 'Harbour' }, ['harbours'], []],
    ['none of the usual make', { name: 'Harbour' }, ['Harbour'], []],
    ['none without a name', { kind: 'edition' }, ['edition'], []],
    ['none where nothing is said', { kind: 'edition', name: 'Harbour' }, [], []],
  ])('%s', (_, run, words, wanted) => {
    expect(named(run, ...words)).toEqual(wanted);
  });
  it('none of a model without runs', () => {
    expect(editionsNamed({ name: 'Satchel' }, ['Satchel'])).toEqual([]);
  });
});
