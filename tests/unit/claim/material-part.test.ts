import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a part and what it is made of', () => {
  it.each<Told>([
    ['Red suede lining, black leather strap.', ['lining = red suede', 'strap = black leather']],
    ['Lining in red suede.', ['lining = red suede']],
    ['The lining is red suede and the handle is black.', ['lining = red suede', 'handle = black']],
    ['The lining consists entirely of red suede.', ['lining = red suede']],
    ['The lining. Red suede.', ['body = red suede']],
    ['Fittings of brass.', ['hardware = brass']],
    ['Brass trim.', ['hardware = brass']],
    ['A bag in red suede.', ['body = red suede']],
    ['A nice thing that my mother had for a long time in red suede.', []],
  ])('%s', (text, claims, title) =>
    expect(told(['lining', 'strap', 'handle', 'body', 'hardware'], text, title, 'en')).toEqual(claims),
  );
});

describe('a cotton with a pattern', () => {
  it.each<Told>([['Forro de algodón estampado.', ['lining = cotton']]])(
    '%s is a cotton, and no pattern',
    (text, claims, title) => expect(told(['lining', 'body', 'pattern'], text, title, 'es')).toEqual(claims),
  );
});

describe('in languages that put the part first', () => {
  it.each<Told>([
    ['Fodera in camoscio rosso, tracolla in pelle nera.', ['lining = red suede', 'strap = black leather']],
    ['Fodera ok (camoscio rosso).', ['lining = red suede']],
    ['Borsa in pelle con fibbia.', ['body = leather']],
  ])('%s', (text, claims, title) =>
    expect(told(['lining', 'strap', 'handle', 'body', 'hardware'], text, title, 'it')).toEqual(claims),
  );
});
