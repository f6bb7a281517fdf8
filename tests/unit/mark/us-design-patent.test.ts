import { expect, test } from 'vitest';
import { said } from './read';

test.each([
  ['U.S. Des. Pat. 140,435', ['U.S. Des. Pat. 140,435 | 1945-01-01.. | soft']],
  ['Design Patent No. D101,090', ['Design Patent No. D101,090 | 1936-01-01.. | soft']],
  ['Pat. D118,763', ['Pat. D118,763 | 1940-01-01.. | soft']],
])('%s', (text, expected) => expect(said('us-design-patent', text).slice(-1)).toEqual(expected));

test('beside the soft year stands the last firm bound', () => {
  expect(said('us-design-patent', 'U.S. Des. Pat. 140,435')[0]).toBe('U.S. Des. Pat. 140,435 | 1903-01-01.. | hard');
});

test.each(['Pat. No. 140,435', 'Design no 140435', 'code D140435'])('nothing is read from "%s"', (text) =>
  expect(said('us-design-patent', text)).toEqual([]),
);
