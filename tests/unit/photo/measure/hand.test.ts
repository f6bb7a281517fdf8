import { describe, expect, it } from 'vitest';
import {
  type HandMark,
  type HandMeasure,
  type MarkKind,
  measureHandMarks,
  type PixelImage,
  type Point,
  type Quad,
} from '../../../../src/photo';
import { project, projectionOnto } from '../../../../src/photo/warp';
import { panelScene } from '../../../measure/panel-truth';
import { chance } from '../../../measure/random';
import { stitchScene } from '../../../measure/stitch-truth';

const grey = (width: number, height: number): PixelImage => ({
  width,
  height,
  data: new Uint8ClampedArray(width * height * 4).fill(128),
});
const sheet = grey(1000, 800);

/** A mark given in pixels of its photo. */
const mark = (
  kind: MarkKind,
  points: readonly Point[],
  { width, height }: PixelImage,
  over: Partial<HandMark> = {},
): HandMark => ({
  number: 1,
  kind,
  points: points.map(({ x, y }) => ({ x: x / width, y: y / height })),
  within: 0.002,
  mm: null,
  name: '',
  ...over,
});
const line = (x0: number, y0: number, x1: number, y1: number): Point[] => [
  { x: x0, y: y0 },
  { x: x1, y: y1 },
];
/** Where a plane of 200 × 150 mm shows its points, by where its corners are seen. */
const planeAt = (...corners: [x: number, y: number][]) => {
  const view = projectionOnto(corners.map(([x, y]) => ({ x, y })) as unknown as Quad, 200, 150)!;
  return (x: number, y: number): Point => project(view, x, y);
};
/** The first measure at one of the marks. */
const at = (image: PixelImage, marks: HandMark[], which: number): HandMeasure =>
  measureHandMarks(image, marks)[which]![0]!;
const length = mark('length', line(100, 300, 100, 700), sheet, { number: 9 });

describe('lengths', () => {
  it('are in pixels where nothing tells a scale, and the uncertainty is that of both ends', () => {
    const told = at(sheet, [length], 0);
    expect(told).toMatchObject({ what: 'length', value: 400, unit: 'px' });
    expect(told.uncertainty).toBeCloseTo(Math.SQRT2 * 2, 6);
  });

  it('are in millimetres by a ruler, and a ruler that is set four times as far off makes them less sure', () => {
    const ruler = (within: number) => mark('ruler', line(100, 100, 600, 100), sheet, { mm: 50, within });
    const [scale, told] = [0, 1].map((which) => at(sheet, [ruler(0.002), length], which));
    expect(scale).toMatchObject({ what: 'scale', value: 0.1, unit: 'mm-per-px' });
    expect(told).toMatchObject({ value: 40, unit: 'mm' });
    const coarse = at(sheet, [ruler(0.008), length], 1);
    expect(coarse.uncertainty).toBeGreaterThan((told?.uncertainty ?? 0) * 1.5);
  });

  it('a ruler without its length says that it is missing, and gives no scale', () => {
    const marks = [mark('ruler', line(100, 100, 600, 100), sheet), length];
    const [scale, told] = [0, 1].map((which) => at(sheet, marks, which));
    expect(scale).toMatchObject({ what: 'scale', value: null, why: 'no-length' });
    expect(told).toMatchObject({ unit: 'px' });
  });

  it('are in millimetres of the card’s plane, from whichever side it is seen', () => {
    // A plane of millimetres seen aslant; the card lies at (20, 30) in it, the length is 60 mm.
    const seen = planeAt([120, 90], [900, 160], [820, 720], [60, 600]);
    const upright = [seen(20, 30), seen(73.98, 30), seen(73.98, 115.6), seen(20, 115.6)];
    const long = [seen(20, 30), seen(105.6, 30), seen(105.6, 83.98), seen(20, 83.98)];
    for (const card of [long, upright]) {
      const marks = [mark('card', card, sheet), mark('length', [seen(30, 120), seen(90, 120)], sheet, { number: 2 })];
      const told = at(sheet, marks, 1);
      expect(told).toMatchObject({ unit: 'mm' });
      expect(Number(told.value)).toBeCloseTo(60, 6);
    }
  });

  it('hold within their uncertainty in 95 of 100 cases for a hand that is off as far as it says', () => {
    const draw = chance(31);
    const within = 0.004;
    // Within, in 95 of 100 cases: 1.96 standard deviations.
    const off = () => (draw.normal() * within * sheet.width) / 1.96;
    const seen = planeAt([150, 120], [880, 200], [840, 700], [90, 620]);
    let held = 0;
    for (let turn = 0; turn < 400; turn++) {
      const set = (x: number, y: number) => {
        const at = seen(x, y);
        return { x: at.x + off(), y: at.y + off() };
      };
      const card = [set(20, 20), set(105.6, 20), set(105.6, 73.98), set(20, 73.98)];
      const marks = [
        mark('card', card, sheet, { within }),
        mark('length', [set(30, 110), set(130, 100)], sheet, { number: 2, within }),
      ];
      const told = at(sheet, marks, 1);
      if (Math.abs(Number(told.value) - Math.hypot(100, 10)) <= (told.uncertainty ?? 0)) held += 1;
    }
    expect(held / 400).toBeGreaterThan(0.92);
    expect(held / 400).toBeLessThan(0.985);
  });

  it('of a photo that is measured smaller are in its own pixels', () => {
    expect(measureHandMarks(sheet, [length], 2)[0]?.[0]).toMatchObject({ value: 800, unit: 'px' });
  });
});

describe('marks that serve others', () => {
  it('stitches to the centimetre are told with a ruler, and not without', async () => {
    const { image, line: row, count } = await stitchScene(502, 'clear', true);
    const stitches = mark('stitches', row, image, { number: 2, within: 0.01 });
    const [alone] = measureHandMarks(image, [stitches]);
    expect(alone!.map(({ what }) => what)).toEqual(['count', 'pitch', 'evenness', 'slant', 'skipped']);
    const pixels = Math.hypot(row[1].x - row[0].x, row[1].y - row[0].y);
    const ruler = mark('ruler', line(50, 50, 450, 50), image, { mm: 40, within: 0.001 });
    const [, measured] = measureHandMarks(image, [ruler, stitches]);
    const told = measured!.find(({ what }) => what === 'stitches-per-cm');
    const truth = count / (pixels / 100);
    expect(told).toMatchObject({ unit: 'per-cm' });
    expect(Math.abs((told!.value as number) - truth)).toBeLessThanOrEqual(told!.uncertainty!);
  });

  it('a row without stitches says so once', async () => {
    const { image, line: row } = await stitchScene(504, 'fair', false);
    expect(measureHandMarks(image, [mark('stitches', row, image)])).toMatchObject([
      [{ value: null, why: 'no-stitches' }],
    ]);
  });

  it('a motif is held against the first panel, and says so where there is none', async () => {
    const { image, corners, motif, motifOff } = await panelScene(5, 'clear', { axis: true, off: 0.2 });
    const point = mark('motif', [motif], image, { number: 2, within: 0.015 });
    expect(measureHandMarks(image, [point])).toMatchObject([[{ what: 'motif-off', value: null, why: 'no-panel' }]]);
    const told = at(image, [mark('panel', corners, image, { within: 0.015 }), point], 1);
    expect(told).toMatchObject({ what: 'motif-off', against: 1, unit: 'share' });
    expect(Math.abs(Number(told.value) - motifOff)).toBeLessThanOrEqual(told.uncertainty ?? 0);
  });

  it('a colour needs a white; a second patch is compared with the first, with or without', () => {
    const image = grey(400, 300);
    const fill = (x0: number, colour: readonly number[]) => {
      for (let y = 50; y < 250; y++)
        for (let x = x0; x < x0 + 80; x++) image.data.set([...colour, 255], (y * 400 + x) * 4);
    };
    fill(20, [150, 90, 60]);
    fill(120, [160, 96, 64]);
    fill(220, [235, 235, 235]);
    const box = (x0: number) => [...line(x0, 80, x0 + 60, 80), ...line(x0 + 60, 200, x0, 200)];
    const patches = [mark('patch', box(30), image), mark('patch', box(130), image, { number: 2 })];
    expect(measureHandMarks(image, patches)).toMatchObject([
      [{ what: 'lab', value: null, why: 'no-white' }],
      [
        { what: 'lab', value: null },
        { what: 'difference', against: 1, unit: 'de2000' },
      ],
    ]);
    const white = mark('white', box(230), image, { number: 3 });
    const lab = at(image, [...patches, white], 0);
    expect(lab).toMatchObject({ what: 'lab', unit: 'de2000' });
    expect(lab.value).toHaveLength(3);
  });

  it('a place that age changes is held against the first patch: how much darker, greener, or of another colour', () => {
    const image = grey(500, 300);
    const fill = (x0: number, colour: readonly number[]) => {
      for (let y = 50; y < 250; y++)
        for (let x = x0; x < x0 + 80; x++) image.data.set([...colour, 255], (y * 500 + x) * 4);
    };
    fill(20, [205, 165, 120]);
    fill(120, [150, 105, 65]);
    fill(220, [175, 170, 110]);
    const box = (x0: number) => [...line(x0, 80, x0 + 60, 80), ...line(x0 + 60, 200, x0, 200)];
    const covered = mark('patch', box(30), image);
    const open = mark('open-leather', box(130), image, { number: 2 });
    const rivet = mark('rivet', box(230), image, { number: 3 });
    const touched = mark('touched', box(130), image, { number: 4 });
    const [, darker, greener, another] = measureHandMarks(image, [covered, open, rivet, touched]);
    expect(darker).toMatchObject([{ what: 'darkening', unit: 'lab-step', against: 1 }]);
    expect(greener).toMatchObject([{ what: 'greening', unit: 'lab-step', against: 1 }]);
    expect(another).toMatchObject([{ what: 'plating-change', unit: 'de2000', against: 1 }]);
    for (const [told] of [darker, greener, another] as HandMeasure[][])
      expect(Number(told!.value) - told!.uncertainty!, told!.what).toBeGreaterThan(4);
    // The other way round it is lighter: less dark than nothing.
    const swapped = [mark('patch', box(130), image), mark('open-leather', box(30), image, { number: 2 })];
    expect(Number(measureHandMarks(image, swapped)[1]![0]!.value)).toBeLessThan(-10);
    expect(measureHandMarks(image, [open])).toMatchObject([
      [{ what: 'darkening', value: null, why: 'no-first-patch' }],
    ]);
  });
});
