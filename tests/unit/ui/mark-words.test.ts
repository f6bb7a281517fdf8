import { expect, test } from 'vitest';
import type { Point, Where } from '../../../src/photo';
import { gapsAlong, measureWords } from '../../../src/ui/bench/mark-words';

const words = (value: number, uncertainty: number | null, unit: 'letter' | 'stitch' | 'share') =>
  measureWords({ what: 'count', value, uncertainty, unit });

test('what is counted is whole', () => {
  expect(words(7, 0, 'letter')).toMatch(/^7(?![.,\d])/);
  expect(words(7, 0, 'stitch')).toMatch(/^7(?![.,\d])/);
  expect(words(7, 1, 'stitch')).toBe('7 ± 1');
});

test('what rounds to nothing has no sign', () => {
  expect(words(-0.0001, 0.02, 'share')).not.toMatch(/[-−]0/);
  expect(words(-0.021, 0.02, 'share')).toMatch(/[-−]/);
});

test('gaps of a row are told by how far along it they lie, from its first point', () => {
  const line = (...shares: number[]) => shares.map((share) => ({ x: 0.9 - 0.5 * share, y: 0.2 + 0.3 * share }));
  const row = { form: 'line', points: line(0, 1) as [Point, Point] } as const;
  const count = { what: 'count', value: 20, uncertainty: 0, unit: 'stitch', where: row } as const;
  const skipped = (value: number, where: Where) =>
    gapsAlong([count, { what: 'skipped', value, uncertainty: 0, unit: 'stitch', where }]);
  expect(skipped(1, { form: 'line', points: line(0.2, 0.3) as [Point, Point] })).toEqual(['25%']);
  expect(skipped(3, { form: 'polygon', points: line(0.1, 0.2, 0.7, 0.8) })).toEqual(['15%', '75%']);
  expect(skipped(0, row)).toEqual([]);
});
