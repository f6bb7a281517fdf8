import { describe, expect, it } from 'vitest';
import { mistakenUnit } from '../../../src/evidence/mistaken-unit';
import type { MakerFile } from '../../../src/maker/types';
import { file, modelOf, of, page, size } from './sized';

describe('a unit taken for another', () => {
  const satchel = file(modelOf('Satchel', size(30, 20)));
  const taken = (width: number, height: number | null, maker: MakerFile = satchel) =>
    mistakenUnit(
      of(page('Satchel', ['width', width, 1], ...(height === null ? [] : [['height', height, 1] as const])), maker),
    );

  it.each([
    ['inches as centimetres', 300 / 2.54, 200 / 2.54, 'inches-as-cm', 1 / 2.54],
    ['centimetres as inches', 300 * 2.54, 200 * 2.54, 'cm-as-inches', 2.54],
    ['centimetres as millimetres', 30, 20, 'cm-as-mm', 0.1],
    ['millimetres as centimetres', 3000, 2000, 'mm-as-cm', 10],
  ])('is found: %s', (_, width, height, mistaken, factor) => {
    expect(taken(width, height)).toEqual({ mistaken, factor, sides: ['size-read-0', 'size-read-1'] });
  });

  it('is none where the sides fit as they stand, where only one would, and where there is one side', () => {
    expect(taken(300, 200)).toBeNull();
    expect(taken(300, 20)).toBeNull();
    expect(taken(30, 200)).toBeNull();
    expect(taken(30, null)).toBeNull();
    expect(taken(30, 20, file(modelOf('Satchel', size(30))))).toBeNull();
    expect(taken(30, 20, file())).toBeNull();
    expect(taken(41, 33)).toBeNull();
  });
});
