import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('what was done to the piece, and what was not', () => {
  it.each<Told>([
    ['The strap was replaced in 2018.', ['replaced strap']],
    ['The strap broke, I replaced it in 2018.', ['replaced strap']],
    ['The zip can be replaced.', []],
    ['The zip had to be replaced in 2018.', ['replaced zip']],
    ['Nothing was replaced.', []],
    ['The dust bag is new.', []],
    ['Replaced zip and lining.', ['replaced zip+lining']],
    ['Scratches on the base and the zip was replaced.', ['replaced zip']],
    ['Strap not original (replaced in 2011).', ['replaced strap']],
    ['A repair of 1999.', ['replaced somewhere']],
    ['Repairs since 1962.', []],
    ['Dyed leather.', []],
    ['Dyed in 2015 by a saddler.', ['re-dyed somewhere']],
    ['Replaced in May 2016: the lock.', []],
    ['La cerniera è stata sostituita.', ['replaced zip']],
    ['Cierre nuevo de 2010.', ['replaced lock']],
    ['Relined in 2014.', ['replaced lining']],
    ['The zip was replaced in 2018. Zip not original.', ['replaced zip', 'replaced zip']],
    ['The zip was replaced in 2018, zip not original.', ['replaced zip']],
  ])('%s', (text, claims, title) => expect(told(['replaced', 're-dyed'], text, title)).toEqual(claims));
});
