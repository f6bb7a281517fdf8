import { photoLargeEnough } from '../../../src/check/photo-large-enough';
import { testRule } from '../../rule-tester';
import { facts, readPhoto, unreadPhoto } from './sample';

const sized = (width: number, height: number) => facts({ photos: [readPhoto('p1', { width, height })] });
const small = readPhoto('p1', { width: 320, height: 240 });

testRule(photoLargeEnough, {
  speaks: {
    'where no photo is of any size': [
      sized(320, 240),
      {
        kind: 'gap',
        data: { longestPx: 320 },
        says: 'The largest photo is 320 pixels long.',
        basis: ['Details such as stitches and stamps need photos of some size.'],
        asks: ['larger-photos'],
      },
    ],
  },
  silent: {
    'with one large photo': sized(900, 1200),
    'with one large photo beside a small and an unread one': facts({
      photos: [small, readPhoto('p2', { width: 1200, height: 300 }), unreadPhoto('p3')],
    }),
  },
  declines: {
    'while a photo is unread that may be larger': [
      facts({ photos: [small, unreadPhoto('p2')] }),
      'cannot-tell',
      'photos-not-read',
    ],
    'while a photo was read from a smaller stand-in': [
      facts({ photos: [small, readPhoto('p2', { came: { way: 'capture', fullSize: false } as never })] }),
      'cannot-tell',
      'copies-only',
    ],
  },
  limits: {
    smallestPx: { is: 500, step: 1, given: (px) => sized(px, 200), under: 'gap', at: 'silent', over: 'silent' },
  },
});
