import type { TechniquePage } from '../reading';

const page = (inside: string, head = ''): string =>
  `<html lang="en"><head>${head}</head><body><main><h1>Ondrasse Palma Tote</h1><p class="price">€540.00</p>${inside}</main></body></html>`;
const sourceNames = [
  'src',
  'original',
  'lazy',
  'zoom-image',
  'large_image',
  'full',
  'hires',
  'hi-res',
  'image',
  'img',
  'photo',
  'magnify',
  'big',
  'url',
  'url-2',
];
const noSourceNames = [
  'thumb-src',
  'avatar-image',
  'seller-photo',
  'logo-url',
  'track-url',
  'link-url',
  'href-url',
  'page-url',
  'placeholder-src',
  'fallback-src',
  'error-src',
  'caption',
];

/** Where a page keeps its photos, and what is none. */
export const photos: Record<string, TechniquePage> = {
  'each data attribute that may hold a photo': page(
    sourceNames.map((name, at) => `<img alt="${name}" data-${name}="/p/x${at}.jpg">`).join(''),
  ),
  'data attributes that hold none': page(
    noSourceNames.map((name, at) => `<img src="/p/y${at}.jpg" data-${name}="/q/z${at}.jpg">`).join(''),
  ),
  'attributes named as the larger one': page(
    '<img src="/p/a.jpg" data-src="/q/a.jpg" data-zoom="/q/zoom.png" alt="  the   front ">',
  ),
  'addresses without an ending of a picture': page(
    '<img data-src="/images/77"><img data-src="https://cdn.example/photo/78"><img data-src="/other/79"><img data-url="/other/80"><img data-image="/other/81"><img data-src="x y.jpg"><img data-src="a.b"><img data-src="//cdn.example/media/82">',
  ),
  'a srcset by width': page(
    '<img src="/p/a.jpg" srcset="/p/a_400.jpg 400w, /p/a_1600.jpg 1600w,/p/a_800.jpg 800w" title="by title">',
  ),
  'a srcset by density': page(
    '<img width="300" src="/p/a.jpg" srcset="/p/a@2x.jpg 2x, /p/a@1.jpg 1x"><img src="/p/b.jpg" srcset="/p/b@2x.jpg 2x">',
  ),
  'a srcset in data, and one that is written as a plain address': page(
    '<img data-srcset="/p/a.jpg 400w, /p/a.png 900w"><img data-lazy-srcset="/p/b.jpg 300w"><img data-src="/p/c.jpg 400w, /p/c.webp 900w"><img data-src="/p/d.jpg 2x">',
  ),
  'a picture with its sources': page(
    '<picture><source srcset="/p/a.webp 1200w"><source data-srcset="/p/a.avif 1300w"><source data-lazy-srcset="/p/a.png 1250w"><img src="/p/a.jpg"></picture><div><source srcset="/p/b.webp 1w"><img src="/p/b.jpg"></div>',
  ),
  'a link around to a larger picture': page(
    '<a href="/big/a.jpg" data-pswp-width="2000"><span><b><img src="/p/a-t.jpg"></b></span></a><a href="/big/b.jpg" data-width="1900"><img src="/p/b.jpg"></a><a href="/item/7"><img src="/p/c.jpg"></a><a href="/big/d.jpg" data-src="/big/d.png"><img src="/p/d.jpg"></a>',
  ),
  'a link five levels around': page(
    '<a href="/big/a.jpg"><u><b><i><em><img src="/p/a.jpg"></em></i></b></u></a><a href="/big/b.jpg"><u><b><i><img src="/p/b.jpg"></i></b></u></a>',
  ),
  'a link to a picture that shows none': page(
    '<a href="/big/a.jpg" title="front">see</a><a href="/big/logo.png">logo</a><a href="/p/back.png?x=1">back</a><a href="/p/notes.pdf">notes</a>',
  ),
  'a link elsewhere around a picture that is known': page(
    '<img src="/p/a.jpg"><a href="/item/8"><img src="/p/a_200x200.jpg" alt="again"></a><a href="#top"><img src="/p/b.jpg"></a>',
  ),
  'icons, counters and stand-ins': page(
    '<img src="/p/a.jpg" width="48" height="48"><img src="/p/b.jpg" width="49" height="48"><img src="/p/c.jpg" width="2" height="900"><img src="/p/d.jpg" height="2"><img src="/p/e.jpg" width="3" height="900"><img src="/p/f.jpg" width="40" height="40" srcset="/p/f_900.jpg 900w"><img src="/p/g.jpg" width="40" height="40" data-src="/p/g.png"><img src="/p/blank.gif"><img src="/p/1x1.png">',
  ),
  'an icon whose srcset is of icons': page(
    '<img src="/p/f.jpg" width="40" height="40" srcset="/p/f2.jpg 64w"><img width="40" height="40" srcset="/p/g2.jpg 65w"><img width="40" height="40" srcset="/p/h2.jpg 64w">',
  ),
  'pictures named as none of the piece': page(
    '<img src="/p/a.jpg" class="avatar"><img src="/p/b.jpg" id="site-logo"><img src="/p/c.jpg" role="banner"><img src="/p/d.jpg" alt="Profile picture"><img src="/p/e.jpg" alt="Bag with the logo of Ondrasse on its front"><img src="/img/icons/f.jpg"><img src="/p/g.svg"><img src="/p/ok.jpg"><img src="/p/h.svg?x=1"><img src="/p/i.jpg" alt="The logo of the bag is here ok">',
  ),
  'one stand-in shown by several that wait': page(
    '<img src="/p/wait.jpg" data-src="/p/a.jpg"><img src="/p/wait.jpg" data-src="/p/b.jpg"><img src="/p/c.jpg" data-src="/p/c.png"><img src="/p/wait2.jpg"><img src="/p/wait2.jpg">',
  ),
  'pictures for readers without scripts': page(
    '<noscript><img src="/p/a.jpg" alt="a"><img src="/p/logo.jpg"></noscript><noscript>no picture</noscript>',
  ),
  'backgrounds of a gallery': page(
    `<div class="gallery" style="background-image: url('/p/a.jpg')" aria-label="front"></div><div id="photo-2" style="background:#fff url(/p/b.jpg) no-repeat"></div><div role="img" style='background: url("/p/c.jpg")'></div><div class="plain" style="background:url(/p/d.jpg)"></div><div class="slide" style="background:url(/p/blank.png)"></div><div class="slide logo" style="background:url(/p/e.jpg)"></div><a href="/item/9"><div class="slide" style="background:url(/p/f.jpg)"></div></a><div class="slide" style="color:red">x</div><div class="slide" hidden style="background:url(/p/g.jpg)"></div><div class="slide" hidden data-src="x" style="background:url(/p/h.jpg)"></div>`,
  ),
  'a gallery as JSON in an attribute': page(
    `<div data-gallery='["/p/a.jpg",{"src":"/p/b.png","thumb":"/p/t.png"},["/p/c.webp"],"/p/logo.png"]'></div><div class="carousel" :images='[{"url":"/p/d.avif"}]'></div><div data-options='["/p/e.jpg"]'></div><div data-photos="/p/f.jpg"></div><div class="zoom" data-x='["/p/g.gif"]'></div><gallery-view data-z='{"a":"/p/h.jpeg"}'></gallery-view><i id="bilder" data-y='["/p/i.jpg"]'></i><div x-gallery='["/p/j.jpg"]'></div>`,
  ),
  'sizes of one photo as JSON': page(
    `<img src="/p/a.jpg" data-a-dynamic-image='{"/p/a1.jpg":[500,400],"/p/a2.jpg":[1500,1200],"/p/logo.jpg":[9,9]}'><div class="gallery" data-sizes='{"/p/b1.jpg":[100],"/p/b2.jpg":["x"],"/p/b3.jpg":700}'></div>`,
  ),
  'a zoom attribute of a part of a gallery': page(
    '<div class="gallery-item" data-zoom="/p/a.jpg"></div><div data-large="/p/b.jpg"></div><div data-full-image="/p/c.jpg"></div><div class="photo" data-original="/p/d.jpg"></div><div class="photo" data-other-src="/p/e.jpg"></div><a href="/item/5"><span class="photo" data-src="/p/f.jpg"></span></a><b class="photo" data-hires="/p/g.jpg"></b><b class="photo" data-bigger="/p/icon.jpg"></b>',
  ),
  'sizes in addresses': page(
    '<img src="/p/a_400x300.jpg"><img src="/p/a_1600x1200.jpg"><img src="/p/b-200x.jpg"><img src="/p/b.jpg?w=900"><img src="/300x300/c.jpg"><img src="/900x900/c.jpg"><img src="/w_300/d.jpg"><img src="/width-1200,h_900,c_fill/d.jpg"><img src="/p/e-w500.jpg"><img src="/p/e-w1500.jpg"><img src="/p/f/s-l64.jpg"><img src="/p/f/s-l1600.jpg"><img src="/p/g_300px.jpg"><img src="/p/g_1300w.jpg"><img src="/p/h.jpg"><img src="/p/h@2x.jpg">',
  ),
  'size words in addresses': page(
    '<img src="/p/a_thumb.jpg"><img src="/p/a_large.jpg"><img src="/p/b-small.jpg"><img src="/p/b.jpg"><img src="/medium/c.jpg"><img src="/original/c.jpg"><img src="/p/d.jpg?size=large"><img src="/p/d.jpg?size=small"><img src="/p/e.jpg?type=full"><img src="/p/e.jpg?type=x-thumb"><img src="/p/f.jpg?id=1"><img src="/p/f.jpg?id=2"><img src="/p/g.JPG"><img src="/p/g.webp"><img src="/p//h.jpg"><img src="/p/h.png">',
  ),
  'widths in the query': page(
    ['w', 'width', 'wid', 'imwidth', 'sw', 'maxwidth']
      .map(
        (name, at) =>
          `<img src="/p/k${at}.jpg?${name}=15"><img src="/p/k${at}.jpg?${name}=16"><img src="/p/k${at}.jpg?${name}=20000"><img src="/p/k${at}.jpg?${name}=20001">`,
      )
      .join(''),
  ),
  'pictures that the page made': {
    html: page(
      '<img src="blob:https://attic-arcade.example/1" alt="made"><img src="blob:https://attic-arcade.example/2" title="two"><img src="blob:https://attic-arcade.example/3"><img src="blob:https://attic-arcade.example/4"><img src="blob:null"><img class="avatar" src="blob:https://attic-arcade.example/5"><a href="/item/6"><img src="blob:https://attic-arcade.example/6"></a>',
    ),
    properties: {
      'img[src$="/1"]': { naturalWidth: 80, naturalHeight: 81 },
      'img[src$="/2"]': { naturalWidth: 600, naturalHeight: 79 },
      'img[src$="/3"]': { naturalWidth: 1, naturalHeight: 1 },
      'img[src$="/4"]': { naturalWidth: 5, naturalHeight: 0 },
    },
  },
  'a made picture beside one with an address': page(
    '<img src="blob:https://attic-arcade.example/1"><img src="/p/a.jpg">',
  ),
  'thirteen made pictures': {
    html: page(Array.from({ length: 13 }, (_, at) => `<img src="blob:https://attic-arcade.example/m${at}">`).join('')),
    properties: { img: { naturalWidth: 600, naturalHeight: 500 } },
  },
  'natural sizes': {
    html: page('<img src="/p/a.jpg" srcset="/p/a_500.jpg 500w"><img src="/p/b.jpg">'),
    properties: { img: { naturalWidth: 1400, naturalHeight: 1050 } },
  },
  'photos of the head': page(
    '<p>x</p>',
    '<meta property="og:image" content="/p/a.jpg"><meta property="og:image:width" content="1200"><meta property="og:image:height" content="630"><meta property="og:image:alt" content="front"><meta property="og:image" content="/p/b.jpg"><meta property="og:image:url" content="/p/c.jpg"><meta property="og:image:secure_url" content="/p/d.jpg"><meta property="og:image" content="/p/logo.jpg"><meta name="twitter:image" content="/p/e.jpg">',
  ),
  'a card under its other name, and stand-ins of the head': page(
    '<p>x</p>',
    '<meta property="og:image" content="/p/placeholder.jpg"><meta property="og:image" content="data:x"><meta property="og:image:width" content="0"><meta name="twitter:image:src" content="/p/e.jpg">',
  ),
  'a card that is a logo': page('<p>x</p>', '<meta name="twitter:image" content="/p/logo.jpg">'),
  'sixty-one photos of twenty-five versions': page(
    Array.from({ length: 61 }, (_, at) => `<img src="/p/n${at}.jpg" alt="${'w'.repeat(at === 0 ? 301 : 1)}">`).join(
      '',
    ) + Array.from({ length: 25 }, (_, at) => `<img src="/p/n0.jpg?w=${100 + at}">`).join(''),
  ),
};
