import { expect, test } from 'vitest';
import { groundKind, photoStockLike } from '../../../src/check/photo-stock-like';
import { testRule } from '../../rule-tester';
import { facts, readPhoto, unreadPhoto, withPhotos } from './sample';

const even = { lightness: 255, spread: 0, noise: 0 };
const sheet = { lightness: 238, spread: 14, noise: 1.4 };
const shown = (...backgrounds: (typeof even | undefined)[]) =>
  facts({
    listing: withPhotos(backgrounds.length),
    photos: backgrounds.map((background, index) => readPhoto(`p${index + 1}`, background ? { background } : {})),
  });
const paper = (lines: number) =>
  facts({
    photos: [readPhoto('p1', { background: even, printed: Array.from({ length: lines }, (_, at) => `line ${at}`) })],
  });
const basis = [
  'Catalogue pictures stand on a perfectly even white ground; a camera at home leaves shade and grain there.',
];

testRule(photoStockLike, {
  speaks: {
    'on an even white ground': [
      shown(even, sheet),
      {
        kind: 'doubt',
        data: { photos: [1] },
        says: 'Photo 1 stands on an even white ground without the grain of a camera.',
        basis,
        asks: ['own-photo'],
        photos: ['p1'],
      },
    ],
    'of all such photos in one finding': [
      shown(even, sheet, { lightness: 240, spread: 2, noise: 0.1 }),
      {
        kind: 'doubt',
        data: { photos: [1, 3] },
        says: 'Photo 1 and photo 3 stand on an even white ground without the grain of a camera.',
        basis,
        asks: ['own-photo'],
        photos: ['p1', 'p3'],
      },
    ],
  },
  silent: {
    'on shade across the ground': shown({ ...even, spread: 12 }),
    'on the noise of a sensor': shown({ ...even, noise: 0.9 }),
    'on a grey ground': shown({ ...even, lightness: 190 }),
    'on a white sheet at home': shown(sheet),
  },
  declines: {
    'when nothing was measured': [shown(undefined), 'cannot-tell', 'ground-not-measured'],
    'when no photo was read': [facts({ photos: [unreadPhoto('p1')] }), 'cannot-tell', 'photos-not-read'],
  },
  limits: {
    leastLightness: {
      is: 230,
      step: 1,
      given: (lightness) => shown({ ...even, lightness }),
      under: 'silent',
      at: 'doubt',
      over: 'doubt',
    },
    mostSpread: {
      is: 4,
      step: 0.1,
      given: (spread) => shown({ ...even, spread }),
      under: 'doubt',
      at: 'doubt',
      over: 'silent',
    },
    mostNoise: {
      is: 0.5,
      step: 0.01,
      given: (noise) => shown({ ...even, noise }),
      under: 'doubt',
      at: 'doubt',
      over: 'silent',
    },
    linesOfPaper: { is: 4, step: 1, given: paper, under: 'doubt', at: 'silent', over: 'silent' },
  },
});

test('a ground that was not measured is of no kind', () => {
  expect(groundKind(readPhoto('p1'))).toBeNull();
  expect(groundKind(unreadPhoto('p1'))).toBeNull();
  expect(groundKind(readPhoto('p1', { background: even }))).toBe('even');
});
