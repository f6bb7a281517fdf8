import { expect, test } from 'vitest';
import {
  builtInMakers,
  type Change,
  changesOf,
  isSameMaker,
  levelledWith,
  parseMakerFile,
  withChanges,
} from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';

const fileOf = (value: object): MakerFile => {
  const result = parseMakerFile({ format: 2, maker: 'Ondrasse', ...value });
  if (!result.ok) throw new Error(result.problems.map(({ where, what }) => `${where}: ${what}`).join('\n'));
  return result.file;
};
const kv = { code: 'KV', place: 'BE', used: ['1982', '2003'] };
const ld = { code: 'LD', place: 'BE', used: ['1996', null] };
const hj = { code: 'HJ', place: 'FR', used: ['1986', null] };
const base = fileOf({
  aliases: ['Maison Ondrasse'],
  licence: 'CC0-1.0',
  plants: [kv, ld],
  trade: { discounts: 'never' },
});
const now = fileOf({
  aliases: ['Ondrasse Bruxelles'],
  licence: 'CC-BY-4.0',
  plants: [{ ...kv, used: ['1980', '2003'] }, hj],
  trade: { discounts: 'never', outlets: true },
});
const told = (changes: readonly Change[]) =>
  changes.map(({ id, kind, conflict }) => `${kind}: ${id}${conflict ? ' (both)' : ''}`);
const all = (own: MakerFile, from = base, to = now) => changesOf({ base: from, own, now: to });
const used = (own: MakerFile, wanted: (change: Change) => boolean = () => true) =>
  withChanges(own, now, all(own).filter(wanted));

test('every entry that was added, changed or removed is told, with what it said and says', () => {
  const changes = all(base);
  expect(told(changes)).toEqual([
    'changed: file licence',
    'removed: aliases maison ondrasse',
    'added: aliases ondrasse bruxelles',
    'changed: plants KV BE',
    'removed: plants LD BE',
    'added: plants HJ FR',
    'added: trade outlets',
  ]);
  expect(changes[3]).toEqual({
    id: 'plants KV BE',
    group: 'plants',
    kind: 'changed',
    fields: ['used'],
    before: base.plants[0],
    after: now.plants[0],
    conflict: false,
    result: now.plants[0],
  });
  expect(changes[4]).toMatchObject({ before: base.plants[1], after: null, result: null });
});

test('all of them used give the file of now, and none of them the own file', () => {
  expect(used(base)).toEqual(now);
  expect(used(base, () => false)).toEqual(base);
  expect(told(all(now))).toEqual([]);
});

test('what the buyer added, took out or changed elsewhere stays on top', () => {
  const own = fileOf({
    ...base,
    plants: [{ ...kv, name: 'Canal workshop' }, ld, { code: 'ZC', place: 'ES', used: ['1990', null] }],
    note: 'mine',
  });
  const changes = all(own);
  expect(changes.every(({ conflict }) => !conflict)).toBe(true);
  expect(changes.find(({ id }) => id === 'plants KV BE')).toMatchObject({ own: own.plants[0] });
  const merged = used(own);
  expect(merged.plants).toEqual([{ ...kv, used: ['1980', '2003'], name: 'Canal workshop' }, own.plants[2], hj]);
  expect(merged.note).toBe('mine');
});

test('the same entry changed by both is a conflict, and only the choice takes the file’s', () => {
  const own = fileOf({
    ...base,
    licence: 'all mine',
    plants: [
      { ...kv, used: ['1979', '2003'] },
      { ...ld, name: 'mill' },
      { ...hj, used: ['1987', null] },
    ],
  });
  expect(told(all(own).filter(({ conflict }) => conflict))).toEqual([
    'changed: file licence (both)',
    'changed: plants KV BE (both)',
    'removed: plants LD BE (both)',
    'added: plants HJ FR (both)',
  ]);
  expect(used(own, ({ conflict }) => !conflict).plants).toEqual(own.plants);
  expect(used(own).plants).toEqual(now.plants);
});

test('an entry that the buyer took out is asked about when the file changes it, and not when it stays', () => {
  const own = fileOf({ ...base, plants: [ld] });
  expect(told(all(own, base, fileOf({ ...base, plants: [kv, ld, hj] })))).toEqual(['added: plants HJ FR']);
  const change = all(own).find(({ id }) => id === 'plants KV BE');
  expect(change).toMatchObject({ conflict: true, own: null });
  expect(withChanges(own, now, change ? [change] : []).plants).toEqual([ld, now.plants[0]]);
});

test('entries of one key are told apart by what they say', () => {
  const [early, late] = [
    { part: 'lining', is: 'twill', used: ['1970', '1980'] },
    { part: 'lining', is: 'twill', used: ['1990', null] },
  ];
  const two = fileOf({ construction: [early, late] });
  const changed = fileOf({ construction: [early, { ...late, used: ['1992', null] }] });
  expect(told(all(two, two, changed))).toEqual(['changed: construction ["lining","twill",[]] 2']);
  expect(withChanges(two, changed, all(two, two, changed))).toEqual(changed);
});

test('what is left for later is told again, and what was used or decided is not', () => {
  const own = fileOf({ ...base, licence: 'all mine' });
  const changes = all(own);
  const left = new Set(['plants HJ FR']);
  const merged = withChanges(
    own,
    now,
    changes.filter(({ id, conflict }) => !conflict && !left.has(id)),
  );
  const level = levelledWith(base, now, left);
  expect(merged.licence).toBe('all mine');
  expect(told(all(merged, level))).toEqual(['added: plants HJ FR']);
});

test('a list of workshops is complete no more when it lacks one that the file knows', () => {
  const complete = (file: MakerFile): MakerFile => ({ ...file, plantsComplete: true });
  const changes = all(complete(base), complete(base), complete(now));
  expect(withChanges(complete(base), complete(now), changes).plantsComplete).toBe(true);
  const withoutNew = changes.filter(({ id }) => id !== 'plants HJ FR');
  expect(withChanges(complete(base), complete(now), withoutNew).plantsComplete).toBeUndefined();
});

test('an update is taken back by the same comparison, and what was changed since stays', () => {
  const after = used(base);
  const since = fileOf({ ...after, plants: [{ ...kv, used: ['1981', '2003'] }, hj] });
  const back = changesOf({ base: after, own: since, now: base }).filter(({ conflict }) => !conflict);
  const undone = withChanges(since, base, back);
  expect(undone.plants).toEqual([since.plants[0], ld]);
  expect(undone.licence).toBe('CC0-1.0');
  expect(undone.trade).toEqual({ discounts: 'never' });
});

test('a file against itself has no change, and no file is altered', () => {
  for (const file of builtInMakers) expect(changesOf({ base: file, own: file, now: file })).toEqual([]);
  const before = JSON.stringify([base, now]);
  used(base);
  expect(JSON.stringify([base, now])).toBe(before);
});

test('a maker stays the same under another name that the file gives, and is another one otherwise', () => {
  expect(isSameMaker(base, fileOf({ maker: 'ONDRASSE' }))).toBe(true);
  expect(isSameMaker(base, fileOf({ maker: 'Maison Ondrasse', aliases: ['Ondrasse'] }))).toBe(true);
  expect(isSameMaker(base, fileOf({ maker: 'Tessaro Vell' }))).toBe(false);
});
