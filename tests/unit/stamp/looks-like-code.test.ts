import { describe, expect, it } from 'vitest';
import { looksLikeCode } from '../../../src/stamp';

describe('a text that no code system explains', () => {
  it.each([
    'KV1953',
    '843',
    '14F11M32',
    'B1382640',
    'A2 417',
    'M3-214/98',
    '12345678901234567890',
    'KTNBZZ31ZNE407685',
  ])('%s looks like a code', (text) => {
    expect(looksLikeCode(text)).toBe(true);
  });

  it.each([
    '',
    '07',
    'ONDRASSE',
    'CALDERWICK 8 ROOK',
    'MADE IN BELGIUM',
    'MODEL 2',
    '123456789012345678901',
    'KTNBZZ31ZNO407685',
    'KTNBZZ31ZNE40768X',
  ])('%s does not', (text) => {
    expect(looksLikeCode(text)).toBe(false);
  });
});
