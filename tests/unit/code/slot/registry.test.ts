import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { formOfKind, kindOfSlot, slotKinds } from '../../../../src/code';
import { type Slot, shapeSlot } from '../../../../src/code/slot';

const kebab = (name: string) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
const filesIn = (path: string) => readdirSync(new URL(path, import.meta.url));

test('every kind of slot has its folder and its test, and no other folder stands beside them', () => {
  const names = slotKinds.map(({ kind }) => kebab(kind)).sort();
  const folders = filesIn('../../../../src/code/slot/').filter((file) => !file.endsWith('.ts'));
  expect(folders.sort()).toEqual(names);
  const tests = filesIn('.').filter((file) => file.endsWith('.test.ts') && file !== 'registry.test.ts');
  expect(tests.map((file) => file.replace('.test.ts', '')).sort()).toEqual(names);
});

test('a kind is told by its own key, in the fresh slot as in each setting that its fields make', () => {
  for (const { kind, fresh } of slotKinds) {
    const known = kindOfSlot(fresh)!;
    expect(known.kind).toBe(kind);
    expect(formOfKind(known).safeParse(fresh).error, kind).toBeUndefined();
    for (const field of known.fields) {
      if (field.as !== 'choice' || !field.remake || typeof field.choices === 'function') continue;
      for (const [value] of field.choices) {
        const made = field.remake(value, fresh as Record<string, unknown>);
        expect(formOfKind(known).safeParse(made).error, `${kind} ${value}`).toBeUndefined();
      }
    }
  }
});

test('what is no slot, or of no kind that is known, is refused by the names of its settings', () => {
  const shape = (slot: object) => () => shapeSlot(slot as Slot, { plantCodes: [] });
  expect(kindOfSlot({})).toBeNull();
  expect(kindOfSlot({ colour: 2, shade: 3 })).toBeNull();
  expect(shape({ colour: 2, shade: 3 })).toThrow('no kind of slot for colour, shade');
  expect(shape({})).toThrow('no kind of slot for ');
  expect(shapeSlot({ literal: 'K' }, { plantCodes: [] }).cells.map(({ tight }) => tight)).toEqual(['K']);
});
