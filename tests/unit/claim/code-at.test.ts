import { describe, expect, it } from 'vitest';
import { told } from './listing-of';

const kinds = (short: string, text: string) => told([short], text);

describe('codes in capitals', () => {
  it.each([
    ['DATE CODE KV 0915', ['code KV 0915']],
    ['DATE CODE: TASCA KV 0915', ['code KV 0915']],
    ['DATE CODE KV 0915 INSIDE POCKET', ['code KV 0915']],
    ['DATE CODE KV 0915, ON THE TAB', ['code KV 0915']],
  ])('%s', (text, codes) => expect(kinds('code', text)).toEqual(codes));
});
