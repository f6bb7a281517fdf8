import { describe, expect, it } from 'vitest';
import { photoKey, widthFromAddress } from '../../../src/listing/photos/image-size';
import { isIconSized, isPlaceholder, namesNoPhoto } from '../../../src/listing/photos/not-photo';
import { parseSrcset } from '../../../src/listing/photos/srcset';
import { documentOf } from './page';

const site = 'https://attic-arcade.example';
const width = (path: string) => widthFromAddress(site + path);

describe('the width that an address tells', () => {
  it.each([
    ['/a_400x300.jpg', 400],
    ['/a-400x300/b.jpg', 400],
    ['/a_400x.jpg', 400],
    ['/400x300/a.jpg', 400],
    ['/w_400/a.jpg', 400],
    ['/width=400,h_300/a.jpg', 400],
    ['/w-400/h-300/a.jpg', 400],
    ['/a-w400.jpg', 400],
    ['/a/s-l400.jpg', 400],
    ['/a_400px.jpg', 400],
    ['/a-400w.jpg', 400],
    ['/a.jpg?w=400', 400],
    ['/a.jpg?imwidth=400', 400],
    ['/a.jpg?h=300', null],
    ['/a_15x15.jpg', null],
    ['/a_16x16.jpg', 16],
    ['/a.jpg?w=15', null],
    ['/a.jpg?w=16', 16],
    ['/a.jpg?w=20000', 20_000],
    ['/a.jpg?w=20001', null],
    ['/a@2x.jpg', null],
    ['/a.jpg', null],
  ])('%s is %s', (path, wanted) => {
    expect(width(path)).toEqual(wanted === null ? null : { width: wanted, exact: true });
  });

  it('ranks each size word, the smaller below the larger', () => {
    const ladder = [
      ['tiny'],
      ['mini'],
      ['thumb', 'thumbnail', 'thumbs', 'thumbnails'],
      ['compact'],
      ['sm', 'small', 'klein', 'petit'],
      ['preview'],
      ['med', 'md', 'medium'],
      ['lg', 'large', 'grande'],
      ['big', 'gross', 'gro%C3%9F', 'grand', 'groot'],
      ['xl'],
      ['hd'],
      ['xxl', 'zoom'],
      ['full'],
      ['master'],
      ['orig', 'original'],
    ];
    const ranks = ladder.map((words) => words.map((word) => width(`/a_${word}.jpg`)?.width ?? 0));
    for (const same of ranks) expect(new Set(same).size, String(same)).toBe(1);
    const order = ranks.map(([rank]) => rank as number);
    expect(order).toEqual([...order].sort((a, b) => a - b));
    expect(new Set(order).size).toBe(order.length);
    // A picture of which nothing is known stands between "medium" and "large"; one named as the large version above "hd".
    expect(order[6]).toBeLessThan(700);
    expect(order[7]).toBeGreaterThan(700);
    expect(width('/thumb/a_large.jpg')).toEqual({ width: 800, exact: false });
    expect(width('/a.jpg?size=x_small')).toEqual({ width: 200, exact: false });
  });
});

describe('what stays of an address without its size', () => {
  it.each([
    ['/p/a_400x300.jpg', '/p/a.webp'],
    ['/p/a_400x.jpg', '/p/a.png'],
    ['/p/400x300/a.jpg', '/p/a.avif'],
    ['/p/w_400,h_300,c_fit/a.jpg', '/p/a.gif'],
    ['/p/a-w400.jpg', '/p/a.jpeg'],
    ['/p/s-l400.jpg', '/p/s-l1600.png'],
    ['/p/a_400px.jpg', '/p/a.jpg'],
    ['/p/a@3x.jpg', '/p/a.jpg'],
    ['/p/a_thumb.jpg', '/p/a-XXL.JPG'],
    ['/p//a.jpg', '/p/a.jpg'],
    ['/p/a.jpg?w=1&q=2&fm=x&v=3', '/p/a.jpg'],
    ['/p/a.jpg?x=1&y=2', '/p/a.jpg?y=2&x=1'],
    ['/p/a.jpg?size_of=x-full', '/p/a.jpg'],
    ['/p/a.jpg.webp', '/p/a.jpg'],
  ])('%s is %s', (one, other) => {
    expect(photoKey(site + one)).toBe(photoKey(site + other));
  });

  it.each([
    ['/p/a.jpg?id=1', '/p/a.jpg?id=2'],
    ['/p/a.jpg', '/q/a.jpg'],
    ['/p/a_1x2.jpg', '/p/a.jpg'],
    ['/p/a_12345x2.jpg', '/p/a.jpg'],
    ['/p/fullness.jpg', '/p/ness.jpg'],
    ['/p/a.jpg?id=1&x=2', '/p/a.jpg?id=1x=2'],
    ['/p/a.jpg?id=ß', '/p/a.jpg?id=ss'],
  ])('%s is not %s', (one, other) => {
    expect(photoKey(site + one)).not.toBe(photoKey(site + other));
  });
});

describe('what is no photo of the piece', () => {
  it('is told from the last part of an address for stand-ins', () => {
    for (const name of [
      'blank',
      'placeholder',
      'spacer',
      'a_pixel',
      'x-loading.v2',
      'no-image',
      '1x1',
      'default-image',
    ])
      expect(isPlaceholder(`${site}/p/${name}.gif?x=1`), name).toBe(true);
    for (const name of ['blanket', 'grayling', 'p.jpg?placeholder=1', 'a#blank', 'blank/a.jpg'])
      expect(isPlaceholder(`${site}/p/${name}`), name).toBe(false);
    expect(isPlaceholder(`${site}/p/a.jpg`)).toBe(false);
    expect(['blank?v=1', 'empty#top'].map((name) => isPlaceholder(`${site}/p/${name}`))).toEqual([true, true]);
  });

  it.each([
    ['/img/logo.png', '', true],
    ['/a.svg', '', true],
    ['/a.svg?x', '', true],
    ['/a.jpg?logo=1', '', false],
    ['/logo?v=1', '', true],
    ['/logo#top', '', true],
    ['/user-pic/a.jpg', '', true],
    ['/iconic.jpg', '', false],
    ['/a.jpg', 'class="seller-logo"', true],
    ['/a.jpg', 'id="star"', true],
    ['/a.jpg', 'role="button"', true],
    ['/a.jpg', 'alt="Profile photo"', true],
    ['/a.jpg', 'alt="avatar"', true],
    ['/a.jpg', `alt="logo ${'x'.repeat(24)}"`, true],
    ['/a.jpg', `alt="logo ${'x'.repeat(25)}"`, false],
    ['/a.jpg', 'alt="logotype"', false],
    ['/a.jpg', 'class="photo"', false],
  ])('%s with %s: %s', (path, attributes, wanted) => {
    const image = documentOf(`<img ${attributes}>`).querySelector('img');
    expect(namesNoPhoto(site + path, image)).toBe(wanted);
  });

  it('does not take the host for a name', () => {
    expect(namesNoPhoto('https://logo.example/a.jpg', null)).toBe(false);
  });

  it.each([
    [48, 48, true],
    [49, 48, false],
    [48, 49, false],
    [48, null, false],
    [null, 48, false],
    [2, null, true],
    [3, null, false],
    [null, 2, true],
    [null, 3, false],
    [900, 2, true],
    [2, 900, true],
    [null, null, false],
  ])('%s by %s is an icon: %s', (wide, high, wanted) => {
    expect(isIconSized(wide, high)).toBe(wanted);
  });
});

describe('srcset', () => {
  const said = (text: string, most?: number) =>
    parseSrcset(text, most).map(({ address, width: wide, density }) => `${address} ${wide ?? '-'} ${density ?? '-'}`);

  it.each([
    ['a.jpg', ['a.jpg - -']],
    ['a.jpg 1x, b.jpg 2x', ['a.jpg - 1', 'b.jpg - 2']],
    ['a.jpg 100w,b.jpg 200w', ['a.jpg 100 -', 'b.jpg 200 -']],
    ['a.jpg, b.jpg', ['a.jpg - -', 'b.jpg - -']],
    [' , ,a.jpg\t1.5x\n,', ['a.jpg - 1.5']],
    ['a,b.jpg 1x', ['a,b.jpg - 1']],
    ['a.jpg,,,', ['a.jpg - -']],
    ['a.jpg 100w 50h', ['a.jpg 100 -']],
    ['a.jpg 50h 100w', ['a.jpg 100 -']],
    ['a.jpg 50h', []],
    ['a.jpg 100w 2x', []],
    ['a.jpg 2x 100w', []],
    ['a.jpg 2x 50h', []],
    ['a.jpg 50h 2x', []],
    ['a.jpg 1x 2x', []],
    ['a.jpg 1w 2w', []],
    ['a.jpg 1w 2h 3h', []],
    ['a.jpg 0w', []],
    ['a.jpg 1w', ['a.jpg 1 -']],
    ['a.jpg 1h 1w', ['a.jpg 1 -']],
    ['a.jpg 0h 1w', []],
    ['a.jpg 0x', ['a.jpg - 0']],
    ['a.jpg -1x', []],
    ['a.jpg 1.5w', []],
    ['a.jpg 1.w', []],
    ['a.jpg .5x', ['a.jpg - 0.5']],
    ['a.jpg 1e2x', ['a.jpg - 100']],
    ['a.jpg 1.x', []],
    ['a.jpg x', []],
    ['a.jpg (1,2) 1x, b.jpg', ['b.jpg - -']],
    ['a.jpg (1, 2', []],
    ['a.jpg 1x b.jpg 2x', []],
    ['', []],
    [' ', []],
  ])('%j is %j', (text, wanted) => {
    expect(said(text)).toEqual(wanted);
  });

  it('gives at most as many as wanted', () => {
    expect(said('a 1x, b 2x, c 3x', 2)).toEqual(['a - 1', 'b - 2']);
  });
});
