import { describe, expect, it } from 'vitest';
import { bareFrancs, francsOf, saysBareFrancs } from '../../../src/take/said/francs';

describe('whose francs a page means', () => {
  it.each([
    ['Prices in French francs, as printed.', 'FRF'],
    ['Listenpreise in französischen Francs', 'FRF'],
    ['Les prix sont en francs belges', 'BEF'],
    ['1.250BEF in 1985', 'BEF'],
    ['Preise in Schweizer Franken', 'CHF'],
    ['450 SFr. im Laden', 'CHF'],
    ['prezzi in franchi lussemburghesi', 'LUF'],
    ['Swiss francs in Basel, French francs in Lyon', null],
    ['450 francs', null],
    ['Luftpost', null],
  ])('%s: %s', (text, currency) => {
    expect(francsOf(text)).toBe(currency);
  });

  it('is open where they are bare', () => {
    expect(['890 F', '890 francs', '890 Swiss francs', '890 FF', '890 CHF'].map(saysBareFrancs)).toEqual([
      true,
      true,
      false,
      false,
      false,
    ]);
    expect(bareFrancs('1\u00a0890,50 F en 1985, 2 100 francs en 1990').map(({ amount }) => amount)).toEqual([
      1890.5, 2100,
    ]);
  });
});
