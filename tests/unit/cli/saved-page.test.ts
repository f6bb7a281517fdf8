import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readSavedPage } from '../../../src/cli/saved-page';

const folder = mkdtempSync(join(tmpdir(), 'saved-page-'));
const save = (name: string, content: string | Uint8Array) => {
  const path = join(folder, name);
  writeFileSync(path, content);
  return path;
};
const now = '2026-01-15T10:00:00Z';
const page = (head: string) => `<!doctype html><html lang="en"><head><title>Ondrasse Carryall 30</title>${head}
<script type="application/ld+json">{"@context":"https://schema.org","@type":"Product","name":"Ondrasse Carryall 30",
"image":["photos/front.jpg"],"offers":{"@type":"Offer","price":"540","priceCurrency":"EUR"}}</script></head>
<body><main><h1>Ondrasse Carryall 30</h1><p>€540</p><p>A brown leather bag of 1995, used on weekends.</p></main></body></html>`;

describe('readSavedPage', { timeout: 60_000 }, () => {
  it('reads a listing and resolves its photos by the address given', async () => {
    const read = await readSavedPage(save('a.html', page('')), 'https://attic-arcade.example/item/7', now);
    expect(read.ok && read.value.kind).toBe('listing');
    expect(read.ok && read.value.photos.map(({ url }) => url)).toEqual([
      'https://attic-arcade.example/item/photos/front.jpg',
    ]);
  });

  it('takes the address that the page names when none is given', async () => {
    const canonical = '<link rel="canonical" href="https://attic-arcade.example/item/9">';
    const read = await readSavedPage(save('b.html', page(canonical)), undefined, now);
    expect(read.ok && read.value.url).toBe('https://attic-arcade.example/item/9');
  });

  it('refuses a file that is missing, and one that is no page', async () => {
    const missing = await readSavedPage(join(folder, 'none.html'), undefined, now);
    expect(!missing.ok && missing.problem).toMatchObject({
      code: 'page-missing',
      what: 'there is no file of this name',
    });
    for (const content of ['just words', '{"a": 1}', new Uint8Array([0xff, 0xd8, 0xff, 0, 0, 1])]) {
      const read = await readSavedPage(save('c.html', content), undefined, now);
      expect(!read.ok && read.problem.code).toBe('page-not-html');
    }
  });

  it.each(['javascript:alert(1)', 'file:///home/a.html', 'attic-arcade.example/item/7'])(
    'refuses %s as the address of a page',
    async (url) => {
      const read = await readSavedPage(save('f.html', page('')), url, now);
      expect(!read.ok && read.problem).toMatchObject({ code: 'page-address', where: '--url' });
    },
  );

  it('reads a page in its own encoding', async () => {
    const html = page('<meta charset="iso-8859-1">').replace('used on weekends', 'gepflegte Nähte und Schnürung');
    const read = await readSavedPage(save('d.html', Buffer.from(html, 'latin1')), undefined, now);
    expect(read.ok && read.value.text).toContain('Nähte');
  });

  it.each([
    ['head and body', '<!doctype html><title>Satchel</title>', ''],
    ['the body', '<html><head><title>Satchel</title></head>', '</html>'],
    ['all of them', '', ''],
  ])('reads a page that leaves out the tags of %s', async (_, head, end) => {
    const html = `${head}<meta property="og:type" content="product"><h1>Harrow & Lund satchel</h1><p class="price">£80<p>A brown leather bag of 1984, used on weekends, with one scuffed corner.${end}`;
    const read = await readSavedPage(save('g.html', html), 'https://attic-arcade.example/item/8', now);
    expect(read.ok && read.value.kind).toBe('listing');
    expect(read.ok && read.value.title[0]?.value).toBe('Harrow & Lund satchel');
    expect(read.ok && read.value.price[0]?.value.minor).toBe(8000);
    expect(read.ok && read.value.description[0]?.value).toContain('one scuffed corner');
  });

  it('gives a case-ready listing of kind list or none for pages that offer no single piece', async () => {
    const read = await readSavedPage(
      save('e.html', '<!doctype html><html><body><h1>Help</h1><p>How to sell.</p></body></html>'),
      undefined,
      now,
    );
    expect(read.ok && read.value.kind).toBe('none');
  });
});
