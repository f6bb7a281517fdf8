import { DOMParser } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing';
import { photoKey } from '../../../src/listing/photos/image-size';
import { PhotoSet } from '../../../src/listing/photos/photo-set';
import { documentOf, now, readHtml } from './page';

const site = 'https://attic-arcade.example';
const source = (path: string, width: number | null = null) => ({ address: `${site}${path}`, width, height: null });

describe('photos', () => {
  it('merges the versions of one photo, whatever their size, format or version words', () => {
    const same = [
      '/p/bag_400x300.jpg',
      '/p/bag_1600x1200.webp',
      '/p/bag.jpg?w=800&q=70',
      '/p/bag@2x.jpg',
      '/p/bag_large.jpg',
    ];
    expect(new Set(same.map((path) => photoKey(site + path))).size).toBe(1);
    const apart = ['/p/bag-1.jpg', '/p/bag-2.jpg', '/p/bag.jpg?id=7', '/p/88_1.jpg', '/p/88_2.jpg'];
    expect(new Set(apart.map((path) => photoKey(site + path))).size).toBe(apart.length);
  });

  it('puts the largest known first and never a smaller one in its place', () => {
    const photos = new PhotoSet();
    photos.add([source('/p/a_1600x1200.jpg')], 'json-ld', '');
    photos.add([source('/p/a_400x300.jpg', 400), source('/p/a.jpg', 800)], 'visible', 'front');
    expect(photos.links()).toMatchObject([
      {
        url: `${site}/p/a_1600x1200.jpg`,
        alternatives: [`${site}/p/a.jpg`, `${site}/p/a_400x300.jpg`],
        alt: 'front',
        origins: ['json-ld', 'visible'],
      },
    ]);
  });

  it('keeps only http(s) addresses, whatever the base says', async () => {
    const listing =
      await readHtml(`<base href="javascript:alert(1)"><main><h1>Bag of Ondrasse</h1><p class="price">€5.00</p>
      <img src="javascript:alert(1)"><img src="file:///a.jpg"><img src="data:image/png;base64,AAAA"><img src="front.jpg"></main>`);
    expect(listing.photos.map(({ url }) => url)).toEqual([`${site}/item/front.jpg`]);
  });

  describe('that the page made itself', () => {
    const made = (count: number, side: number) => {
      const images = Array.from({ length: count }, (_, at) => `<img src="blob:${site}/0a-${at}" alt="view ${at}">`);
      const page = documentOf(`<main><h1>Bag of Ondrasse</h1><p class="price">€5.00</p>${images.join('')}</main>`);
      for (const image of page.querySelectorAll('img'))
        for (const name of ['naturalWidth', 'naturalHeight']) Object.defineProperty(image, name, { value: side });
      return readListing(page, { url: `${site}/item/1042`, now });
    };

    it('are photos of the listing while the page shows them', async () => {
      const listing = await made(2, 600);
      expect(listing.photos.map(({ id, url, width, alt }) => [id, url, width, alt])).toEqual([
        ['photo-1', `blob:${site}/0a-0`, 600, 'view 0'],
        ['photo-2', `blob:${site}/0a-1`, 600, 'view 1'],
      ]);
      expect(listing.problems).toEqual([]);
    });

    it('are said to have no address where the page does not show them', async () => {
      const listing = await made(2, 0);
      expect(listing.photos).toEqual([]);
      expect(listing.problems).toMatchObject([{ code: 'photo-without-address', data: { photos: 2 } }]);
    });

    it('are no photos where they are as small as an icon', async () => {
      const listing = await made(2, 40);
      expect([listing.photos, listing.problems]).toEqual([[], []]);
    });

    it('are taken up to a number, and what is left out is said', async () => {
      const listing = await made(15, 600);
      expect(listing.photos).toHaveLength(12);
      expect(listing.problems).toMatchObject([{ code: 'photo-without-address', data: { photos: 3 } }]);
    });
  });

  it('joins a picture of two known photos with the one that its first address belongs to', () => {
    const photos = new PhotoSet();
    for (const path of ['/p/a.jpg', '/p/b.jpg']) photos.add([source(path)], 'visible', '');
    photos.add([source('/p/new.jpg'), source('/p/b.png'), source('/p/a.png')], 'microdata', 'both');
    expect(photos.links().map(({ url, alternatives, alt }) => [url, alternatives.length, alt])).toEqual([
      [`${site}/p/a.jpg`, 0, ''],
      [`${site}/p/b.jpg`, 3, 'both'],
    ]);
  });

  it('keeps the larger of each side that is told of one address', () => {
    const sides = (...told: [number | null, number | null][]) => {
      const photos = new PhotoSet();
      for (const [width, height] of told)
        photos.add([{ address: `${site}/p/a.jpg`, width, height }], 'visible', '  the \n front  ');
      return photos.links().map(({ width, height, alt }) => [width, height, alt]);
    };
    expect(sides([100, 50], [80, 70])).toEqual([[100, 70, 'the front']]);
    expect(sides([null, null], [80, null], [null, 70])).toEqual([[80, 70, 'the front']]);
    expect(sides([90, null], [null, null])).toEqual([[90, null, 'the front']]);
  });

  describe('in a text for readers without scripts, which a browser keeps unparsed', () => {
    const image = (path: string) => `&lt;img src="${path}" alt="kept"&gt;`;
    const read = async (inside: string) => {
      const before = Object.getOwnPropertyDescriptor(globalThis, 'DOMParser');
      Object.defineProperty(globalThis, 'DOMParser', { value: DOMParser, configurable: true });
      try {
        const { photos } = await readHtml(`<main><h1>Bag of Ondrasse</h1><p class="price">€5.00</p>${inside}</main>`);
        return photos.map(({ url, alt }) => `${url.slice(site.length)} ${alt}`);
      } finally {
        if (before) Object.defineProperty(globalThis, 'DOMParser', before);
        else Reflect.deleteProperty(globalThis, 'DOMParser');
      }
    };
    const long = (length: number) => `<noscript>${image('/a.jpg')}${'x'.repeat(length - 29)}</noscript>`;

    it.each<[string, string, string[]]>([
      ['a picture', `<noscript>${image('/a.jpg')}</noscript>`, ['/a.jpg kept']],
      ['two', `<noscript>${image('/a.jpg')} ${image('/b.jpg')}</noscript>`, ['/a.jpg kept', '/b.jpg kept']],
      ['one in a link to another piece', `<a href="/item/9"><noscript>${image('/a.jpg')}</noscript></a>`, []],
      ['none', '<noscript>&lt;image src="/a.jpg"&gt;</noscript>', []],
      ['a logo', `<noscript>${image('/logo.jpg')}</noscript>`, []],
      ['twenty thousand characters', long(20_000), ['/a.jpg kept']],
      ['one more', long(20_001), []],
      [
        'sixty-one pictures',
        `<noscript>${Array.from({ length: 61 }, (_, at) => image(at < 60 ? '/a.jpg' : '/last.jpg')).join('')}</noscript>`,
        ['/a.jpg kept'],
      ],
    ])('%s', async (_, inside, wanted) => {
      expect(await read(inside)).toEqual(wanted);
    });
  });

  it('leaves out pictures that lead to other listings', async () => {
    const listing =
      await readHtml(`<main><h1>Bag of Ondrasse</h1><p class="price">€5.00</p><a href="/item/9"><img src="/o.jpg"></a>
      <a href="/full/front.jpg"><img src="/small/front-view.jpg"></a></main>`);
    expect(listing.photos.map(({ url }) => url)).toEqual([`${site}/full/front.jpg`]);
  });
});
