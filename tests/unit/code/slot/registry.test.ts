import { readdirSync } from 'node:fs';
import { expect, test } from 'vitest';
import { slotRules } from '../../../../src/code/slot';
import { slotSchemas } from '../../../../src/maker/slot-schema';

const kebab = (name: string) => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
const filesIn = (path: string) => readdirSync(new URL(path, import.meta.url));

test('every slot of the format has its rule, its file and its test, and no other has', () => {
  const kinds = Object.keys(slotSchemas).sort();
  expect(slotRules.map(({ kind }) => kind).sort()).toEqual(kinds);
  const names = kinds.map(kebab).sort();
  const rules = filesIn('../../../../src/code/slot/').filter((file) => !['index.ts', 'cell.ts'].includes(file));
  expect(rules.map((file) => file.replace('.ts', '')).sort()).toEqual(names);
  const tests = filesIn('.').filter((file) => file.endsWith('.test.ts') && file !== 'registry.test.ts');
  expect(tests.map((file) => file.replace('.test.ts', '')).sort()).toEqual(names);
});
