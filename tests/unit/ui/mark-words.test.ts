import { expect, test } from 'vitest';
import { measureWords } from '../../../src/ui/bench/mark-words';

const words = (value: number, uncertainty: number | null, unit: 'letter' | 'stitch' | 'share') =>
  measureWords({ what: 'count', value, uncertainty, unit });

test('what is counted is whole', () => {
  expect(words(7, 0, 'letter')).toMatch(/^7(?![.,\d])/);
  expect(words(7, 0, 'stitch')).toMatch(/^7(?![.,\d])/);
});

test('what rounds to nothing has no sign', () => {
  expect(words(-0.0001, 0.02, 'share')).not.toMatch(/[-−]0/);
  expect(words(-0.021, 0.02, 'share')).toMatch(/[-−]/);
});
