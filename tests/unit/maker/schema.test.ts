import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { decodeText, readsOf, slotKinds } from '../../../src/code';
import { readMakerFileText } from '../../../src/maker';
import { makerFileJsonSchema } from '../../../src/maker/json-schema';

const readText = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), 'utf8');
const manual = readText('docs/maker-files.md');

test('the published schema is the one that the program uses (npm run make:schema writes it)', () => {
  expect(readText('public/maker-file.schema.json')).toBe(makerFileJsonSchema());
});

test('the file in the manual is accepted and reads its codes', () => {
  const [, text] = /```json\n([\s\S]*?)```/.exec(manual)!;
  const result = readMakerFileText(text!);
  expect(result.ok ? [] : result.problems).toEqual([]);
  if (!result.ok) return;
  const { readings } = decodeText('PX0096', { makers: [result.file], maker: 'Ondrasse' });
  expect(readings.map(readsOf)).toEqual(['2006-09, PT']);
});

test('the manual names every slot', () => {
  const missing = slotKinds.map(({ kind }) => kind as string).filter((kind) => !manual.includes(`{"${kind}":`));
  expect(missing).toEqual([]);
});
