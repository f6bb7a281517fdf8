import { describe, expect, it } from 'vitest';
import { finestSides } from '../../../src/evidence/from-proportions';
import { of, page } from './sized';

describe('of several statements of a side', () => {
  it('the finest counts, the first of equals, and no strap', () => {
    const evidence = of(
      page('Tote', ['height', 200, 5], ['width', 300, 5], ['width', 301, 1], ['width', 302, 1], ['strap', 900, 1]),
      null,
    );
    expect(finestSides(evidence)).toEqual([
      { id: 'size-read-2', side: 'width', mm: 301, precisionMm: 1, words: '301 mm', kind: 'size' },
      { id: 'size-read-0', side: 'height', mm: 200, precisionMm: 5, words: '200 mm', kind: 'size' },
    ]);
  });
});
