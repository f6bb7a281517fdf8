import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join, relative, resolve } from 'node:path';
import { expect, test } from 'vitest';
import { makerStated } from '../../../src/check/maker-stated';
import { namedModel } from '../../../src/evidence';
import { findMaker, plainName } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';
import { claim, facts, said, stated, withPhotos } from '../check/sample';

test('"Calderwick & Rook" is "Calderwick and Rook", for files, models and the maker stated alike', () => {
  const [sign, word] = ['Calderwick & Rook', 'CALDERWICK AND ROOK'];
  expect(plainName(sign)).toBe(plainName(word));
  const file = { maker: sign, aliases: [] as string[] } as MakerFile;
  expect(findMaker(word, [file])).toBe(file);
  const model = { name: 'Roost & Rye' };
  expect(namedModel([model], { model: [], fields: [stated('The roost and rye bag')] })?.model).toBe(model);
  const named = { ...claim('maker', sign, { maker: sign }), id: 'one' };
  expect(said(makerStated, facts({ listing: withPhotos(1, { maker: stated(word) }), claims: [named] }))).toEqual([
    'silent',
  ]);
});

test('names are made plain in one place only', () => {
  const source = resolve(import.meta.dirname, '../../../src');
  const files = (folder: string): string[] =>
    readdirSync(folder).flatMap((name) => {
      const path = join(folder, name);
      return statSync(path).isDirectory() ? files(path) : [path];
    });
  const written = files(source).filter((path) => /\bplainName\s*=|function plainName/.test(readFileSync(path, 'utf8')));
  expect(written.map((path) => relative(source, path))).toEqual(['maker/name.ts']);
});
