import { describe, expect, it } from 'vitest';
import type { Claim } from '../../../src/claim/types';
import {
  hasSize,
  modelMm,
  namedModel,
  namingModel,
  numberedName,
  sizedModels,
  wordsNaming,
} from '../../../src/evidence/named-sides';
import type { Model } from '../../../src/maker/types';
import { claim, stated } from '../check/sample';
import { file, modelOf, page, size, told } from './sized';

describe('the model that a listing names', () => {
  const models: Model[] = [
    { name: 'Carryall' },
    { name: 'Carryall Large', aliases: ['Grande'] },
    { name: 'Satchel', aliases: ['Post Bag'] },
  ];
  const claimed = (words: string, confidence = 0.9) =>
    ({ ...claim('model', words, { model: words }, 'm'), confidence }) as Claim;
  const named = (title: string, field: string | null, ...claims: Claim[]) => {
    const listing = { title: stated(title), model: field === null ? [] : stated(field) };
    const found = namedModel(models, namingModel(claims, listing));
    return found && [found.model.name, found.words, ...found.claims].join('; ');
  };

  it('is that of its claims, then of its field, then of its title, the longest name first', () => {
    expect(named('Satchel', 'Grande', claimed('carryall'))).toBe('Carryall; carryall; m');
    expect(named('Satchel', 'Grande')).toBe('Carryall Large; Grande');
    expect(named('my old post-bag', null)).toBe('Satchel; my old post-bag');
    expect(named('Carryall large in red', null)).toBe('Carryall Large; Carryall large in red');
    expect(named('Tote', null, claimed('Weekender'))).toBeNull();
    expect(named('Satchel', null, claimed('Weekender'))).toBe('Satchel; Satchel');
  });

  it('is named by whole words, and by a claim that is sure', () => {
    expect(named('Satchels', null)).toBeNull();
    expect([0.49, 0.5].map((confidence) => named('-', null, claimed('Satchel', confidence)))).toEqual([
      null,
      'Satchel; Satchel; m',
    ]);
  });

  it('is named by the best value of a field alone, as is all that names it', () => {
    const listing = {
      title: [...stated('Tote'), ...stated('Satchel')],
      model: [...stated('Weekender'), ...stated('Satchel')],
    };
    expect(namedModel(models, namingModel([], listing))).toBeNull();
    expect(wordsNaming(namingModel([claimed('Post Bag')], listing))).toEqual(['Post Bag', 'Weekender', 'Tote']);
  });

  it('has a size of its own, or relatives whose name differs in the number', () => {
    const family = [
      modelOf('Carryall 30', size(30)),
      { name: 'Carryall 35' },
      modelOf('Carryall 40', size(40)),
      modelOf('Satchel', size(20)),
      modelOf('Tote 20', size(20)),
    ];
    const sized = (title: string) => {
      const { own, relatives } = sizedModels(family, namingModel([], { title: stated(title), model: [] }));
      return [own?.name ?? null, ...relatives.map(({ name }) => name)];
    };
    expect(sized('Carryall 30')).toEqual(['Carryall 30']);
    expect(sized('Carryall 35')).toEqual([null, 'Carryall 30', 'Carryall 40']);
    expect(sized('Carryall 45')).toEqual([null, 'Carryall 30', 'Carryall 40']);
    expect(sized('Carryall')).toEqual([null, 'Carryall 30', 'Carryall 40']);
    expect(sized('Satchel 20')).toEqual(['Satchel']);
    expect(sized('Weekender')).toEqual([null]);
  });

  it.each([
    ['Tote 9', null],
    ['Tote 09', null],
    ['Tote 10', 10],
    ['Tote 90', 90],
    ['Tote 91', null],
    ['Tote 100', null],
    ['30 Tote', 30],
    ['Tote 30 bag', 30],
    ['Tote 30cm', null],
    ['Tote30', null],
  ])('carries a width in its name: %s, %s', (name, number) => {
    expect(numberedName([], stated(name))).toEqual(number === null ? null : { name, number });
  });

  it('carries the number of its claims before that of its field, of which the best counts', () => {
    const claims = namingModel([claimed('Tote'), claimed('Tote 25'), claimed('Tote 28')], {
      title: [],
      model: [],
    }).model;
    expect(numberedName(claims, stated('Tote 30'))).toEqual({ name: 'Tote 25', number: 25 });
    expect(numberedName([], [...stated('Tote'), ...stated('Tote 30')])).toBeNull();
  });

  it('has a size in the file where a model of its name has', () => {
    const sized = [{ name: 'Carryall 30' }, modelOf('Tote 20', size(20))];
    expect(hasSize('my tote-20 bag', sized)).toBe(true);
    expect(hasSize('TOTE 20', sized)).toBe(true);
    expect(hasSize('Tote', sized)).toBe(false);
    expect(hasSize('Carryall 30', sized)).toBe(false);
    expect(hasSize('Tote 200', sized)).toBe(false);
  });

  it('is not wide by the number of another name that the file has for it', () => {
    const post = file(modelOf('Satchel', size(30), { aliases: ['Post 35'] }));
    const listing = { ...page('Post 35', ['width', 300]), model: stated('Post 35') };
    expect(told(listing, post).map((one) => one.split(':')[0])).toEqual(['size-read-0', 'model-size-width']);
    expect(hasSize('Post 35', post.models)).toBe(true);
  });

  it('is as long as its file says, in millimetres', () => {
    expect(modelMm(size(30, 21, 17))).toEqual({ mm: { width: 300, height: 210, depth: 170 }, toleranceMm: 10 });
    expect(modelMm(size(30, undefined, 17, { unit: 'mm' }))).toEqual({ mm: { width: 30, depth: 17 }, toleranceMm: 1 });
    expect(modelMm(size(10, 5, undefined, { unit: 'in', tolerance: 0.5 }))).toEqual({
      mm: { width: 254, height: 127 },
      toleranceMm: 12.7,
    });
  });
});
