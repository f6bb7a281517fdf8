import { expect, test } from 'vitest';
import { builtInMakers, isDemoPage, makersFor } from '../../../src/maker';
import type { MakerFile } from '../../../src/maker/types';

const own = { maker: 'Velmont', aliases: [] as string[] } as MakerFile;

test.each([
  'https://attic-arcade.example/ondrasse-carryall-25-1987.html',
  'http://www.attic-arcade.example:8080/?id=1#2',
  'http://127.0.0.1:46343/index.html',
  'http://localhost:3000',
  'http://[::1]:3000/',
])('%s is the demo marketplace: the invented makers are used, the user’s own stand last', (url) => {
  expect(isDemoPage(url)).toBe(true);
  expect(makersFor(url, [own])).toEqual([...builtInMakers, own]);
});

test.each([
  'https://shop.example/attic-arcade.example',
  'https://attic-arcade.example@shop.example/',
  'https://attic-arcade.example.shop.example/',
  'https://not-attic-arcade.example/',
  'https://shop.example/?at=https://attic-arcade.example/',
  'https://127.0.0.1.shop.example/',
  'https://shop.example\\@attic-arcade.example/',
  'https://saved-page.example/page.html',
  'file:///attic-arcade.example/page.html',
  '',
])('%s is not: only the user’s own files are used', (url) => {
  expect(isDemoPage(url)).toBe(false);
  expect(makersFor(url, [own])).toEqual([own]);
  expect(makersFor(url, [])).toEqual([]);
});
