import { describe, expect, it } from 'vitest';
import { Slices, usualBudget } from '../../../src/listing/page/slices';
import { textOf, textsOf, valuesOf } from '../../../src/listing/structured/item';
import { joinItems } from '../../../src/listing/structured/join';
import { readMicrodata } from '../../../src/listing/structured/microdata';
import { readRdfa } from '../../../src/listing/structured/rdfa';
import { documentOf, readHtml } from './page';

const slices = () => new Slices(usualBudget, undefined, () => 0);

describe('microdata', () => {
  it('takes properties that an itemref reaches, in tree order, and survives a cycle of them', async () => {
    const [item] = await readMicrodata(
      documentOf(`<div itemscope itemtype="https://schema.org/Product" itemref="b a">
        <span itemprop="name">Carryall</span></div>
        <div id="a"><span itemprop="color">tan</span></div>
        <div id="b"><span itemprop="color">honey</span><div itemprop="isRelatedTo" itemscope itemref="b"><i itemprop="name">x</i></div></div>`),
      slices(),
    );
    expect(item && textOf(item, 'name')).toBe('Carryall');
    expect(item && textsOf(item, 'color')).toEqual(['tan', 'honey']);
  });

  it('reads values from meta, link, data, time and meter as the standard says', async () => {
    const [item] = await readMicrodata(
      documentOf(`<div itemscope><meta itemprop="a" content="1"><link itemprop="b" href="/x"><data itemprop="c" value="3">three</data>
        <time itemprop="d" datetime="2026-02-14">yesterday</time><meter itemprop="e" value="0.5">half</meter><p itemprop="f">line<br>two</p></div>`),
      slices(),
    );
    expect(['a', 'b', 'c', 'd', 'e', 'f'].map((name) => item && textOf(item, name))).toEqual([
      '1',
      '/x',
      '3',
      '2026-02-14',
      '0.5',
      'line\ntwo',
    ]);
  });
});

describe('RDFa Lite', () => {
  it('resolves prefixes and vocabularies, and joins things by their resource', async () => {
    const items = await readRdfa(
      documentOf(`<div prefix="s: https://schema.org/"><div typeof="s:Product" resource="#bag"><b property="s:name">Satchel</b></div></div>
        <div vocab="https://schema.org/" about="#bag"><span property="color">cognac</span></div>`),
      slices(),
    );
    joinItems(items);
    const product = items.find((item) => item.types.includes('Product'));
    expect(product && [textOf(product, 'name'), textOf(product, 'color')]).toEqual(['Satchel', 'cognac']);
  });
});

describe('joining data', () => {
  it('makes an offer that names its product by id one of the product', async () => {
    const items = await readMicrodata(
      documentOf(`<div itemscope itemtype="https://schema.org/Product" itemid="#p"><i itemprop="name">Bag</i></div>
        <div itemscope itemtype="https://schema.org/Offer"><link itemprop="itemOffered" href="#p"><i itemprop="price">5</i></div>`),
      slices(),
    );
    joinItems(items);
    const [product] = items;
    expect(product && valuesOf(product, 'offers')).toHaveLength(1);
  });
});

const script = (data: unknown) => `<script type="application/ld+json">${JSON.stringify(data)}</script>`;
const product = (name: string, price: string, more = {}) => ({
  '@type': 'Product',
  name,
  offers: { '@type': 'Offer', price, priceCurrency: 'EUR' },
  ...more,
});

describe('which product', () => {
  it('asks the user when two pieces fit the page equally well, and keeps both as candidates', async () => {
    const listing = await readHtml(
      script([product('Ondrasse Carryall 25', '480.00'), product('Tessaro Vell Satchel', '260.00')]),
    );
    expect(listing.problems.map(({ code }) => code)).toContain('which-product');
    expect(listing.price.map(({ value }) => value.minor).sort()).toEqual([26000, 48000]);
    expect(listing.title[0]?.caveats).toContain('tie');
  });

  it('takes the variant whose address is the page', async () => {
    const group = {
      '@type': 'ProductGroup',
      name: 'Ondrasse Carryall',
      hasVariant: [
        product('Carryall 25', '480.00', { url: '/item/1042?size=25' }),
        product('Carryall 30', '540.00', { url: '/item/1042?size=30' }),
      ],
    };
    const listing = await readHtml(script(group), { url: 'https://attic-arcade.example/item/1042?size=30' });
    expect(listing.title[0]?.value).toBe('Carryall 30');
    expect(listing.price[0]?.value.minor).toBe(54000);
  });

  it('lets what is seen win over data left from another page', async () => {
    const listing = await readHtml(
      `${script(product('Ondrasse Carryall 30', '540.00', { url: '/item/7' }))}<main><h1>Tessaro Vell Satchel 28</h1><p class="price">€260.00</p></main>`,
    );
    expect(listing.title[0]?.value).toBe('Tessaro Vell Satchel 28');
    expect(listing.price[0]).toMatchObject({ origin: 'visible', value: { minor: 26000 } });
    expect(listing.price.find(({ origin }) => origin === 'json-ld')?.caveats).toContain('stale');
  });
});
