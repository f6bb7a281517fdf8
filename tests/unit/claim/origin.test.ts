import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('where the piece was made, and where that is not said', () => {
  it.each<Told>([
    ['Was it made in Spain? No idea.', []],
    ['Not made in Spain.', []],
    ['My sister’s was made in Spain.', []],
    ['ベルギー製のレザーです。', []],
    ['ベルギー製です。', ['origin BE']],
    ['フランス製に似た作りです。', []],
    ['Ships from France.', []],
  ])('%s', (text, claims, title) => expect(told(['origin'], text, title)).toEqual(claims));
});
