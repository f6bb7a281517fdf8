import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

const sides = ['width', 'height', 'depth', 'unknown', 'strap', 'handle'];

describe('sizes that are said again', () => {
  it.each<Told>([
    ['Clutch, 28 cm. Width 28 cm, height 17 cm.', ['width 280', 'height 170']],
    ['Clutch, 28 cm. Width 28 cm.', ['unknown 280', 'width 280']],
    ['Clutch, 29 cm. Width 28 cm, height 17 cm.', ['unknown 290', 'width 280', 'height 170']],
    [
      'Width 28 cm, height 17 cm. A lovely thing for every day. Width 28 cm, height 17 cm.',
      ['width 280', 'height 170'],
    ],
    ['Width 28 cm, height 17 cm. Width 30 cm.', ['width 280', 'height 170', 'width 300']],
    ['The box is 40 x 35 cm.', []],
  ])('%s', (text, claims) => expect(told(sides, text)).toEqual(claims));
});
