import type { TechniquePage } from '../reading';
import { tote, withData } from './data';
import { many } from './many';

const page = (inside: string, head = ''): string =>
  `<html lang="en"><head>${head}</head><body><main><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p>${inside}</main></body></html>`;
/** A srcset of exactly so many characters, blanks between its two candidates. */
const srcset = (length: number, name: string): string =>
  `/p/${name}.jpg 400w,`
    .padEnd(length - 16, ' ')
    .concat(`/p/${name}.png 800w`)
    .padEnd(length, ' ');
const inLists = (levels: number, inside: string): string => `${'['.repeat(levels)}${inside}${']'.repeat(levels)}`;
/** Lists of a hundred words each; as many parts as stand before a list's last ones are pictures. */
const lists = (named: number): string[][] =>
  Array.from({ length: 5 }, (_, list) =>
    Array.from({ length: 100 }, (_, at) =>
      list === 4 && at >= named - 2 && at <= named + 1 ? `/p/part-${at}.jpg` : 'x',
    ),
  );

/** Where the reading of photos ends, and what of it is no photo. */
export const photoEdges: Record<string, TechniquePage> = {
  'a srcset of a hundred thousand characters, and of one more': page(
    `<img srcset="${srcset(100_000, 'a')}"><img data-srcset="${srcset(100_001, 'b')}" alt="b"><img src="/p/c.jpg">`,
  ),
  'addresses of a srcset that lead nowhere': page(
    '<img alt="a" srcset="javascript:x 1x, /p/blank.gif 2x, /p/a.jpg 3x"><img alt="b" data-srcset="http://[/b.jpg 400w, /p/b.jpg 300w"><img alt="c" data-src="/p/spacer.gif"><img alt="d" data-src="http://[/d.jpg"><img alt="e" src="/p/loading.jpg" data-zoom="/p/e.jpg">',
  ),
  'densities of a srcset in data, at widths of one and of many': page(
    '<img width="300" data-srcset="/p/a.jpg 2x, /p/a.png 1.5x"><img width="1" srcset="/p/b.jpg 3x"><img width="300px" srcset="/p/c.jpg 2.5x"><img width="none" srcset="/p/d.jpg 2x">',
  ),
  'sizes as JSON where no data is': page(
    `<img src="/p/a.jpg" x-sizes='{"/p/b.jpg":[900]}' imagesrcset-x="/p/c.jpg 1x"><a href="/p/d.jpg" x-sizes='{"/p/e.jpg":[901]}'>d</a><a href="/p/f.jpg" data-sizes='[{"/p/g.jpg":[902]}]'>f</a><img data-sizes='[{"/p/h.jpg":[903]}]'><img alt="short" data-a='{"a":1}' src="/p/i.jpg">`,
  ),
  'twenty sources of a picture, and one more': page(
    `<picture>${many(21, (at) => `<source srcset="/p/source-${at}.jpg ${at + 1}w">`)}<img src="/p/a.jpg"></picture>`,
  ),
  'galleries as JSON of several roots, deep ones and with what is no address': page(
    `<div data-gallery='["/p/a.jpg"] ["/p/b.jpg"]'></div><div data-gallery='${inLists(16, '"/p/c.jpg"')}'></div><div data-gallery='${inLists(17, '"/p/d.jpg"')}'></div><div data-gallery='[null,true,5,"/p/e.jpg",{"a":null,"thumbs":["/p/f.jpg"],"logo":"/p/g.jpg","avatar":["/p/h.jpg"]},"words.jpg of three","/p/blank.gif","/p/no-image.jpg","http://[/i.jpg"]'></div><div data-gallery='{"/p/j.jpg":"12","/p/k.jpg":null,"/p/l.jpg":[12,"x"],"/p/blank.jpg":[9]}'></div>`,
  ),
  'five hundred parts of a gallery, and more': page(
    // The list of lists, and each of the five, are parts as well: the ninety-fifth word of the last list is part 500.
    `<div data-gallery='${JSON.stringify(lists(94))}'></div>`,
  ),
  'a gallery of two hundred thousand characters, and of one more': page(
    `<div data-gallery='${'["/p/a.jpg"]'.padEnd(200_000)}'></div><div data-gallery='${'["/p/b.jpg"]'.padEnd(200_001)}'></div>`,
  ),
  'JSON of eleven characters, and of twelve': page(
    `<div data-gallery='["/aa.jpg"]'></div><div data-gallery='["/bbb.jpg"]'></div><div data-photos=' ["/c.gif"]  '></div><div data-photos='x ["/d.jpg"] '></div><div data-photos='   {"a":"/e.webp"}'></div>`,
  ),
  'sixty attributes of a picture, and more': page(
    `<img ${many(59, (at) => `data-n${at}="x" `)} data-src="/p/a.jpg"><img ${many(60, (at) => `data-n${at}="x" `)} data-src="/p/b.jpg">`,
  ),
  'a single picture of an icon’s size by what its address and its data tell': page(
    '<img src="/p/a.jpg" width="48" height="48" srcset="/p/a.jpg 64w"><img srcset="/p/b.jpg 64w" width="48" height="48"><img srcset="/p/c.jpg 65w" width="48" height="48"><img src="/p/d.jpg" width="1" height="400"><img src="/p/e.jpg" width="0" height="0">',
  ),
  'a picture named as none among the versions of one': page(
    '<img src="/p/a.jpg" data-src="/logo/a.png" data-zoom="/p/a-2.jpg"><img src="/p/star.jpg" data-src="/p/b.jpg"><img data-original="/p/c.jpg" src="/icons/c.jpg" class="x">',
  ),
  'links to pictures that hold one, and with data of their own': page(
    '<a href="/p/a.jpg"><span>see</span></a><a href="/p/b.jpg"><i><img src="/p/b2.jpg"></i></a><a data-image="/p/c.jpg" title="by its data">x</a><a href="/page" data-zoom="/p/d.jpg"><img src="/p/d2.jpg"></a><a href="/logo.jpg" data-src="/p/e.jpg">y</a><a class="avatar" href="/p/f.jpg">z</a><a href="/p/g.jpg#top" data-pswp-width="0">g</a><a href="/p/h.jpg!large" data-width="1">h</a>',
  ),
  'backgrounds of other writings': page(
    `<div class="photo" style="BACKGROUND : url( '/p/a.jpg' )"></div><div class="photo" style="border-image:url(/p/b.jpg)"></div><div class="photo" style="background:none"></div><div class="photo" style="background:url(data:x)"></div><div style="background:url(/p/c.jpg)" role="image"></div><div id="slide-1" role="img" style="background-image:url(/p/d.jpg);color:red"></div><div class="zoom" style="background:red;list-style:url(/p/e.jpg)"></div><div class="pho" id="to" style="background:url(/p/g.jpg)"></div><div class="photo" style="background-image:linear-gradient(red,red),url(/p/f.jpg)" aria-label="under a shade"></div>`,
  ),
  'attributes of a gallery’s part whose names say large': page(
    '<b class="slide" data-zoom-src="/p/logo.jpg"></b><b class="slide" data-hi-res="/p/b.jpg"></b><b class="slide" data-hires-image="/p/c.jpg"></b><b class="slide" data-big="/p/d.jpg"></b><b class="slide" xdata-zoom="/p/e.jpg"></b><b class="row" data-src="/p/f.jpg"></b><b class="row" data-zoom-image="/p/g.jpg"></b><b class="slide" data-small="/p/h.jpg"></b><b class="slide" data-large="/p/i.jpg 1x, /p/j.jpg 2x"></b>',
  ),
  'a text for readers without scripts, as it is kept by a browser': page(
    `<noscript>&lt;img src="/p/a.jpg"&gt;</noscript><a href="/item/9"><noscript>&lt;img src="/p/b.jpg"&gt;</noscript></a><noscript>&lt;image src="/p/c.jpg"&gt;</noscript>`,
  ),
  'sixty pictures for readers without scripts, and one more': page(
    `<noscript>${many(61, (at) => `<img src="/p/n-${at}.jpg" width="20" height="20" data-src="/p/n-0.jpg">`)}</noscript>`,
  ),
  'stand-ins of two kinds of attribute, and of one picture': page(
    '<img src="/p/w.jpg" data-lazy-srcset="/p/a.jpg 1x"><img src="/p/w.jpg" data-lazysrc="/p/b.jpg"><img src="/p/v.jpg" data-zoom="/p/c.jpg"><img src="/p/v.jpg" data-zoom="/p/d.jpg"><img src="/p/u.jpg" data-src="/p/e.jpg"><amp-img src="/p/u.jpg" data-src="/p/f.jpg"></amp-img><img data-src="/p/g.jpg"><img data-src="/p/h.jpg">',
  ),
  'made pictures of an icon’s sides, and one that waits': {
    html: page(
      '<img src="blob:https://attic-arcade.example/1"><img src="blob:https://attic-arcade.example/2"><img src="blob:http://attic-arcade.example/3"><img src="blob:https://attic-arcade.example/4" data-src="/p/a.jpg"><img src="blob:null"><img src="blob:https://attic-arcade.example/6" title="by title">',
    ),
    properties: {
      'img[src$="/1"]': { naturalWidth: 79, naturalHeight: 600 },
      'img[src$="/2"]': { naturalWidth: 600, naturalHeight: 80 },
      'img[src$="/3"]': { naturalWidth: 80, naturalHeight: 80 },
      'img[src$="/4"]': { naturalWidth: 500, naturalHeight: 500 },
      'img[src$="null"]': { naturalWidth: 500, naturalHeight: 500 },
      'img[src$="/6"]': { naturalWidth: 500, naturalHeight: 500 },
    },
  },
  'twelve made pictures and none more': {
    html: page(many(12, (at) => `<img src="blob:https://attic-arcade.example/m${at}">`)),
    properties: { img: { naturalWidth: 600, naturalHeight: 500 } },
  },
  'twelve made pictures, one with an address and one that never came': {
    html: page(
      `${many(12, (at) => `<img class="m" src="blob:https://attic-arcade.example/m${at}">`)}<img src="/p/a.jpg"><img src="blob:https://attic-arcade.example/never">`,
    ),
    properties: { '.m': { naturalWidth: 600, naturalHeight: 500 } },
  },
  'photos of the data, named otherwise than the piece': withData({
    ...tote,
    image: [
      { url: '/p/a.jpg', name: 'The front' },
      { url: '/p/b.jpg', caption: 'The back', name: 'Other' },
    ],
  }),
  'photos of the head with more addresses than sizes': page(
    '<p>x</p>',
    '<meta property="og:image" content="/p/a.jpg"><meta property="og:image" content="/p/b.jpg"><meta property="og:image" content="/p/c.jpg"><meta property="og:image:width" content="1"><meta property="og:image:width" content="2"><meta property="og:image:height" content="3"><meta property="og:image:alt" content="one"><meta property="og:image:alt" content="two"><meta name="twitter:image" content="/p/spacer.gif">',
  ),
  'a card beside its other name': page(
    '<p>x</p>',
    '<meta name="twitter:image:src" content="/p/b.jpg"><meta name="twitter:image" content="/p/a.jpg">',
  ),
  'a picture with a gallery of its own': page(
    `<img src="/p/a.jpg" data-gallery='["/p/b.jpg","/p/c.jpg"]' data-other='["/p/d.jpg"]'>`,
  ),
  'versions of one photo that tell the same width, and less of one told twice': page(
    '<img srcset="/p/a.jpg 500w, /p/a.png 500w, /p/a.webp 500w, /p/a.jpg 300w"><img src="/p/b_800x.jpg"><img src="/p/b_full.jpg"><img src="/p/b.jpg" data-zoom="/p/b.png"><img src="/p/c_zoom.jpg" data-zoom="/p/c.png"><img src="/p/d_medium.jpg"><img src="/p/d.jpg"><img src="/p/e.jpg" data-zoom="/p/e_400x400.jpg"><img src="/p/f.png" srcset="/p/f.jpg 701w"><img src="/p/g.png" srcset="/p/g.jpg 700w">',
  ),
};
