import { describe, expect, it } from 'vitest';
import { contentBox, meet, pictureBox } from '../../../../src/reader/photo/shown-photo/box';
import { largestFree } from '../../../../src/reader/photo/shown-photo/largest-free';

const styled = (values: Record<string, string>) => ({ getPropertyValue: (name: string) => values[name] ?? '0px' });

describe('where a photo lies in its element', () => {
  it('is inside border and padding, grown by the element’s transform', () => {
    const style = styled({
      'border-left-width': '4px',
      'border-right-width': '4px',
      'padding-left': '6px',
      'padding-top': '10px',
    });
    const rect = { x: 100, y: 50, width: 400, height: 300 };
    expect(contentBox(rect, style, { across: 1, down: 1 })).toEqual({ x: 110, y: 60, width: 386, height: 290 });
    expect(contentBox(rect, style, { across: 2, down: 2 })).toEqual({ x: 120, y: 70, width: 372, height: 280 });
  });

  const content = { x: 10, y: 20, width: 300, height: 300 };
  const natural = { width: 1200, height: 900 };
  it.each([
    ['fill', '50% 50%', { x: 10, y: 20, width: 300, height: 300 }],
    ['contain', '50% 50%', { x: 10, y: 57.5, width: 300, height: 225 }],
    ['contain', '50% 0%', { x: 10, y: 20, width: 300, height: 225 }],
    ['cover', '50% 50%', { x: -40, y: 20, width: 400, height: 300 }],
    ['cover', '100% 50%', { x: -90, y: 20, width: 400, height: 300 }],
    ['cover', '-30px 0px', { x: -20, y: 20, width: 400, height: 300 }],
    ['none', '0% 0%', { x: 10, y: 20, width: 1200, height: 900 }],
    ['scale-down', '0px 0px', { x: 10, y: 20, width: 300, height: 225 }],
  ])('by object-fit %s and object-position %s', (fit, position, expected) => {
    expect(pictureBox(content, natural, fit, position)).toEqual(expected);
  });

  it('is nowhere outside the window', () => {
    expect(meet(content, { x: 0, y: 0, width: 100, height: 100 })).toEqual({ x: 10, y: 20, width: 90, height: 80 });
    expect(meet(content, { x: 500, y: 0, width: 100, height: 100 }).width).toBe(0);
  });
});

describe('the largest free part', () => {
  const grid = (rows: string[]) => rows.map((row) => [...row].map((point) => point === '.'));
  const at = [0, 10, 20, 30];
  it.each([
    ['all of it', ['....', '....', '....', '....'], { left: 0, right: 3, top: 0, bottom: 3 }],
    ['what a bar on top leaves', ['####', '....', '....', '....'], { left: 0, right: 3, top: 1, bottom: 3 }],
    ['the larger side of a hole', ['.#..', '....', '....', '....'], { left: 0, right: 3, top: 1, bottom: 3 }],
    ['one point', ['####', '##.#', '####', '####'], { left: 2, right: 2, top: 1, bottom: 1 }],
  ])('is %s', (_name, rows, expected) => {
    expect(largestFree(grid(rows), at, at)).toEqual(expected);
  });

  it('is measured by area, not by points', () => {
    expect(largestFree(grid(['..#.', '..#.']), [0, 1, 2, 90], [0, 50])).toEqual({
      left: 0,
      right: 1,
      top: 0,
      bottom: 1,
    });
    expect(largestFree(grid(['.#..', '.#..']), [0, 1, 2, 90], [0, 50])).toEqual({
      left: 2,
      right: 3,
      top: 0,
      bottom: 1,
    });
  });

  it('is none where everything is covered', () => {
    expect(largestFree(grid(['##', '##']), [0, 1], [0, 1])).toBeNull();
  });

  it('of every small grid is as large as any free rectangle in it', () => {
    for (let pattern = 0; pattern < 512; pattern += 1) {
      const rows = [0, 1, 2].map((row) => [0, 1, 2].map((column) => ((pattern >> (row * 3 + column)) & 1) === 1));
      const places = [0, 7, 9];
      const best = largestFree(rows, places, places);
      const area = (cells: NonNullable<typeof best>) =>
        ((places[cells.right] as number) - (places[cells.left] as number) + 1) *
        ((places[cells.bottom] as number) - (places[cells.top] as number) + 1);
      let most = 0;
      for (const top of [0, 1, 2])
        for (const bottom of [0, 1, 2].filter((row) => row >= top))
          for (const left of [0, 1, 2])
            for (const right of [0, 1, 2].filter((column) => column >= left)) {
              const inside = rows.slice(top, bottom + 1).every((row) => row.slice(left, right + 1).every(Boolean));
              if (inside) most = Math.max(most, area({ top, bottom, left, right }));
            }
      expect(best === null ? 0 : area(best), `pattern ${pattern}`).toBe(most);
    }
  });
});
