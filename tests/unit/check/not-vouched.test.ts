import { describe, expect, it } from 'vitest';
import { notVouched } from '../../../src/check/not-vouched';
import { factsSaying, said } from './sample';

describe('not-vouched', () => {
  it.each([
    ['I cannot guarantee authenticity', 'gap: The listing says “cannot guarantee authenticity”.'],
    ['Keine Garantie auf Echtheit', 'gap: The listing says “Keine Garantie auf Echtheit”.'],
    ['真贋は不明です', 'gap: The listing says “真贋は不明”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(notVouched, factsSaying(words))).toEqual([statement]);
  });
  it.each(['Authenticity guaranteed', 'Bought from the maker', 'Not sure if it fits you'])(
    'is silent on %j',
    (words) => {
      expect(said(notVouched, factsSaying(words))).toEqual(['silent']);
    },
  );
});
