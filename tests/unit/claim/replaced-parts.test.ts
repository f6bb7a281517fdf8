import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('of which parts a repair is said', () => {
  it.each<Told>([
    ['Replaced zip and lining in 2018.', ['replaced zip+lining']],
    ['Replaced zip, handle and lining in 2018.', ['replaced zip+handle+lining']],
    ['The zip and the lining were replaced in 2018.', ['replaced zip+lining']],
    ['The zip, the handle and the lining were replaced.', ['replaced zip+handle+lining']],
    ['The zip is fine, the lining was replaced.', ['replaced lining']],
    ['New zip in 2018.', ['replaced zip']],
    ['Cerniera nuova nel 2018.', ['replaced zip']],
    ['The dust bag is new.', []],
    ['Relined in 2018.', ['replaced lining']],
    ['Neu gefüttert 2018.', ['replaced lining']],
    ['Restitched in 2018.', ['replaced stitching']],
    ['The zip was torn, replaced 2019.', ['replaced zip']],
    ['The zip was torn. Replaced 2019.', []],
    ['The strap broke, I replaced it in 2018.', ['replaced strap']],
    ['The dust bag tore, replaced 2019.', []],
    ['Correa no original (sustituida en 2011).', ['replaced strap']],
    ['ストラップは切れたので、2018年に交換しました。', ['replaced strap']],
    ['Stains on the lining and the zip was replaced.', ['replaced zip']],
  ])('%s', (text, claims) => expect(told(['replaced'], text)).toEqual(claims));
});
