import { describe, expect, it } from 'vitest';
import { photoKey } from '../../../src/listing/photos/image-size';
import { PhotoSet } from '../../../src/listing/photos/photo-set';
import { readHtml } from './page';

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

  it('leaves out pictures that lead to other listings', async () => {
    const listing =
      await readHtml(`<main><h1>Bag of Ondrasse</h1><p class="price">€5.00</p><a href="/item/9"><img src="/o.jpg"></a>
      <a href="/full/front.jpg"><img src="/small/front-view.jpg"></a></main>`);
    expect(listing.photos.map(({ url }) => url)).toEqual([`${site}/full/front.jpg`]);
  });
});
