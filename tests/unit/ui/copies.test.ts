import { expect, test } from 'vitest';
import type { Came, PhotoRead } from '../../../src/photo/read-types';
import { copyWords, countCopies } from '../../../src/ui/copies';
import { strings } from '../../../src/words';
import { readPhoto } from '../check/sample';

const small: Came = { way: 'capture', fullSize: false, part: false, largest: { width: 1200, height: 900 } };
const whole: Came = { way: 'page', fullSize: true };
const done = (...photos: (Came | undefined)[]) => {
  const read = photos.map((came, at): PhotoRead => readPhoto(`p${at}`, came ? { came } : {}));
  return strings.stage.done(read.length, countCopies(read));
};

test('the line that ends the reading says which photos were read from copies', () => {
  expect(done(whole, undefined)).toBe('Page and 2 photos read.');
  expect(done(small)).toBe('Page and 1 photo read, from a small copy on the page.');
  expect(done(small, small)).toBe('Page and 2 photos read, all from small copies on the page.');
  expect(done(small, whole)).toBe('Page and 2 photos read, 1 of them from a small copy on the page.');
  expect(done({ ...small, fullSize: true })).toBe('Page and 1 photo read, from a copy on the page.');
  expect(strings.stage.doneBut(2, 3, { all: 2, small: 1 }, 0)).toBe(
    'Page read, and 2 of 3 photos, all from copies on the page.',
  );
});

test('each photo says what it was read from', () => {
  const words = (came: Came, width = 600) => copyWords(readPhoto('p1', { came, width }));
  expect(words(small)).toBe('small copy, 600 of 1200 pixels wide');
  expect(words({ ...small, largest: null })).toBe('small copy');
  expect(words({ ...small, part: true })).toBe('copy of the part that the page shows');
  expect(words({ ...small, fullSize: true })).toBe('copy from the page');
  expect(words({ way: 'page', fullSize: false })).toBe('small copy');
  expect(words(whole)).toBe('');
  expect(copyWords(undefined)).toBe('');
});
