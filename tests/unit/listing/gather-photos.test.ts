import { describe, expect, it } from 'vitest';
import { addDataPhotos, addHeadPhotos } from '../../../src/listing/photos/data-photos';
import { gatherSeenPhotos } from '../../../src/listing/photos/gather';
import { PhotoSet } from '../../../src/listing/photos/photo-set';
import { addValue, newItem } from '../../../src/listing/structured/item';
import { readHeadTags } from '../../../src/listing/structured/open-graph';
import { gatheredOf, slices } from './gathered';
import { documentOf } from './page';

const site = 'https://attic-arcade.example';
const told = (photos: PhotoSet) =>
  photos
    .links()
    .map(({ url, alternatives, alt }) =>
      [url, ...alternatives, ...(alt === '' ? [] : [`“${alt}”`])].join(' ').replaceAll(site, ''),
    );
const seen = async (body: string) => {
  const page = await gatheredOf(body);
  const photos = new PhotoSet();
  const notes = await gatherSeenPhotos({ ...page, slices: slices() }, photos);
  return [...told(photos), ...notes.map(({ code, count }) => `${code} ${count}`)];
};

describe('photos that the listing shows', () => {
  it.each<[string, string, string[]]>([
    ['an image, with what it is called', '<img src="/a.jpg" alt="Front  side">', ['/a.jpg “Front side”']],
    ['called by its title', '<img src="/a.jpg" title="Front">', ['/a.jpg “Front”']],
    ['called by nothing', '<img src="/a.jpg" alt="" title="Front">', ['/a.jpg']],
    ['in the order of the page', '<img src="/b.jpg"><img src="/a.jpg">', ['/b.jpg', '/a.jpg']],
    ['of a fast page', '<amp-img src="/a.jpg"></amp-img>', ['/a.jpg']],
    ['none of other pieces', '<div class="related"><img src="/a.jpg"></div>', []],
    ['no logo', '<img src="/logo.png">', []],
    ['no picture that is named as one', '<img class="logo" src="/a.jpg">', []],
    ['no icon', '<img src="/a.jpg" width="48" height="48">', []],
    [
      'none smaller than a stamp but with a larger version',
      '<img src="/a.jpg" data-zoom="/b.jpg" width="48" height="48">',
      ['/b.jpg /a.jpg'],
    ],
    ['one larger than an icon', '<img src="/a.jpg" width="49" height="48">', ['/a.jpg']],
    [
      'one known already, however small',
      '<img src="/a.jpg"><img src="/a_48x48.jpg" width="48" height="48">',
      ['/a.jpg /a_48x48.jpg'],
    ],
    ['none that leads to another page', '<a href="/item/7"><img src="/a.jpg"></a>', []],
    ['one that leads to this page', '<a href="/item/1042"><img src="/a.jpg"></a>', ['/a.jpg']],
    ['one that leads to a picture', '<a href="/big.jpg"><img src="/a.jpg"></a>', ['/big.jpg /a.jpg']],
    ['a link to a picture, without one in it', '<a href="/a.jpg" title="Front">Front</a>', ['/a.jpg “Front”']],
    ['no link to a logo', '<a href="/logo.jpg">x</a>', []],
    ['no link named as a badge', '<a class="badge" href="/a.jpg">x</a>', []],
    [
      'a stand-in of several is none',
      '<img src="/s.jpg" data-src="/a.jpg"><img src="/s.jpg" data-src="/b.jpg">',
      ['/a.jpg', '/b.jpg'],
    ],
    ['one of one is a photo', '<img src="/s.jpg" data-src="/a.jpg">', ['/a.jpg /s.jpg']],
    ['for readers without scripts', '<noscript><img src="/a.jpg"></noscript>', ['/a.jpg']],
    [
      'the background of a gallery',
      '<div class="gallery" style="background-image:url(/a.jpg)" aria-label="Front"></div>',
      ['/a.jpg “Front”'],
    ],
    ['quoted', `<div id="photo-1" style="color:red;background: url('/a.jpg')"></div>`, ['/a.jpg']],
    ['by its role', '<div role="img" style="background-image:url(/a.jpg)"></div>', ['/a.jpg']],
    ['no other background', '<div class="box" style="background-image:url(/a.jpg)"></div>', []],
    ['no stand-in as a background', '<div class="gallery" style="background-image:url(/blank.gif)"></div>', []],
    ['no logo as a background', '<div class="gallery" style="background-image:url(/logo.png)"></div>', []],
    [
      'no background that leads elsewhere',
      '<a href="/item/7"><b class="gallery" style="background-image:url(/a.jpg)"></b></a>',
      [],
    ],
    ['no hidden background', '<div hidden class="gallery" style="background-image:url(/a.jpg)"></div>', []],
    ['a hidden one that waits for its picture', '<div hidden class="gallery" data-src="/a.jpg"></div>', ['/a.jpg']],
    ['a large version of a gallery’s part', '<div class="slide" data-large="/a.jpg"></div>', ['/a.jpg']],
    ['named itself as a zoom', '<div data-zoom-image="/a.jpg"></div>', ['/a.jpg']],
    ['of no gallery', '<div class="box" data-large="/a.jpg"></div>', []],
    ['of another attribute', '<div class="slide" data-image="/a.jpg"></div>', []],
    ['no logo of a gallery', '<div class="slide" data-large="/logo.jpg"></div>', []],
    ['none of a gallery that leads elsewhere', '<a href="/item/7"><b class="slide" data-large="/a.jpg"></b></a>', []],
    ['a gallery kept as JSON', `<div class="gallery" data-items='["/a.jpg","/b.jpg"]'></div>`, ['/a.jpg', '/b.jpg']],
    ['bound to a part', `<product-gallery :images='["/a.jpg","/b.jpg"]'></product-gallery>`, ['/a.jpg', '/b.jpg']],
    ['named by the attribute', `<div data-photos='["/a.jpg","/b.jpg"]'></div>`, ['/a.jpg', '/b.jpg']],
    ['JSON of something else', `<div data-items='["/a.jpg","/b.jpg"]'></div>`, []],
    ['no attribute that is no data', `<div class="gallery" title='["/a.jpg","/b.jpg"]'></div>`, []],
    ['no logo in JSON', `<div class="gallery" data-items='["/logo.jpg","/b.jpg"]'></div>`, ['/b.jpg']],
    ['no JSON without a picture', `<div class="gallery" data-items='["/a.pdf","/b.pdf"]'></div>`, []],
    ['JSON of an image', `<img src="/a.jpg" data-gallery='["/b.jpg","/c.jpg"]'>`, ['/a.jpg', '/b.jpg', '/c.jpg']],
    [
      'sizes in JSON are one photo',
      `<div class="gallery" data-items='{"/a.jpg":[640,480],"/b.jpg":[320,240]}'></div>`,
      ['/a.jpg /b.jpg'],
    ],
    ['JSON that is too short', `<div class="gallery" data-x='["/a.jpg"]'></div>`, []],
    ['one character longer', `<div class="gallery" data-x='["/ab.jpg" ]'></div>`, ['/ab.jpg']],
  ])('%s', async (_, body, wanted) => {
    expect(await seen(body)).toEqual(wanted);
  });

  it('of a made picture without an address are told to be missing, where no other is there', async () => {
    const made = '<img src="blob:https://attic-arcade.example/1">';
    expect(await seen(made)).toEqual(['photo-without-address 1']);
    expect(await seen(made + made)).toEqual(['photo-without-address 2']);
    expect(await seen(`${made}<img src="/a.jpg">`)).toEqual(['/a.jpg']);
    expect(await seen(`<a href="/item/7">${made}</a>`)).toEqual([]);
    expect(await seen('<img class="logo" src="blob:https://attic-arcade.example/1">')).toEqual([]);
    expect(await seen('<img src="blob:https://attic-arcade.example/1" data-src="/a.jpg">')).toEqual(['/a.jpg']);
  });
});

describe('photos of the data', () => {
  const image = (properties: Record<string, string | number>) => {
    const item = newItem('json-ld', 'x');
    for (const [name, value] of Object.entries(properties)) addValue(item, name, value);
    return item;
  };
  const of = (...values: (string | ReturnType<typeof image>)[]) => {
    const product = newItem('json-ld', 'x');
    addValue(product, 'name', 'Carryall');
    for (const value of values) addValue(product, 'image', value);
    const photos = new PhotoSet();
    addDataPhotos(product, site, photos);
    return photos
      .links()
      .map(({ url, width, height, alt, origins }) => [url.replace(site, ''), width, height, alt, ...origins].join(' '));
  };

  it('are addresses, or things with one, their size and their name', () => {
    expect(of('/a.jpg', image({ contentUrl: '/b.jpg', width: 640, height: '480px', caption: 'Front' }))).toEqual([
      '/a.jpg    json-ld',
      '/b.jpg 640 480 Front json-ld',
    ]);
    expect(of(image({ url: '/c.jpg', name: 'Side' }), { ...image({}), id: '/d.jpg' })).toEqual([
      '/c.jpg   Side json-ld',
      '/d.jpg    json-ld',
    ]);
    expect(of(image({ contentUrl: '/a.jpg', url: '/page' }))).toEqual(['/a.jpg    json-ld']);
    // The piece's own name says nothing of a photo.
    expect(of(image({ url: '/a.jpg', name: 'Carryall' }))).toEqual(['/a.jpg    json-ld']);
    expect(of('/blank.gif', '/logo.png', 'javascript:x')).toEqual([]);
  });

  it('are those of the head, each with its size and name', () => {
    const head = (...tags: [string, string][]) => {
      const photos = new PhotoSet();
      const html = tags.map(([name, value]) => `<meta property="${name}" content="${value}">`).join('');
      addHeadPhotos(readHeadTags(documentOf(`<html><head>${html}</head></html>`)), site, photos);
      return photos
        .links()
        .map(({ url, width, height, alt, origins }) =>
          [url.replace(site, ''), width, height, alt, ...origins].join(' '),
        );
    };
    expect(
      head(
        ['og:image', '/a.jpg'],
        ['og:image', '/b.jpg'],
        ['og:image:width', '640'],
        ['og:image:width', '320'],
        ['og:image:height', '480'],
        ['og:image:alt', 'Front'],
        ['twitter:image', '/t.jpg'],
      ),
    ).toEqual(['/a.jpg 640 480 Front open-graph', '/b.jpg 320   open-graph', '/t.jpg    meta']);
    expect(head(['og:image:url', '/a.jpg'], ['og:image:secure_url', '/s.jpg'])).toEqual([
      '/a.jpg    open-graph',
      '/s.jpg    open-graph',
    ]);
    expect(head(['twitter:image:src', '/t.jpg'])).toEqual(['/t.jpg    meta']);
    expect(head(['og:image', '/logo.png'], ['og:image', '/blank.gif'], ['twitter:image', '/logo.png'])).toEqual([]);
    expect(head(['twitter:image', '/blank.gif'])).toEqual([]);
  });
});
