import { describe, expect, it } from 'vitest';
import { partNamed } from '../../../src/evidence/part-named';
import type { FileNumber, MakerFile } from '../../../src/maker/types';

const stitches = (least: number, most: number, over: Partial<FileNumber> = {}): FileNumber =>
  ({ of: 'stitches', part: 'tab', least, most, ...over }) as FileNumber;

describe('the part that words name', () => {
  const parts: MakerFile['parts'] = [
    { id: 'turn-lock', words: ['clasp', 'Catch', '…'] },
    { id: 'feet', words: ['studs', 'catch'] },
  ];
  const numbers = [stitches(1, 2, { part: 'side-seam' })];
  it.each([
    ['turn lock', 'turn-lock'],
    ['Turn-Lock', 'turn-lock'],
    ['turnlock', 'lock'],
    ['clasp', 'turn-lock'],
    ['the clasp', null],
    // Two of the file's parts are called so.
    ['catch', null],
    ['studs', 'feet'],
    ['side seam', 'side-seam'],
    ['handle', 'handle'],
    ['Handles', 'handle'],
    ['tab of the strap', null],
    ['…', null],
    ['', null],
  ])('%s: %s', (words, part) => {
    expect(partNamed(words, { parts, numbers })).toBe(part);
  });

  it('is the file’s own before one that sellers name so', () => {
    expect(partNamed('handle', { parts: [{ id: 'top-handle', words: ['handle'] }], numbers: [] })).toBe('top-handle');
  });
});
