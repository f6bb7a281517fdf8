import { describe, expect, it } from 'vitest';
import { readHtml } from './page';

const page = (body: string, state: unknown, type = 'application/json') =>
  `<!doctype html><html lang="en-GB"><head><title>Ondrasse Carryall 30</title></head><body><main><h1>Ondrasse Carryall 30</h1>${body}</main>
   <script${type ? ` type="${type}"` : ''}>${type ? JSON.stringify(state) : `window.__STATE__ = ${JSON.stringify(state)};`}</script></body></html>`;
const piece = {
  title: 'Ondrasse Carryall 30',
  price: { amount: '540.00', currency: 'GBP' },
  brand: { name: 'Ondrasse' },
  seller: { login: 'moth_and_lamp', city: 'Leeds' },
  colour: 'Tan',
};
const others = {
  title: 'Tessaro Vell Satchel',
  price: { amount: '99.00', currency: 'GBP' },
  brand: { name: 'Tessaro Vell' },
};

describe('the state that a page keeps for its own scripts', () => {
  it.each(['application/json', ''])('gives what the price and title shown bear out (%s)', async (type) => {
    const listing = await readHtml(page('<p class="price">£540.00</p>', { props: [others, { item: piece }] }, type));
    expect(listing.maker[0]?.value).toBe('Ondrasse');
    expect(listing.colour[0]?.value).toBe('Tan');
    expect(listing.seller.name[0]).toMatchObject({ value: 'moth_and_lamp', where: 'inline state > seller' });
  });

  it('gives nothing of a thing whose price or title is another', async () => {
    const listing = await readHtml(page('<p class="price">£410.00</p>', { item: piece, others }));
    expect(listing.seller.name).toEqual([]);
    expect(listing.maker).toEqual([]);
    expect(listing.price.map(({ value }) => value.minor)).toEqual([41000]);
  });

  it('gives the price where the page shows none', async () => {
    const { price } = await readHtml(page('<button>Buy now</button>', { item: piece }));
    expect(price[0]?.value).toMatchObject({ kind: 'sale', minor: 54000, currency: 'GBP' });
  });

  it('completes a description that the page cuts, and only the one that begins so', async () => {
    const start = 'A weekend bag in bridle leather, bought by my aunt in Ghent';
    const whole = `${start} and carried to the sea each summer, with a new zip since 2019 and its dust bag.`;
    const cut = `<p class="price">£540</p><div class="description">${start} … See more</div>`;
    const listing = await readHtml(page(cut, { text: whole, other: `Another bag. ${whole}` }));
    expect(listing.description[0]?.value).toBe(whole);
    const unknown = await readHtml(page(cut, { other: `Another bag. ${whole}` }));
    expect(unknown.description[0]).toMatchObject({ value: `${start} … See more`, caveats: ['cut'] });
  });

  it('runs nothing, and reads no prototype', async () => {
    const evil =
      '<script>window.x = {"title": alert(1)};</script><script type="application/json">{"__proto__": {"price": "1"}}</script>';
    const listing = await readHtml(page(`<p class="price">£540</p>${evil}`, {}));
    expect(listing.price.map(({ value }) => value.minor)).toEqual([54000]);
    expect(({} as { price?: string }).price).toBeUndefined();
  });
});

describe('photos shown small', () => {
  const thumbs =
    '<p class="price">£540</p><img src="/p/a1/s-l64.jpg"><img src="/p/b2/s-l64.jpg"><img src="/t/c3-small.jpg">';
  const origin = 'https://attic-arcade.example';

  it('get their largest version from any script, and scripts add no photo of their own', async () => {
    const script = `<script>load({big: "${origin.replaceAll('/', '\\/')}\\/p\\/a1\\/s-l1600.jpg", banner: "${origin}/ads/s-l1600.jpg"})</script>`;
    const { photos } = await readHtml(page(thumbs + script, {}));
    expect(photos.map(({ url }) => url.replace(origin, ''))).toEqual([
      '/p/a1/s-l1600.jpg',
      '/p/b2/s-l64.jpg',
      '/t/c3-small.jpg',
    ]);
  });

  it('and from a thing that holds both sizes under any name', async () => {
    const state = { images: [{ preview: `${origin}/t/c3-small.jpg`, whole: `${origin}/x/9f77.jpg` }] };
    const { photos } = await readHtml(page(thumbs, state));
    expect(photos.at(-1)?.url).toBe(`${origin}/x/9f77.jpg`);
  });
});

describe('sizes of one photo, by the shape in which they are kept', () => {
  const origin = 'https://attic-arcade.example';
  const shown = '<p class="price">£540</p><img src="/t/7e1.jpg"><img src="/t/9c2.jpg">';
  const urlsOf = async (state: unknown) =>
    (await readHtml(page(shown, state))).photos.map(({ url }) => url.replace(origin, ''));

  it.each([
    ['under names of sizes', { thumb: { url: `${origin}/t/7e1.jpg` }, original: { url: `${origin}/h/aa41.jpg` } }],
    [
      'in a list by their widths',
      [
        { src: `${origin}/t/7e1.jpg`, width: 90, height: 60 },
        { src: `${origin}/h/aa41.jpg`, width: 1500, height: 1001 },
      ],
    ],
    ['beside each other, the larger one named first', { zoom: `${origin}/h/aa41.jpg`, tiny: `${origin}/t/7e1.jpg` }],
  ])('%s', async (_, sizes) => {
    expect(await urlsOf({ pictures: [sizes] })).toEqual(['/h/aa41.jpg', '/t/9c2.jpg']);
  });

  it.each([
    ['of one width', [200, 200]],
    ['of other shapes', [200, 300]],
  ])('a gallery %s is none', async (_, [first, second]) => {
    const gallery = [
      { src: `${origin}/t/7e1.jpg`, width: first, height: 200 },
      { src: `${origin}/h/other.jpg`, width: second, height: 200 },
    ];
    expect(await urlsOf({ gallery })).toEqual(['/t/7e1.jpg', '/t/9c2.jpg']);
  });
});

describe('sizes and stock of the thing that the page shows', () => {
  const read = async (more: object) => readHtml(page('<p class="price">£540.00</p>', { item: { ...piece, ...more } }));
  const sizesOf = async (more: object) =>
    (await read(more)).measures.map(({ value }) => `${value.dimension} ${value.mm} ${value.unit}`);
  const sides = ['width 300 cm', 'height 210 cm', 'depth 170 cm'];

  it.each([
    ['with a unit in each value', { width: '30 cm', height: '21 cm', depth: '17 cm' }],
    ['with a unit beside', { dimensions: { width: 30, height: 21, depth: 17, unit: 'cm' } }],
    ['with a unit in their names', { width_cm: 30, height_cm: 21, depth_cm: 17 }],
    ['with a length', { measurements: { length: '30 cm', height: '21 cm', width: '17 cm' } }],
    [
      'under labels of its own',
      {
        attributes: [
          { label: 'Width', value: '30 cm' },
          { label: 'Height', value: '21 cm' },
          { label: 'Depth', value: '17 cm' },
        ],
      },
    ],
  ])('%s', async (_, more) => {
    const found = await sizesOf(more);
    expect(found.toSorted()).toEqual(sides.toSorted());
  });

  it.each([
    ['without any unit', { width: 30, height: 21 }],
    ['of a picture', { image: { width: '800 mm', height: '600 mm' } }],
    ['of a parcel', { parcel: { width: '40 cm', height: '30 cm' } }],
  ])('none %s', async (_, more) => {
    expect(await sizesOf(more)).toEqual([]);
  });

  it.each([
    ['quantity', { quantity: 12 }, ['in stock: 12']],
    ['a level one step down', { inventory: { level: 3 } }, ['in stock: 3']],
    ['one piece', { quantity: 1 }, []],
    ['none', { stock: 0 }, []],
    ['a count of something else', { quantity: 24000 }, []],
  ])('stock by %s', async (_, more, words) => {
    const { availability } = await read(more);
    expect(availability.filter(({ where }) => /quantity/.test(where)).map((one) => one.words)).toEqual(words);
  });
});
