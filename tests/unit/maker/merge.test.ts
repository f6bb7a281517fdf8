import { expect, test } from 'vitest';
import { builtInMakers, mergeMakerFiles, parseMakerFile } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';

const fileOf = (value: object): MakerFile => {
  const result = parseMakerFile({ format: 1, maker: 'Ondrasse', ...value });
  if (!result.ok) throw new Error(result.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'));
  return result.file;
};

const mine = fileOf({
  aliases: ['Maison Ondrasse'],
  sources: ['my catalogue'],
  plants: [
    { code: 'KV', place: 'BE', used: ['1982', '2003'] },
    { code: 'LD', place: 'BE', used: ['1996', null] },
  ],
  models: [{ name: 'Carryall 30', size: { width: 30, unit: 'cm', tolerance: 1 } }],
  trade: { discounts: 'never', seconds: false },
});
const theirs = fileOf({
  aliases: ['maison ondrasse', 'Ondrasse Bruxelles'],
  sources: ['their notes'],
  plants: [
    { code: 'KV', place: 'BE', used: ['1980', '2003'], name: 'Canal workshop' },
    { code: 'LD', used: ['1996', null], place: 'BE' },
    { code: 'HJ', place: 'FR', used: ['1986', null] },
  ],
  models: [{ name: 'CARRYALL-30', size: { width: 31, unit: 'cm', tolerance: 1 } }],
  trade: { discounts: 'rarely', outlets: true },
});

test('what only one file knows is taken, and each difference is a conflict in which mine stays', () => {
  const { merged, conflicts } = mergeMakerFiles(mine, theirs);
  expect(conflicts.map(({ mine: _mine, theirs: _theirs, ...rest }) => rest)).toEqual([
    { id: 'plants KV BE', group: 'plants', fields: ['used', 'name'] },
    { id: 'models carryall 30', group: 'models', fields: ['name', 'runs'] },
    { id: 'trade discounts', group: 'trade', fields: ['discounts'] },
  ]);
  expect(conflicts[0]).toMatchObject({ mine: mine.plants[0], theirs: theirs.plants[0] });
  expect(merged.plants).toEqual([mine.plants[0], mine.plants[1], theirs.plants[2]]);
  expect(merged.aliases).toEqual(['Maison Ondrasse', 'Ondrasse Bruxelles']);
  expect(merged.sources).toEqual(['my catalogue', 'their notes']);
  expect(merged.trade).toEqual({ discounts: 'never', seconds: false, outlets: true });
});

test('a choice takes theirs, and the conflict is still listed', () => {
  const { merged, conflicts } = mergeMakerFiles(mine, theirs, {
    'plants KV BE': 'theirs',
    'trade discounts': 'theirs',
  });
  expect(conflicts).toHaveLength(3);
  expect(merged.plants[0]).toEqual(theirs.plants[0]);
  expect(merged.trade.discounts).toBe('rarely');
  expect(merged.models[0]?.runs?.[0]?.size?.width).toBe(30);
});

test('a file merged with itself is itself, without conflict', () => {
  for (const file of builtInMakers) expect(mergeMakerFiles(file, file)).toEqual({ merged: file, conflicts: [] });
});

test('a list of plants stays complete only where the file that says so knows every plant of both', () => {
  const complete = (file: MakerFile): MakerFile => ({ ...file, plantsComplete: true });
  const fewer: MakerFile = { ...mine, plants: mine.plants.slice(0, 1) };
  expect(mergeMakerFiles(complete(mine), theirs).merged.plantsComplete).toBeUndefined();
  expect(mergeMakerFiles(complete(mine), fewer).merged.plantsComplete).toBe(true);
  expect(mergeMakerFiles(fewer, complete(mine)).merged.plantsComplete).toBe(true);
  expect(mergeMakerFiles(complete(fewer), mine).merged.plantsComplete).toBeUndefined();
  // Both say that they are complete; the one that knows all plants of both may be.
  expect(mergeMakerFiles(complete(mine), complete(theirs)).merged.plantsComplete).toBe(true);
  const other: MakerFile = { ...mine, plants: theirs.plants.slice(2) };
  expect(mergeMakerFiles(complete(mine), complete(other)).merged.plantsComplete).toBeUndefined();
});

test('merging changes neither file', () => {
  const before = JSON.stringify([mine, theirs]);
  mergeMakerFiles(mine, theirs, { 'models carryall 30': 'theirs' });
  expect(JSON.stringify([mine, theirs])).toBe(before);
});
