import { describe, expect, it } from 'vitest';
import { readyMadeAssurance } from '../../../src/check/ready-made-assurance';
import { factsSaying, said } from './sample';

describe('ready-made-assurance', () => {
  it.each([
    ['100% authentic!', 'gap: The listing says “100% authentic”.'],
    ['Echtheit garantiert', 'gap: The listing says “Echtheit garantiert”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(readyMadeAssurance, factsSaying(words))).toEqual([statement]);
  });
  it.each(['Bought from the shop with receipt'])('is silent on %j', (words) => {
    expect(said(readyMadeAssurance, factsSaying(words))).toEqual(['silent']);
  });
});
