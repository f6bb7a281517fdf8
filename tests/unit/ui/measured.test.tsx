// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import type { Observation } from '../../../src/photo';
import { Measured } from '../../../src/ui/parts/Measured';
import { photoRead } from '../../photo-read';

const seen = (what: string, part: Partial<Observation>): Observation => ({
  id: `p1-${what}`,
  what,
  value: null,
  uncertainty: null,
  unit: null,
  where: null,
  by: 'machine',
  ...part,
});

test('what was measured is told by name, with its unit, its uncertainty and by whom', () => {
  const room = document.createElement('div');
  const observations = [
    seen('longer-side', { value: 1200, uncertainty: 0, unit: 'px' }),
    seen('sharpness', { value: 0.12345, uncertainty: 0.0234, unit: 'share' }),
    seen('ground-noise', { value: 1.9, unit: 'step', by: 'hand' }),
    seen('too-weak', { value: false }),
    seen('watermark', { value: 'cellar-finds.example' }),
    seen('hash', {}),
    seen('of-a-newer-build', { value: 3 }),
  ];
  render(<Measured read={{ ...photoRead('p1'), observations }} />, room);
  expect(
    [...room.querySelectorAll('tr')].map((row) => [...row.children].map(({ textContent }) => textContent)),
  ).toEqual([
    ['Longer side', '1,200 px'],
    ['Sharpness', '0.123 ± 0.023'],
    ['Grain of the ground', '1.90 of 255 set by you'],
    ['Too small or too blurred to show a stamp', 'no'],
    ['Web address in the photo', 'cellar-finds.example'],
    ['Hash, which tells the same photo again', 'not measured'],
    ['of-a-newer-build', '3.00'],
  ]);
});
