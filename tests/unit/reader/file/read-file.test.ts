import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { builtInMakers } from '../../../../src/maker';
import { askFile, type FileAnswer } from '../../../../src/reader/file/ask-file';
import { type FilePorts, mostFileBytes, readFileAt } from '../../../../src/reader/file/read-file';
import { file, leadTo, type PhotoHost, startPhotoHost, withoutEnd } from '../../../browser/photo-host';

let host: PhotoHost;
beforeAll(async () => {
  host = await startPhotoHost();
});
afterAll(() => host?.close());

const sha256 = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const ports: FilePorts = {
  ask: askFile,
  digest: async (bytes) => sha256(bytes),
  now: () => new Date('2026-11-29T10:00:00Z'),
};
const read = (path: string) => readFileAt(`http://127.0.0.1:${host.port}${path}`, ports);
const codes = async (path: string) => {
  const answer = await read(path);
  return answer.ok ? ['read'] : answer.problems.map(({ code }) => code);
};
const text = JSON.stringify(builtInMakers[0]);

describe('a maker file at an address', () => {
  it('is read whole, with the hash of its bytes and no cookie', async () => {
    host.on('/good.json', file('application/json', text));
    expect(await read('/good.json')).toEqual({
      ok: true,
      value: {
        address: `http://127.0.0.1:${host.port}/good.json`,
        at: '2026-11-29T10:00:00.000Z',
        sha256: sha256(Buffer.from(text)),
        bytes: Buffer.byteLength(text),
        file: builtInMakers[0],
      },
    });
    expect(host.asked.at(-1)).toEqual({ path: '/good.json', cookie: undefined });
  });

  it('is not sought where the address leads on to', async () => {
    host.on('/away.json', leadTo('/good.json'));
    const before = host.asked.length;
    expect(await codes('/away.json')).toEqual(['file-led-on']);
    expect(host.asked.slice(before).map(({ path }) => path)).toEqual(['/away.json']);
  });

  it('is ended while it comes when it has no end, and is not begun when it says that it is too large', async () => {
    const given = new Promise<number>((tell) => host.on('/endless.json', withoutEnd(tell)));
    expect(await codes('/endless.json')).toEqual(['file-too-large']);
    expect(await given).toBeLessThan(4 * mostFileBytes);
    host.on('/large.json', (_, response) => {
      response.writeHead(200, { 'content-length': 50_000_000 });
      response.write('{');
    });
    expect(await codes('/large.json')).toEqual(['file-too-large']);
  });

  it('that is not there, is kept from strangers, or fails, is told by the server’s answer', async () => {
    const answer = (path: string, status: number) =>
      host.on(path, (_, response) => void response.writeHead(status).end());
    answer('/gone.json', 410);
    answer('/closed.json', 403);
    answer('/broken.json', 503);
    expect(await codes('/nowhere.json')).toEqual(['file-missing']);
    expect(await codes('/gone.json')).toEqual(['file-missing']);
    expect(await codes('/closed.json')).toEqual(['file-refused']);
    expect(await codes('/broken.json')).toEqual(['file-answer']);
  });

  it('that breaks off, by the connection or by itself, is told', async () => {
    host.on('/cut.json', (_, response) => {
      response.writeHead(200, { 'content-length': Buffer.byteLength(text) });
      response.write(text.slice(0, 500), () => response.destroy());
    });
    host.on('/half.json', file('application/json', text.slice(0, 500)));
    expect(await codes('/cut.json')).toEqual(['file-cut']);
    expect(await codes('/half.json')).toEqual(['maker-file-not-json']);
  });

  it('is told from a page, from bytes that are no text, and from other files', async () => {
    host.on('/page.json', file('text/html', '\n<!doctype html><title>Makers</title>'));
    host.on('/picture.json', file('image/png', new Uint8Array([0x89, 0x50, 0x4e, 0x47, 0xff, 0xfe])));
    host.on('/empty.json', file('application/json', ''));
    host.on('/newer.json', file('application/json', '{"format": 3, "maker": "Ondrasse"}'));
    host.on('/other.json', file('application/json', '{"name": "package"}'));
    expect(await codes('/page.json')).toEqual(['file-is-page']);
    expect(await codes('/picture.json')).toEqual(['file-not-text']);
    expect(await codes('/empty.json')).toEqual(['maker-file-not-json']);
    expect(await codes('/newer.json')).toEqual(['maker-file-newer']);
    expect(await codes('/other.json')).toContain('maker-file-unrecognized-keys');
  });

  it('that nobody serves, or that comes too late or without a connection, is told', async () => {
    const closed = await startPhotoHost();
    await closed.close();
    expect(await readFileAt(`http://127.0.0.1:${closed.port}/a.json`, ports)).toMatchObject({
      problems: [{ code: 'file-unreachable' }],
    });
    for (const kind of ['late', 'offline'] as const) {
      const ask = async (): Promise<FileAnswer> => ({ kind });
      expect(await readFileAt('https://makers.example/a.json', { ...ports, ask })).toMatchObject({
        problems: [{ code: `file-${kind}`, where: 'https://makers.example/a.json' }],
      });
    }
  });
});
