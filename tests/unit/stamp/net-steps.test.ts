import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type GreyImage, quadBounds } from '../../../src/photo';
import { loadNets, type ModelCard, modelCardSchema, type NetSession, stampNets } from '../../../src/stamp';
import { boxesOf, type FinderMap } from '../../../src/stamp/net/boxes';
import { smallModelCard } from '../small-model-card';

const card: ModelCard = { ...smallModelCard('KV0', 96), temperature: 2 };

/**
 * A map that is sure of one box: middle, size and turn in pixels of the finder's picture; the box's own frame gives
 * each cell its four distances, as the training does.
 */
function mapOf(
  rows: number,
  columns: number,
  x: number,
  y: number,
  wide: number,
  tall: number,
  degrees: number,
): FinderMap {
  const data = new Float32Array(8 * rows * columns).fill(-9);
  const [cosine, sine] = [Math.cos((degrees * Math.PI) / 180), Math.sin((degrees * Math.PI) / 180)];
  for (let cell = 0; cell < rows * columns; cell++) {
    const dx = (cell % columns) * 4 + 1.5 - (x - 0.5);
    const dy = Math.floor(cell / columns) * 4 + 1.5 - (y - 0.5);
    const u = dx * cosine + dy * sine;
    const v = -dx * sine + dy * cosine;
    if (Math.abs(u) > wide / 2 - 2 || Math.abs(v) > tall / 4) continue;
    const values = [
      4,
      2,
      ...[v + tall / 2, tall / 2 - v, u + wide / 2, wide / 2 - u].map((d) => Math.log(d / 8)),
      sine,
      cosine,
    ];
    values.forEach((value, plane) => {
      data[plane * rows * columns + cell] = value;
    });
  }
  return { data, rows, columns };
}

describe('from the finder’s map to boxes', () => {
  it.each([
    [0, 60, 40, 80, 20],
    [17, 70, 60, 90, 24],
    [-28, 64, 64, 70, 22],
  ])('finds a line turned by %d degrees where it lies', (degrees, x, y, wide, tall) => {
    const boxes = boxesOf(mapOf(32, 36, x, y, wide, tall, degrees), card.finder);
    expect(boxes).toHaveLength(1);
    const [a, b, c] = boxes[0]!.quad;
    expect((a.x + c.x) / 2).toBeCloseTo(x, 1);
    expect((a.y + c.y) / 2).toBeCloseTo(y, 1);
    expect(Math.hypot(b.x - a.x, b.y - a.y)).toBeCloseTo(wide, 0);
    expect(Math.hypot(c.x - b.x, c.y - b.y)).toBeCloseTo(tall, 0);
    expect((Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI).toBeCloseTo(degrees, 1);
    expect(boxes[0]?.stampScore).toBeCloseTo(1 / (1 + Math.exp(-2)), 5);
  });

  it('keeps two lines apart, the likelier stamp first, and drops specks', () => {
    const one = mapOf(32, 36, 70, 30, 90, 20, 0);
    const two = mapOf(32, 36, 70, 90, 90, 20, 0);
    const size = 32 * 36;
    const both = Float32Array.from(one.data, (value, at) => (one.data[at % size]! > 0 ? value : two.data[at]!));
    for (let cell = 0; cell < size; cell++) if (one.data[cell]! > 0) both[size + cell] = -2;
    both[0] = 5;
    const boxes = boxesOf({ data: both, rows: 32, columns: 36 }, card.finder);
    expect(boxes.map(({ quad }) => Math.round((quad[0].y + quad[2].y) / 2))).toEqual([90, 30]);
  });

  it('finds nothing on an empty map', () => {
    expect(boxesOf({ data: new Float32Array(8 * 16).fill(-9), rows: 4, columns: 4 }, card.finder)).toEqual([]);
  });
});

const photo: GreyImage = { width: 192, height: 100, data: new Float32Array(192 * 100).fill(200) };
const silent: NetSession = { run: async () => ({ data: [], shape: [1, 8, 0, 0] }) };

describe('the steps around the nets', () => {
  it('shows the finder a padded picture at its own size and answers in the photo’s pixels', async () => {
    const shapes: (readonly number[])[] = [];
    const finder: NetSession = {
      run: async (input, shape) => {
        shapes.push(shape);
        expect(input.length).toBe(64 * 96);
        return { data: mapOf(16, 24, 48, 25, 60, 16, 0).data, shape: [1, 8, 16, 24] };
      },
    };
    const [line] = await stampNets(card, finder, silent).findLines(photo);
    expect(shapes).toEqual([[1, 1, 64, 96]]);
    const { x0, x1, y0, y1 } = quadBounds(line!.quad);
    expect([x0, x1].map(Math.round)).toEqual([36, 156]);
    expect([y0, y1].map(Math.round)).toEqual([34, 66]);
  });

  it('shows the finder a share of that size when asked, and answers in the photo’s pixels all the same', async () => {
    const shapes: (readonly number[])[] = [];
    const finder: NetSession = {
      run: async (_, shape) => {
        shapes.push(shape);
        return { data: mapOf(8, 16, 24, 12, 30, 8, 0).data, shape: [1, 8, 8, 16] };
      },
    };
    const [line] = await stampNets(card, finder, silent).findLines(photo, 0.5);
    expect(shapes).toEqual([[1, 1, 32, 64]]);
    const { x0, x1 } = quadBounds(line!.quad);
    expect([x0, x1].map(Math.round)).toEqual([36, 156]);
  });

  it('shows the finder a small photo enlarged when asked, never past that size', async () => {
    const shapes: (readonly number[])[] = [];
    const finder: NetSession = {
      run: async (_, shape) => {
        shapes.push(shape);
        return { data: mapOf(16, 24, 48, 25, 60, 16, 0).data, shape: [1, 8, 16, 24] };
      },
    };
    const small: GreyImage = { width: 48, height: 25, data: new Float32Array(48 * 25).fill(200) };
    const [line] = await stampNets(card, finder, silent).findLines(small, 2.5);
    await stampNets(card, finder, silent).findLines(photo, 2.5);
    // Twice as large is all that its own size allows; the larger photo is shrunk as ever.
    expect(shapes).toEqual([
      [1, 1, 64, 96],
      [1, 1, 64, 96],
    ]);
    const { x0, x1 } = quadBounds(line!.quad);
    expect([x0, x1].map(Math.round)).toEqual([9, 39]);
  });

  it('gives probabilities flattened by the temperature, the unlikely left out', async () => {
    const recogniser: NetSession = { run: async () => ({ data: [0, 4, 0, -60, 2, 0, 0, 0], shape: [1, 2, 4] }) };
    const quad = [
      { x: 20, y: 20 },
      { x: 120, y: 20 },
      { x: 120, y: 60 },
      { x: 20, y: 60 },
    ] as const;
    const { steps } = await stampNets(card, silent, recogniser).readLine(photo, [...quad]);
    const total = 1 + Math.exp(2) + 1;
    expect(steps[0]?.K).toBeCloseTo(Math.exp(2) / total, 5);
    expect(steps[0]).not.toHaveProperty('0');
    expect(Object.values(steps[1]!).reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 6);
  });

  it('leaves a little of a character to the one with the same shape', async () => {
    const alike = modelCardSchema.parse({
      ...card,
      alphabet: 'O0K',
      temperature: 1,
      recogniser: { ...card.recogniser, alike: 0.1 },
    });
    const recogniser: NetSession = {
      run: async () => ({ data: [-50, 50, -50, -50, -50, -50, -50, 50], shape: [1, 2, 4] }),
    };
    const { steps } = await stampNets(alike, silent, recogniser).readLine(photo, [
      { x: 20, y: 20 },
      { x: 120, y: 20 },
      { x: 120, y: 60 },
      { x: 20, y: 60 },
    ]);
    expect(steps).toEqual([{ O: expect.closeTo(0.9, 9), '0': expect.closeTo(0.1, 9) }, { K: expect.closeTo(1, 9) }]);
  });

  it('has no lattice for a quad without any ground', async () => {
    const point = { x: 5, y: 5 };
    expect(await stampNets(card, silent, silent).readLine(photo, [point, point, point, point])).toEqual({ steps: [] });
  });

  it('says what is wrong with a card or nets that do not fit, and throws nothing', async () => {
    const runtime = {
      InferenceSession: { create: () => Promise.reject(new Error('no such operator')) },
      Tensor: class {},
    };
    const read = async () => new Uint8Array(4);
    expect(await loadNets(runtime, { card: '{', read })).toMatchObject({
      ok: false,
      problem: { code: 'nets-not-loaded' },
    });
    expect(await loadNets(runtime, { card: '{}', read })).toMatchObject({
      ok: false,
      problem: { code: 'nets-not-loaded' },
    });
    const whole = JSON.stringify(card);
    const opened = await loadNets(runtime, { card: whole, read });
    expect(opened.ok ? null : opened.problem.data).toEqual({ why: 'not-started', said: 'no such operator' });
  });
});

describe('the nets that ship', () => {
  const models = new URL('../../../public/models/', import.meta.url);

  it.each(['finder.onnx', 'recogniser.onnx'])(
    '%s casts nothing: one function of the runtime takes 280 MB to compile',
    (file) => {
      const bytes = readFileSync(new URL(file, models));
      // An operator's name stands in the file as it is, after its length and before the next field's tag.
      const has = (operator: string): boolean => bytes.includes(Buffer.from(`\u0004${operator}`, 'latin1'));
      expect([has('Conv'), has('Cast')]).toEqual([true, false]);
    },
  );

  it('have a card that fits, and together at most 4 MB', () => {
    const shipped = modelCardSchema.parse(JSON.parse(readFileSync(new URL('model-card.json', models), 'utf8')));
    const bytes = [shipped.finder.file, shipped.recogniser.file].map(
      (file) => readFileSync(new URL(file, models)).length,
    );
    expect(bytes[0]! + bytes[1]!).toBeLessThanOrEqual(4_000_000);
  });
});
