import { describe, expect, it } from 'vitest';
import {
  addressesInJson,
  fromAttribute,
  longValue,
  namesOf,
  pixels,
  sourcesOfImage,
  sourcesOfLink,
} from '../../../src/listing/photos/image-sources';
import type { PhotoSource } from '../../../src/listing/photos/photo-set';
import { slices } from './gathered';
import { documentOf } from './page';

const base = 'https://attic-arcade.example/item/1';
const site = 'https://attic-arcade.example';
/** Each as "path width zoom". */
const told = (sources: readonly PhotoSource[]) =>
  sources.map(({ address, width, zoom }) =>
    [address.replace(site, ''), width, ...(zoom === undefined ? [] : [zoom ? 'zoom' : 'plain'])].join(' '),
  );
const element = (html: string, which: string) => documentOf(html).querySelector(which) as Element;
const ofImage = (html: string) => told(sourcesOfImage(element(html, 'img'), base, slices()));
const ofLink = (html: string) => told(sourcesOfLink(element(html, 'a'), base, slices()));

describe('pixels', () => {
  it.each([
    ['1', 1],
    ['99999', 99_999],
    ['100000', null],
    ['0', null],
    ['-5', null],
    ['640px', 640],
    ['auto', null],
    [null, null],
    [640.9, 640],
  ])('%s are %s', (said, wanted) => {
    expect(pixels(said)).toBe(wanted);
  });
});

describe('addresses in a data attribute', () => {
  const of = (name: string, value: string) => told(fromAttribute(name, value, base));
  it.each<[string, string, string[]]>([
    ['data-src', '/p/a.jpg', ['/p/a.jpg  plain']],
    ['data-src', ' /p/a.jpg ', ['/p/a.jpg  plain']],
    ['data-src', 'a.jp', []],
    ['data-src', '/p/a?x=1', ['/p/a?x=1  plain']],
    ['data-zoom', '/p/a?x=1', []],
    ['data-zoom', '/images/a?x=1', ['/images/a?x=1  zoom']],
    ['data-zoom', 'images/a?x=1', []],
    ['data-zoom', 'https://attic-arcade.example/cdn/a', ['/cdn/a  zoom']],
    ['data-image', '//attic-arcade.example/a', ['/a  plain']],
    ['data-src', 'word', []],
    ['data-src', 'two words.jpg', []],
    ['data-src', '/p/blank.gif.jpg', []],
    ['data-thumb-src', '/p/a.jpg', []],
    ['data-link', '/p/a.jpg', []],
    ['data-x', '/p/a.jpg', []],
    ['data-url-2', '/p/a.jpg', ['/p/a.jpg  plain']],
    ['data-srcset', '/p/a.jpg 100w, /p/b.jpg 200w', ['/p/a.jpg 100', '/p/b.jpg 200']],
    ['data-srcset', '/p/a.jpg 1x, /p/b.jpg 1.5x', ['/p/a.jpg ', '/p/b.jpg ']],
    ['data-anything', '{"/p/a.jpg":[640,480]}', ['/p/a.jpg 640']],
    ['data-anything', '[{"/p/a.jpg":[640,480]}]', ['/p/a.jpg 640']],
    ['data-anything', '["/p/a.jpg"]', []],
    ...(['zoom', 'large', 'full', 'hi-res', 'hires', 'original', 'big', 'magnify'] as const).map(
      (name): [string, string, string[]] => [`data-${name}-src`, '/p/a.jpg', ['/p/a.jpg  zoom']],
    ),
  ])('%s of %j', (name, value, wanted) => {
    expect(of(name, value)).toEqual(wanted);
  });
});

describe('addresses in JSON', () => {
  const json = (value: unknown) => {
    const { values, sizes } = addressesInJson(JSON.stringify(value), base);
    // Sizes of one photo are put in order by their width later.
    return [told(values), told(sizes).sort()];
  };
  it.each<[string, unknown, string[], string[]]>([
    [
      'texts are photos apart, in their order',
      ['/a.jpg', '/b.webp?x=1', '/c.png#x', '/d.avif'],
      ['/a.jpg ', '/b.webp?x=1 ', '/c.png#x ', '/d.avif '],
      [],
    ],
    [
      'keys are sizes of one',
      { '/a.jpg': [640, 480], '/b.jpg': 'x', '/c.jpg': ['640'] },
      [],
      ['/a.jpg 640', '/b.jpg ', '/c.jpg '],
    ],
    ['things are gone through in order', { a: { url: '/a.jpg' }, b: [{ url: '/b.jpg' }] }, ['/a.jpg ', '/b.jpg '], []],
    [
      'small ones and faces are left out',
      { thumb: '/a.jpg', avatarUrl: '/b.jpg', logo: ['/c.jpg'], x: '/d.jpg' },
      ['/d.jpg '],
      [],
    ],
    ['what is no picture is none', ['/a.pdf', 'javascript:a.jpg', '/blank.jpg', 5, null, true], [], []],
    [
      'a hundred of each are looked at',
      Array.from({ length: 101 }, (_, at) => `/${at}a.jpg`),
      Array.from({ length: 100 }, (_, at) => `/${at}a.jpg `),
      [],
    ],
  ])('%s', (_, value, values, sizes) => {
    expect(json(value)).toEqual([values, sizes]);
  });

  it('are looked for in five hundred parts', () => {
    const nested = Array.from({ length: 6 }, (_, row) => Array.from({ length: 100 }, (_, at) => `/${row}-${at}.jpg`));
    // The list itself, and each list in it, is a part too.
    expect(json(nested)[0]).toHaveLength(500 - 1 - 5);
  });
});

describe('the addresses of an image', () => {
  it.each<[string, string, string[]]>([
    ['its own', '<img src="/a.jpg">', ['/a.jpg ']],
    ['none of a stand-in', '<img src="/blank.gif">', []],
    ['none of another kind', '<img src="data:image/png;base64,x">', []],
    [
      'those of its attributes before its own',
      '<img src="/a.jpg" data-src="/b.jpg" srcset="/c.jpg 100w">',
      ['/b.jpg  plain', '/c.jpg 100', '/a.jpg '],
    ],
    [
      'a density by the width that it is shown at',
      '<img width="300" srcset="/c.jpg 1.5x, /d.jpg 2x">',
      ['/c.jpg 450', '/d.jpg 600'],
    ],
    [
      'those of its picture',
      '<picture><source srcset="/a.webp 100w"><source data-srcset="/b.webp 200w"><source data-lazy-srcset="/c.webp"><img src="/a.jpg"></picture>',
      ['/a.jpg ', '/a.webp 100', '/b.webp 200', '/c.webp '],
    ],
    ['none of sources beside it', '<div><source srcset="/a.webp 100w"><img src="/a.jpg"></div>', ['/a.jpg ']],
    ['that of a link around it', '<a href="/big.jpg"><img src="/a.jpg"></a>', ['/a.jpg ', '/big.jpg  zoom']],
    [
      'that of a link three levels out',
      '<a href="/big.jpg"><i><b><u><img src="/a.jpg"></u></b></i></a>',
      ['/a.jpg ', '/big.jpg  zoom'],
    ],
    ['none four levels out', '<a href="/big.jpg"><i><b><u><s><img src="/a.jpg"></s></u></b></i></a>', ['/a.jpg ']],
    ['none of a page that it leads to', '<a href="/page"><img src="/a.jpg"></a>', ['/a.jpg ']],
  ])('%s', (_, html, wanted) => {
    expect(ofImage(html)).toEqual(wanted);
  });

  it('have the size that the picture has', () => {
    const image = element('<img src="/a.jpg">', 'img');
    Object.defineProperty(image, 'naturalWidth', { value: 640 });
    Object.defineProperty(image, 'naturalHeight', { value: 480 });
    expect(sourcesOfImage(image, base, slices())).toEqual([{ address: `${site}/a.jpg`, width: 640, height: 480 }]);
  });

  it('are of twenty sources of a picture, and of sixty attributes', () => {
    const sources = Array.from({ length: 21 }, (_, at) => `<source srcset="/${at}.webp">`).join('');
    expect(ofImage(`<picture>${sources}<img></picture>`)).toHaveLength(20);
    const attributes = Array.from({ length: 61 }, (_, at) => `data-src-${at}="/${at}.jpg"`).join(' ');
    expect(ofImage(`<img ${attributes}>`)).toHaveLength(60);
    expect(namesOf(element(`<img ${attributes}>`, 'img'), slices())).toHaveLength(60);
  });
});

describe('the addresses of a link', () => {
  it.each<[string, string, string[]]>([
    ['a picture, as wide as it says', '<a href="/a.jpg" data-pswp-width="1600">', ['/a.jpg 1600 zoom']],
    ['as wide as it says otherwise', '<a href="/a.jpg" data-width="1200">', ['/a.jpg 1200 zoom']],
    [
      'the picture viewer’s width first',
      '<a href="/a.jpg" data-pswp-width="1600" data-width="1200">',
      ['/a.jpg 1600 zoom'],
    ],
    ['no page', '<a href="/page">', []],
    ['what its attributes give', '<a href="/page" data-zoom-image="/z.jpg">', ['/z.jpg  zoom']],
    ['nothing of other attributes', '<a href="/page" title="/z.jpg">', []],
  ])('%s', (_, html, wanted) => {
    expect(ofLink(html)).toEqual(wanted);
  });
});

it('a value beyond its limit is none, since half of it would lie', () => {
  const value = (length: number, most?: number) =>
    longValue(element(`<i data-x="${'x'.repeat(length)}"></i>`, 'i'), 'data-x', slices(), most).length;
  expect([value(10, 10), value(11, 10)]).toEqual([10, 0]);
  expect([value(100_000), value(100_001)]).toEqual([100_000, 0]);
});
