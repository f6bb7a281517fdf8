import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { StampResult } from '../../../src/cli/stamp-result';

const root = new URL('../../../', import.meta.url).pathname;
const demo = (name: string): string => join(root, 'tests/market/site/photos', name);

const ondrasse = join(root, 'src/maker/built-in/ondrasse.json');

/** Runs the command as a user does; `status` is its exit status. */
const run = (...args: string[]): Promise<{ status: number; out: string; err: string }> =>
  new Promise((resolve) => {
    execFile(
      process.execPath,
      [join(root, 'node_modules/tsx/dist/cli.mjs'), join(root, 'src/cli/read-stamp.ts'), ...args],
      { cwd: root, maxBuffer: 1 << 24 },
      (error, out, err) => resolve({ status: typeof error?.code === 'number' ? error.code : 0, out, err }),
    );
  });

describe('read-stamp on the command line', () => {
  const folder = mkdtempSync(join(tmpdir(), 'read-stamp-'));
  let results: StampResult[];
  let status: number;
  beforeAll(async () => {
    writeFileSync(join(folder, 'page.jpg'), '<!doctype html><p>not found</p>');
    const black = sharp({ create: { width: 500, height: 400, channels: 3, background: '#000000' } });
    writeFileSync(join(folder, 'black.jpg'), await black.jpeg().toBuffer());
    const files = [join(folder, 'page.jpg'), join(folder, 'none.jpg'), join(folder, 'black.jpg'), demo('l2-stamp.jpg')];
    const ran = await run('--json', '--maker', ondrasse, ...files);
    status = ran.status;
    results = JSON.parse(ran.out) as StampResult[];
  }, 120_000);
  afterAll(() => rmSync(folder, { recursive: true }));

  it('goes on after files that are no photos, says what they were, and ends with 1', () => {
    expect(results.map(({ problem }) => problem?.code ?? null)).toEqual([
      'photo-not-image',
      'photo-missing',
      null,
      null,
    ]);
    expect(status).toBe(1);
  });

  it('has no reading where nothing is stamped', () => {
    expect(results[2]).toMatchObject({ readings: [], printed: [] });
  });

  it('reads a foil stamp with its system, date, place and where it stands', () => {
    const [best] = results[3]?.readings ?? [];
    expect(best).toMatchObject({
      text: 'KV0978',
      system: { maker: 'Ondrasse', id: 'interleaved-month', invented: true },
      span: { from: '1998-07-01', to: '1998-07-31', precision: 'month' },
      place: 'BE',
    });
    expect(best?.probability).toBeGreaterThan(0.9);
    const [x0, y0, x1, y1] = best?.box ?? [0, 0, 0, 0];
    expect([x0 > 280, y0 > 310, x1 < 830, y1 < 520]).toEqual([true, true, true, true]);
  });

  it('without a maker file reads the shape of the code, under no invented maker', async () => {
    const { out } = await run('--json', demo('l2-stamp.jpg'));
    const [best] = (JSON.parse(out) as StampResult[])[0]?.readings ?? [];
    expect(best?.text).toBe('KV0978');
    expect(out).not.toContain('Ondrasse');
  }, 60_000);

  it('says how it is used when no photo is named, and what is wrong with a maker file', async () => {
    expect(await run('--json')).toMatchObject({ status: 2, err: expect.stringContaining('usage:') });
    writeFileSync(join(folder, 'maker.json'), '{"format": 1, "maker": "Ondr');
    const ran = await run('--maker', join(folder, 'maker.json'), demo('l2-stamp.jpg'));
    expect(ran).toMatchObject({ status: 2, err: expect.stringContaining('maker.json') });
  }, 60_000);
});
