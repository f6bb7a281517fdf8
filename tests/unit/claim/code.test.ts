import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a code of the piece, and of something else', () => {
  it.each<Told>([
    ['Number 5512 is the cobbler’s.', []],
    ['Edición limitada de 200 unidades, la mía es la nº 087/200, código en la etiqueta.', []],
    ['Date code 14 C 50 M 37 inside.', ['code 14 C 50 M 37']],
    ['The box has a label with KV0915.', []],
    ['The tab inside has KV0915.', ['code KV0915']],
    ['My other one has the date code KV0915.', []],
    ['Date code KV0915, not KV0951.', ['code KV0915']],
    ['I first wrote date code KV0951. It is KV0915, date code.', ['code KV0915']],
    ['Postcode KV0915.', []],
    ['Date code 45 x 27 cm.', []],
    ['The number inside says 1995.', []],
    ['Date code: none.', ['no-code']],
    ['It has no date code.', ['no-code']],
    ['The date code is no longer legible.', ['no-code']],
    ['The date code KV0915 is hardly legible.', ['code KV0915']],
  ])('%s', (text, claims, title) => expect(told(['code', 'no-code', 'not-placed'], text, title)).toEqual(claims));
});
