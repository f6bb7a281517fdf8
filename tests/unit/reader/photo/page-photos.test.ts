// @vitest-environment jsdom
import { afterEach, describe, expect, it, vi } from 'vitest';
import { fetchInPage } from '../../../../src/reader/photo/page-photos';

afterEach(() => vi.unstubAllGlobals());
const answerWith = (body: string, type: string) =>
  vi.stubGlobal('fetch', async () => new Response(body, { headers: { 'content-type': type } }));

describe('a photo that comes as a drawing', () => {
  it.each(['https://photos.attic-arcade.example/1', 'blob:https://attic-arcade.example/1'])(
    'is not taken from %s, and called one',
    async (url) => {
      answerWith('<svg xmlns="http://www.w3.org/2000/svg"/>', 'image/svg+xml; charset=utf-8');
      const reply = await fetchInPage({ url, withinMs: 20_000 });
      expect(reply).toMatchObject({ ok: false, problem: { code: 'photo-is-drawing' } });
    },
  );

  it('is told from one that comes as a photograph', async () => {
    answerWith('bytes', 'image/jpeg');
    expect(await fetchInPage({ url: 'https://photos.attic-arcade.example/1', withinMs: 20_000 })).toEqual({
      ok: true,
      value: { base64: btoa('bytes'), mediaType: 'image/jpeg' },
    });
  });
});

describe('what a photo is asked for with', () => {
  function askedWith(): RequestInit[] {
    const inits: RequestInit[] = [];
    vi.stubGlobal('fetch', async (_: string, init: RequestInit) => {
      inits.push(init);
      return new Response('bytes', { headers: { 'content-type': 'image/jpeg' } });
    });
    return inits;
  }

  it('leaves nothing in a cache, follows nothing, and sends cookies to the page’s own origin only', async () => {
    const inits = askedWith();
    for (const url of [`${location.origin}/1.jpg`, 'https://photos.attic-arcade.example/1.jpg'])
      await fetchInPage({ url, withinMs: 20_000 });
    expect(inits).toMatchObject([
      { cache: 'no-store', redirect: 'manual', credentials: 'same-origin' },
      { cache: 'no-store', redirect: 'manual', credentials: 'omit' },
    ]);
  });
});
