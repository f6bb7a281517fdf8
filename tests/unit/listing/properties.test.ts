import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { webAddress } from '../../../src/listing/page/address';
import type { Budget } from '../../../src/listing/page/slices';
import { photoKey, widthFromAddress } from '../../../src/listing/photos/image-size';
import { parseSrcset } from '../../../src/listing/photos/srcset';
import { cleanJson } from '../../../src/listing/structured/clean-json';
import { plainText } from '../../../src/listing/structured/entities';
import { parseJsonLd } from '../../../src/listing/structured/json-ld';
import { readTolerantJson } from '../../../src/listing/structured/tolerant-json';
import { listingSchema } from '../../../src/listing/types';
import { readHtml } from './page';

const seed = Number(process.env.SEED ?? Date.now() % 2 ** 31);
console.info(`listing properties: SEED=${seed}`);
const check = <T extends [unknown, ...unknown[]]>(property: fc.IProperty<T> | fc.IAsyncProperty<T>, numRuns: number) =>
  fc.assert(property as fc.IAsyncProperty<T>, { seed, numRuns, interruptAfterTimeLimit: 10_000 });

const prototypeNames = () => Object.getOwnPropertyNames(Object.prototype).sort().join();
const untouched = prototypeNames();

/** Text of the pieces that data is made of, and of what breaks it. */
const dataPiece = fc.constantFrom(
  '{',
  '}',
  '[',
  ']',
  ',',
  ':',
  '"',
  "'",
  '\\',
  '\n',
  '/*',
  '*/',
  '//',
  '<!--',
  '-->',
  '<![CDATA[',
  ']]>',
  '&quot;',
  '"name"',
  '"offers"',
  '"@type":"Product"',
  '"@id":"#a"',
  '"@graph"',
  '"__proto__"',
  '"constructor"',
  '"price":"1.299,00 €"',
  '"price":540',
  'null',
  'NaN',
  '010.0',
  '"brand":"Ondrasse"',
  '\uFEFF',
  '\u0000',
  'é',
  '漢',
);
const brokenData = fc
  .array(fc.oneof(dataPiece, fc.string({ maxLength: 6 })), { maxLength: 60 })
  .map((pieces) => pieces.join(''));

const tag = fc.constantFrom(
  'div',
  'p',
  'h1',
  'h2',
  'span',
  'del',
  'sup',
  'a',
  'ul',
  'li',
  'table',
  'tr',
  'td',
  'dl',
  'dt',
  'dd',
  'form',
  'main',
  'nav',
  'template',
  'noscript',
  'picture',
  'iframe',
  'slot',
  'svg',
  'style',
  'title',
);
const attribute = fc.constantFrom(
  'class="price"',
  'class="description"',
  'itemscope',
  'itemprop="offers"',
  'itemprop="price" content="5"',
  'itemtype="https://schema.org/Product"',
  'itemref="a b"',
  'id="a"',
  'id="b"',
  'typeof="Product"',
  'property="name"',
  'vocab="https://schema.org/"',
  'hidden',
  'style="display:none"',
  'style="position:absolute;left:-9999px"',
  'href="/item/1"',
  'href="javascript:alert(1)"',
  'data-price="54000"',
  'data-src="/a.jpg"',
  'srcset="/a.jpg 1x, /b.jpg 2x"',
  'aria-label="Price: €5.00"',
  'data-gallery="[{&quot;full&quot;:&quot;/c.jpg&quot;}]"',
  'shadowrootmode="open"',
  'role="heading"',
  'name="getAttribute"',
);
const words = fc.constantFrom(
  'Ondrasse Carryall 30',
  '€540.00',
  '1.299',
  'Condition: used',
  'Brand',
  'Seller',
  'Returns within 14 days',
  '状態',
  'You may also like',
  'Sold',
  'Posted on 3 March 2026',
  '4.9 (318)',
  '30 x 21 x 17 cm',
  '&amp;lt;',
  ' ',
);
const { html } = fc.letrec<{ html: string; node: string }>((tie) => ({
  html: fc.array(tie('node'), { maxLength: 4 }).map((nodes) => nodes.join('')),
  node: fc.oneof(
    { maxDepth: 3 },
    words,
    brokenData.map((data) => `<script type="application/ld+json">${data}</script>`),
    fc.constant('<img src="/x.jpg">'),
    fc.constant('<meta property="og:title" content="Bag">'),
    fc.constant('<base href="javascript:alert(1)">'),
    fc
      .tuple(tag, fc.array(attribute, { maxLength: 3 }), tie('html'))
      .map(([name, attributes, inner]) => `<${name} ${attributes.join(' ')}>${inner}</${name}>`),
  ),
}));

describe('whatever a page holds', () => {
  it('the reader gives a valid listing, never throws, and changes no prototype', async () => {
    await check(
      fc.asyncProperty(html, async (source) => {
        const listing = await readHtml(source);
        expect(listingSchema.safeParse(listing).error).toBeUndefined();
        expect(prototypeNames()).toBe(untouched);
      }),
      150,
    );
  }, 60_000);

  it('the reader stops at its budget and says so', async () => {
    await check(
      fc.asyncProperty(fc.integer({ min: 50, max: 400 }), async (nodes) => {
        const listing = await readHtml('<p><b>word</b></p>'.repeat(500), { budget: { nodes } });
        expect(listing.problems.map(({ code }) => code)).toContain('page-cut');
      }),
      10,
    );
  }, 60_000);

  it('a busy machine reads the same as an idle one: work is counted, not time', async () => {
    const page = `<h1>Ondrasse Carryall 30</h1><p class="price">€540.00</p>${'<p>word</p>'.repeat(5_000)}`;
    const clock = { now: 0 };
    let pauses = 0;
    const pause = async () => {
      pauses += 1;
    };
    const slow = await readHtml(page, { clock: () => (clock.now += 3_600_000), pause });
    expect(pauses).toBeGreaterThan(100);
    expect(slow).toEqual(await readHtml(page, { clock: () => 0, pause }));
    expect(slow.problems).toEqual([]);
  }, 60_000);

  it('says what it left out: parts, attributes, characters', async () => {
    const names = Array.from({ length: 1_000 }, (_, index) => `data-name-${index}="x"`).join(' ');
    const cuts = async (html: string, budget: Partial<Budget> = {}) =>
      (await readHtml(html, { budget })).problems.filter(({ code }) => code === 'page-cut').map(({ data }) => data);
    const heading = '<h1>Ondrasse Carryall 30</h1><p class="price">€540.00</p>';
    expect(await cuts(`${heading}${'<p>word</p>'.repeat(500)}`, { nodes: 100 })).toEqual([
      { nodesRead: 100, attributes: 0, characters: 0 },
    ]);
    expect(await cuts(`${heading}<img src="/a.jpg" ${names}>`)).toEqual([
      { nodesRead: null, attributes: 941, characters: 0 },
    ]);
    expect(await cuts(`${heading}<p>${'A lovely bag. '.repeat(5_000)}</p>`)).toEqual([
      { nodesRead: null, attributes: 0, characters: 50_000 },
    ]);
    expect(await cuts(`${heading}<p>word</p>`)).toEqual([]);
  });

  it('broken data is read or left, linearly, and valid data is read exactly', () => {
    check(
      fc.property(brokenData, (data) => {
        parseJsonLd(data);
        readTolerantJson(cleanJson(data), 64);
        expect(prototypeNames()).toBe(untouched);
      }),
      500,
    );
    check(
      fc.property(fc.json(), (data) => {
        expect(parseJsonLd(data)?.roots).toEqual([JSON.parse(data)]);
      }),
      200,
    );
  });

  it('what the tolerant parser makes of valid objects is what JSON.parse makes of them', () => {
    const plain = fc.dictionary(
      fc.stringMatching(/^[a-z]{1,8}$/),
      fc.oneof(fc.integer(), fc.boolean(), fc.constant(null), fc.stringMatching(/^[\w .€é-]{0,20}$/)),
    );
    check(
      fc.property(plain, (value) => {
        expect(readTolerantJson(JSON.stringify(value), 64).map((root) => ({ ...(root as object) }))).toEqual([value]);
      }),
      200,
    );
  });

  it('texts and addresses are inert', () => {
    check(
      fc.property(fc.string({ maxLength: 200 }), (text) => {
        for (const { address } of parseSrcset(text)) expect(address).not.toBe('');
        expect(typeof plainText(text)).toBe('string');
        const address = webAddress(text, 'https://attic-arcade.example/item/1');
        if (address === null) return;
        expect(address).toMatch(/^https?:\/\//);
        expect(typeof photoKey(address)).toBe('string');
        widthFromAddress(address);
      }),
      400,
    );
  });

  it('a script of a megabyte that breaks at its end is read as its clean copy is', () => {
    const row = '{"@type":"Offer","price":"1","name":"a 12\\" record"},';
    const clean = `[${row.repeat(8_000)}{}]`;
    const offers = (text: string) => (parseJsonLd(text)!.roots[0] as unknown[]).length;
    expect(offers(clean)).toBe(8_001);
    expect(offers(`${clean.slice(0, -2)},,"`)).toBeGreaterThanOrEqual(8_000);
  });
});
