import { execFile } from 'node:child_process';
import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { caseSchema } from '../../../src/case';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'check-'));
const run = (...args: string[]): Promise<{ status: number; out: string; err: string }> =>
  new Promise((done) => {
    execFile(
      process.execPath,
      ['--import', 'tsx', 'src/cli/check.ts', ...args],
      { cwd: root, maxBuffer: 1e8 },
      (error, out, err) => done({ status: typeof error?.code === 'number' ? error.code : error ? 1 : 0, out, err }),
    );
  });

describe('npm run check', { timeout: 120_000 }, () => {
  it('prints one case of a demo page, its photos unread, with status 0', async () => {
    const page = 'tests/market/site/ondrasse-carryall-30-1995.html';
    const { status, out } = await run('--json', page, '--now', '2026-01-15T10:00:00Z');
    const built = caseSchema.parse(JSON.parse(out));
    expect(status).toBe(0);
    expect(built.maker).toBe('Ondrasse');
    expect(built.summary.contradictions).toBe(0);
    expect(built.skipped.map(({ code }) => code)).toContain('photos-not-read');
  });

  it('judges a page of another shop by no invented maker, unless its file is named', async () => {
    const page = 'tests/market/site/ondrasse-carryall-25-1987.html';
    const elsewhere = ['--json', page, '--url', 'https://shop.example/item/7', '--code', 'KV0978'];
    const real = caseSchema.parse(JSON.parse((await run(...elsewhere)).out));
    expect(real.maker).toBeNull();
    expect(real.summary.contradictions).toBe(0);
    expect(real.decodings.flatMap(({ readings }) => readings.map(({ system }) => system.maker))).not.toContain(
      'Ondrasse',
    );
    const file = 'src/maker/built-in/ondrasse.json';
    const named = caseSchema.parse(JSON.parse((await run(...elsewhere, '--maker', file)).out));
    expect([named.maker, named.makerInvented]).toEqual(['Ondrasse', true]);
    expect(named.summary.contradictions).toBe(1);
    const demo = caseSchema.parse(JSON.parse((await run('--json', page, '--code', 'KV0978')).out));
    expect([demo.listing.url, demo.maker]).toEqual([
      'https://attic-arcade.example/ondrasse-carryall-25-1987.html',
      'Ondrasse',
    ]);
  });

  it('goes on past a photo that is no image and says which was not read', async () => {
    const photos = mkdtempSync(join(tmpdir(), 'photos-'));
    writeFileSync(join(photos, 'l1-front.jpg'), 'not an image');
    const { status, out } = await run('--json', 'tests/market/site/ondrasse-carryall-30-1995.html', '--photos', photos);
    expect(status).toBe(0);
    const states = caseSchema.parse(JSON.parse(out)).photos.map(({ state }) => state);
    expect(new Set(states)).toEqual(new Set(['unread']));
  });

  it('ends with status 2 and the reason for a page that is missing or no page', async () => {
    const missing = await run('--json', join(folder, 'none.html'));
    expect([missing.status, missing.out]).toEqual([2, '']);
    expect(missing.err).toContain('there is no file of this name');
    writeFileSync(join(folder, 'words.html'), 'only words');
    const words = await run(join(folder, 'words.html'));
    expect(words.status).toBe(2);
    expect(words.err).toContain('the file is not an HTML page');
  });

  it('gives a case of a page that lists many pieces, and says so', async () => {
    const { status, out, err } = await run('--json', 'tests/market/site/index.html');
    expect(status).toBe(0);
    expect(err).toContain('many pieces');
    const built = caseSchema.parse(JSON.parse(out));
    expect(new Set(built.outcomes.map(({ outcome }) => outcome))).toEqual(new Set(['cannot-tell']));
  });

  it('goes on without a folder of photos that is not there, and says so', async () => {
    const page = 'tests/market/site/ondrasse-carryall-30-1995.html';
    const { status, out, err } = await run('--json', page, '--photos', join(folder, 'nowhere'));
    expect(status).toBe(0);
    expect(err).toContain('the folder of photos cannot be read');
    expect(caseSchema.parse(JSON.parse(out)).skipped.map(({ code }) => code)).toContain('photo-folder-missing');
  });

  it('writes a readable report without --json', async () => {
    const { out } = await run('tests/market/site/ondrasse-carryall-30-1995.html');
    expect(out).toContain('Maker file: Ondrasse (invented, for demonstration)');
    expect(out).toContain('This is no authentication.');
  });

  it('says what a quoted code may mean where no file explains it', async () => {
    const page = join(folder, 'satchel.html');
    writeFileSync(
      page,
      '<meta property="og:type" content="product"><h1>Harrow & Lund satchel</h1><p class="price">£80</p><p>The label inside has "HL 0874" pressed into it.</p>',
    );
    const { out } = await run(page, '--url', 'https://shop.example/1');
    const codes = out.slice(out.indexOf('What the stamp says'), out.indexOf('Still open\n'));
    expect(codes).toContain('- HL 0874 (Quoted in the listing)');
    expect(codes).toMatch(/\n {4}July 1984 \(its shape alone, .*common practice, no source\)/);
    expect(codes).toMatch(/\n {4}August 1974 \(its shape alone/);
  });

  it('writes the message in the language of the page', async () => {
    const page = join(folder, 'tasche.html');
    writeFileSync(
      page,
      '<html lang="de"><meta property="og:type" content="product"><h1>Handtasche aus Leder</h1><p class="price">80 €</p></html>',
    );
    const { out } = await run(page, '--url', 'https://laden.example/1');
    const message = out.slice(out.indexOf('Message to the seller'));
    expect(message).toContain('Guten Tag');
    expect(message).not.toContain('Hello');
  });
});
