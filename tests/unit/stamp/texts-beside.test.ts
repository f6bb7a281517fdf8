import { expect, test } from 'vitest';
import { textsBeside } from '../../../src/stamp';
import { stampLine } from '../check/sample';

test('what stands beside a line is the other lines that are surely read, and print', () => {
  const line = (id: string, text: string, probability: number) => ({
    ...stampLine('p1', text, { free: { text, probability } }),
    id,
  });
  const lines = [line('a', 'KV0915', 0.99), line('b', 'VERRANO', 0.9), line('c', 'SOHN', 0.89)];
  expect(textsBeside(lines[0]!, lines, ['LINED WITH LINEN'])).toEqual(['VERRANO', 'LINED WITH LINEN']);
});
