import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { stitchScene } from '../../measure/stitch-truth';

const root = new URL('../../../', import.meta.url).pathname;
const run = (...args: string[]): Promise<{ status: number; out: string; err: string }> =>
  new Promise((resolve) => {
    execFile(
      process.execPath,
      [join(root, 'node_modules/tsx/dist/cli.mjs'), join(root, 'src/cli/measure.ts'), ...args],
      { cwd: root, maxBuffer: 1 << 24 },
      (error, out, err) => resolve({ status: typeof error?.code === 'number' ? error.code : 0, out, err }),
    );
  });

describe('measure on the command line', () => {
  const folder = mkdtempSync(join(tmpdir(), 'measure-'));
  const [photo, marks] = [join(folder, 'row.jpg'), join(folder, 'marks.json')];
  let count: number;
  let height: number;
  let line: number[][];
  beforeAll(async () => {
    const scene = await stitchScene(502, 'clear', true);
    count = scene.count;
    const { width, data } = scene.image;
    height = scene.image.height;
    await sharp(Buffer.from(data), { raw: { width, height, channels: 4 } })
      .jpeg({ quality: 95 })
      .toFile(photo);
    line = scene.line.map(({ x, y }) => [x, y]);
    const patch = [
      [10, 10],
      [60, 60],
    ];
    const own = [
      { what: 'count', points: line },
      { what: 'lab', points: patch },
      { what: 'white', points: patch },
      { what: 'repeat-x', points: line },
    ];
    writeFileSync(
      marks,
      JSON.stringify([
        { file: photo, marks: own },
        { file: join(folder, 'none.jpg'), marks: own },
      ]),
    );
  });
  afterAll(() => rmSync(folder, { recursive: true }));

  it('gives each mark its value, uncertainty, unit and place, and null with the reason where nothing was measured', async () => {
    const { status, out } = await run('--json', marks);
    expect(status).toBe(1);
    expect(JSON.parse(out)).toEqual([
      {
        file: photo,
        measures: [
          {
            what: 'count',
            value: count,
            uncertainty: expect.any(Number),
            unit: 'stitch',
            where: { form: 'line', points: [expect.anything(), expect.anything()] },
          },
          {
            what: 'lab',
            value: [expect.any(Number), expect.any(Number), expect.any(Number)],
            uncertainty: expect.any(Number),
            unit: 'de2000',
            where: expect.objectContaining({ form: 'polygon' }),
          },
          { what: 'repeat-x', value: null, uncertainty: null, unit: null, where: null, why: 'points' },
        ],
      },
      { file: join(folder, 'none.jpg'), measures: [], problem: expect.objectContaining({ code: 'photo-missing' }) },
    ]);
  });

  it('says its form where the marks are no list, or none', async () => {
    writeFileSync(join(folder, 'bad.json'), JSON.stringify({ file: photo, marks: [] }));
    const bad = await run(join(folder, 'bad.json'));
    expect([bad.status, bad.err]).toEqual([2, expect.stringContaining('no list of photos with their marks')]);
    const none = await run(join(folder, 'missing.json'));
    expect([none.status, none.err]).toEqual([2, expect.stringContaining('there is no file of this name')]);
    expect((await run('--help')).out).toContain('motif-off');
  });

  it('measures the other marks and photos beside those of another form, and says what is wrong with each', async () => {
    const count = { what: 'count', points: line };
    const points = [
      [1, 2],
      [3, null],
    ];
    await sharp({ create: { width: 90, height: 60, channels: 3, background: 'tan' } })
      .png()
      .toFile(join(folder, 'even.png'));
    writeFileSync(join(folder, 'cut.jpg'), readFileSync(photo).subarray(0, 4000));
    writeFileSync(
      join(folder, 'odd.json'),
      JSON.stringify([
        {
          file: 'row.jpg',
          by: 'me',
          marks: [
            { what: 'length', points },
            { ...count, name: 'tab' },
            { ...count, points },
          ],
        },
        {
          file: 'row.jpg',
          marks: [
            { what: 'lab', points: [] },
            null,
            {
              what: 'count',
              points: [
                [9e5, 1],
                [1, 1],
              ],
            },
          ],
        },
        { file: 'row.jpg' },
        null,
        { file: 'cut.jpg', marks: [count] },
        { file: 'even.png', marks: [count] },
      ]),
    );
    const { status, out } = await run('--json', join(folder, 'odd.json'));
    expect(status).toBe(1);
    const told = (JSON.parse(out) as { measures: { why?: string; form?: string }[]; problem?: { what: string } }[]).map(
      ({ measures, problem }) => problem?.what ?? measures.map(({ why, form }) => [why, form?.split(':')[0]]),
    );
    expect(told).toEqual([
      [
        ['mark', 'what'],
        [undefined, undefined],
        ['mark', 'points.1'],
      ],
      [
        ['mark', 'points'],
        ['mark', 'Invalid input'],
        ['outside', undefined],
      ],
      expect.stringMatching(/^Number 3 of the list is no photo with marks: marks/),
      expect.stringMatching(/^Number 4 of the list is no photo with marks/),
      expect.stringContaining('cut off'),
      [['outside', undefined]],
    ]);
    expect((await run(join(folder, 'odd.json'))).out).toContain('row.jpg: length: not measured (what: ');
  });

  it.each(['png', 'webp', 'avif', 'gif'] as const)('measures the same of a photo as %s', async (form) => {
    await sharp(photo)
      .toFormat(form)
      .toFile(join(folder, `row.${form}`));
    writeFileSync(marks, JSON.stringify([{ file: `row.${form}`, marks: [{ what: 'count', points: line }] }]));
    const [told] = JSON.parse((await run('--json', marks)).out);
    expect(told.measures[0].value).toBe(count);
  });

  it('takes the points of a photo that was held sideways as those of the upright one', async () => {
    const { data, info } = await sharp(photo).rotate(270).jpeg().toBuffer({ resolveWithObject: true });
    await sharp(data).withMetadata({ orientation: 6 }).jpeg().toFile(join(folder, 'sideways.jpg'));
    writeFileSync(marks, JSON.stringify([{ file: 'sideways.jpg', marks: [{ what: 'count', points: line }] }]));
    const [told] = JSON.parse((await run('--json', marks)).out);
    expect([told.measures[0].value, info.width]).toEqual([count, height]);
  });
});
