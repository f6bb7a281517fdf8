import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { currencyJson } from '../../tools/currency-table';

test('the table of currencies is the one that Unicode CLDR gives, and says its version', () => {
  const committed = readFileSync(new URL('../../../src/text/currencies.json', import.meta.url), 'utf8');
  expect(committed).toBe(currencyJson());
  expect(JSON.parse(committed).cldr).toMatch(/^\d+\.\d+/);
});
