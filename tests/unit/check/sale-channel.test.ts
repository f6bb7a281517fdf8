import { describe, expect, it } from 'vitest';
import { saleChannel } from '../../../src/check/sale-channel';
import { claim, facts, ondrasse, said } from './sample';

describe('sale-channel', () => {
  const channel = (words: string, name: 'discount' | 'outlet' | 'sample-sale' | 'seconds') =>
    facts({ claims: [claim('sale-channel', words, { channel: name })] });
  it('doubts each sale that the maker does not hold', () => {
    expect(said(saleChannel, channel('from the factory outlet', 'outlet'))).toEqual([
      'doubt: The listing says “from the factory outlet”, but Ondrasse has no outlets.',
    ]);
    expect(said(saleChannel, channel('sample sale find', 'sample-sale'))).toEqual([
      'doubt: The listing says “sample sale find”, but Ondrasse holds no sample sales.',
    ]);
    expect(said(saleChannel, channel('factory second', 'seconds'))).toEqual([
      'doubt: The listing says “factory second”, but Ondrasse sells no factory seconds.',
    ]);
    expect(said(saleChannel, channel('40% off retail', 'discount'))).toEqual([
      'doubt: The listing says “40% off retail”, but Ondrasse never sells at a discount.',
    ]);
  });
  it('is silent for a maker with outlets', () => {
    const maker = { ...ondrasse, trade: { discounts: 'often' as const, outlets: true } };
    expect(said(saleChannel, { ...channel('from the outlet', 'outlet'), maker })).toEqual(['silent']);
  });
  it('cannot tell without a maker file', () => {
    expect(said(saleChannel, { ...channel('from the outlet', 'outlet'), maker: null })[0]).toMatch(/^cannot-tell/);
  });
});
