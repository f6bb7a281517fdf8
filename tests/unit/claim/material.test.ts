import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a material of something else is none of the piece', () => {
  it.each<Told>([
    ['Faux leather pouch included.', []],
    ['With a faux leather pouch.', []],
    ['With a red cotton dust bag.', ['dust-bag = red cotton']],
    ['Faux leather pouch included.', ['leather-like', 'body = imitation leather'], 'Red pouch by Velmont'],
    ['Red leather belt bag.', ['body = red leather']],
    ['The box is of faux leather.', []],
    ['It feels like faux leather.', []],
    ['It is of faux leather.', ['leather-like']],
    ['The handles are like new, the leather is scratched at the base.', []],
    ['Lining, red suede.', ['lining = red suede']],
    ['Lining fine (red suede).', ['lining = red suede']],
    ['The lining of the bag is of red suede.', ['lining = red suede']],
    ['Brass plate on the box.', []],
    ['No leather at all.', []],
    ['Is the lining suede?', []],
    ['Am Boden ist das Leder abgewetzt.', []],
    ['Der Boden ist aus Leder.', ['base = leather']],
  ])('%s', (text, claims, title) =>
    expect(
      told(
        ['body', 'dust-bag', 'lining', 'base', 'hardware', 'strap', 'handle', 'leather', 'not leather', 'trim'],
        text,
        title,
        'en',
      ),
    ).toEqual(claims),
  );
});
