import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
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
  beforeAll(async () => {
    const scene = await stitchScene(502, 'clear', true);
    count = scene.count;
    const { width, height, data } = scene.image;
    await sharp(Buffer.from(data), { raw: { width, height, channels: 4 } })
      .jpeg({ quality: 95 })
      .toFile(photo);
    const line = scene.line.map(({ x, y }) => [x, y]);
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

  it('says its form where the marks have another, or are none', async () => {
    writeFileSync(
      join(folder, 'bad.json'),
      JSON.stringify([{ file: photo, marks: [{ what: 'length', points: [[1, 2]] }] }]),
    );
    const bad = await run(join(folder, 'bad.json'));
    expect([bad.status, bad.err]).toEqual([2, expect.stringContaining('marks[0].what')]);
    const none = await run(join(folder, 'missing.json'));
    expect([none.status, none.err]).toEqual([2, expect.stringContaining('cannot be read')]);
    expect((await run('--help')).out).toContain('motif-off');
  });
});
