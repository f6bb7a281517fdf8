import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Quad } from '../../../src/photo';
import { firstPoints, nextNumber, whereOf, withinAt } from '../../../src/ui/bench/new-mark';
import { straightening } from '../../../src/ui/bench/straighten';
import { fitting, holding, toPhoto, toStage, type View } from '../../../src/ui/bench/view';

const views = fc.record({
  zoom: fc.double({ min: 0.05, max: 20, noNaN: true }),
  turn: fc.double({ min: -180, max: 180, noNaN: true }),
  x: fc.double({ min: -2000, max: 2000, noNaN: true }),
  y: fc.double({ min: -2000, max: 2000, noNaN: true }),
});
const points = fc.record({
  x: fc.double({ min: 0, max: 4000, noNaN: true }),
  y: fc.double({ min: 0, max: 4000, noNaN: true }),
});
const near = (a: { x: number; y: number }, b: { x: number; y: number }) => Math.hypot(a.x - b.x, a.y - b.y);

describe('how a photo lies in its stage', () => {
  it('a place of the photo goes to the stage and back', () => {
    fc.assert(fc.property(views, points, (view, point) => near(toPhoto(view, toStage(view, point)), point) < 1e-6));
  });

  it('what is under the pointer stays there while it is enlarged and turned', () => {
    const changed = (view: View, held: { x: number; y: number }, zoom: number, turn: number) => {
      const after = holding(view, held, { zoom, turn });
      return near(toStage(after, toPhoto(view, held)), held);
    };
    fc.assert(
      fc.property(
        views,
        points,
        fc.double({ min: 0.05, max: 20, noNaN: true }),
        fc.double({ min: -180, max: 180, noNaN: true }),
        (view, held, zoom, turn) => changed(view, held, zoom, turn) < 1e-5,
      ),
    );
  });

  it.each([0, 30, 90, -135])('the whole photo fits, turned by %i degrees', (turn) => {
    const [stage, photo] = [
      { width: 400, height: 300 },
      { width: 1200, height: 900 },
    ];
    const view = fitting(stage, photo, turn);
    for (const [x, y] of [
      [0, 0],
      [1200, 0],
      [1200, 900],
      [0, 900],
    ] as const) {
      const at = toStage(view, { x, y });
      expect(at.x).toBeGreaterThan(-1e-6);
      expect(at.x).toBeLessThan(400 + 1e-6);
      expect(at.y).toBeGreaterThan(-1e-6);
      expect(at.y).toBeLessThan(300 + 1e-6);
    }
  });
});

describe('new marks', () => {
  it('a hand is surer the more the photo is enlarged, within limits', () => {
    const photo = { width: 1200, height: 900 };
    expect([0.1, 0.5, 1, 30].map((zoom) => withinAt(zoom, photo))).toEqual([0.015, 8 / 1200, 4 / 1200, 0.002]);
  });

  it('have numbers that no other has, and the form that their points give', () => {
    expect(nextNumber([])).toBe(1);
    const one = { kind: 'panel' as const, within: 0, mm: null, name: '', points: [] };
    expect(
      nextNumber([
        { ...one, number: 4 },
        { ...one, number: 2 },
      ]),
    ).toBe(5);
    const stage = { width: 800, height: 600 };
    const form = (kind: Parameters<typeof firstPoints>[0]) =>
      whereOf({ kind, points: [...firstPoints(kind, 0, stage)] }).form;
    expect([form('panel'), form('patch'), form('stitches'), form('motif')]).toEqual([
      'quad',
      'polygon',
      'line',
      'point',
    ]);
  });

  it('a new patch is small, yet its handles do not lie over each other on a narrow stage', () => {
    const sides = (width: number, height: number) => {
      const [first, , opposite] = firstPoints('rivet', 2, { width, height });
      return [(opposite!.x - first!.x) * width, (opposite!.y - first!.y) * height].map(Math.round);
    };
    expect(sides(1000, 750)).toEqual([120, 90]);
    expect(sides(300, 225)).toEqual([76, 76]);
  });
});

describe('straightening', () => {
  it('lays the corners of a quad onto those of its box', () => {
    const quad: Quad = [
      { x: 120, y: 80 },
      { x: 700, y: 130 },
      { x: 650, y: 520 },
      { x: 90, y: 470 },
    ];
    const entries = /^matrix3d\((.+)\)$/.exec(straightening(quad, { width: 200, height: 150 }) ?? '')?.[1];
    const m = entries!.split(',').map(Number);
    const corners = quad.map(({ x, y }) => {
      const last = m[3]! * x + m[7]! * y + m[15]!;
      return [(m[0]! * x + m[4]! * y + m[12]!) / last, (m[1]! * x + m[5]! * y + m[13]!) / last].map(
        (part) => Math.round(part * 1e6) / 1e6 + 0,
      );
    });
    expect(corners).toEqual([
      [0, 0],
      [200, 0],
      [200, 150],
      [0, 150],
    ]);
  });

  it('gives nothing for a quad that is flat', () => {
    const flat = [0, 1, 2, 3].map((x) => ({ x, y: x })) as unknown as Quad;
    expect(straightening(flat, { width: 10, height: 10 })).toBeNull();
  });
});
