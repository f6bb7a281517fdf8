import { expect, test } from 'vitest';
import { liftFinding } from '../../../src/watch/migrations/older-finding';

test('what was expected of a code, and what told a near one apart, is kept as it was written', () => {
  const said = { check: 'code-slot-possible', kind: 'doubt' };
  const data = { expected: '01 to 12', near: { code: 'KV0995', change: '"1" in place 3 read as "0"' } };
  expect(liftFinding({ ...said, data })).toEqual({
    ...said,
    data: {
      expected: { kind: 'as-written', words: '01 to 12' },
      near: { code: 'KV0995', differences: [{ kind: 'as-written', words: '"1" in place 3 read as "0"' }] },
    },
  });
  const same = { near: { code: 'KV0995', change: null } };
  expect(liftFinding({ ...said, data: same })).toEqual({
    ...said,
    data: { near: { code: 'KV0995', differences: null } },
  });
  const now = { ...said, data: { expected: { kind: 'letters' }, near: { code: 'KV0995', differences: [] } } };
  expect(liftFinding(now)).toEqual(now);
  expect(liftFinding(null)).toBeNull();
});
