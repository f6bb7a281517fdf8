import { expect, test } from 'vitest';
import { differenceWords } from '../../../src/code';

test('what differs is said, never the same text again', () => {
  expect(differenceWords('M81097', { text: 'MB1097', change: 'read as "MB1097"' })).toBe(
    '"8" in place 2 read as "B", which look alike',
  );
  expect(differenceWords('KV091S', { text: 'KV0915', change: '"S" in place 6 read as "5", which look alike' })).toBe(
    '"S" in place 6 read as "5", which look alike',
  );
});

test('the same text, whatever its separators, is no near code', () => {
  expect(differenceWords('MB1097', { text: 'MB1097', change: 'none' })).toBeNull();
  expect(differenceWords('MB 1097', { text: 'MB1097', change: 'read as "MB1097"' })).toBeNull();
});

test('where nearly everything differs no list of changes is given', () => {
  expect(differenceWords('XXXX', { text: 'MB1097', change: 'read as "MB1097"' })).toBe('');
});
