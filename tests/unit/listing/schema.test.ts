import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { labelledSchema, pageExtractSchema, pageSignsSchema } from '../../../src/listing/extract-types';
import { pickFieldSchema, pickSchema } from '../../../src/listing/pick-types';
import { listingSchema, pageToldSchema, photoAddressSchema, webAddressSchema } from '../../../src/listing/types';
import { look4 } from '../../../src/watch/record/look-4';

const accepts = (schema: z.ZodType, value: unknown) => schema.safeParse(value).success;
const messageOf = (schema: z.ZodType, value: unknown) => schema.safeParse(value).error?.issues[0]?.message;
const withoutPage = (schema: z.ZodType) => {
  const { properties, ...rest } = z.toJSONSchema(schema) as { properties: Record<string, unknown> };
  return { ...rest, properties: { ...properties, page: 'told apart' } };
};

const signs = {
  pointed: false,
  product: 'none',
  offered: false,
  products: 0,
  cards: 0,
  ownPrice: 0.5,
  priceWithoutWords: false,
  headType: null,
  published: false,
  article: false,
  list: false,
  controls: ['Buy now'],
  sells: true,
  cut: false,
};

describe('the form of a listing', () => {
  it('is at run time the form in which looks are kept, from the limits of numbers to each word', () => {
    expect(withoutPage(listingSchema)).toEqual(withoutPage(look4.shape.listing));
  });

  it('knows the kinds of pages and the signs that tell them, and no others', () => {
    const kinds = ['offer', 'auction', 'ended', 'list', 'article', 'cut', 'none'];
    const evidence =
      'pointed-at product-data product-data-without-offer head-says-product buying-control selling-form price-in-its-place price-alone place-for-a-price auction-amounts said-to-be-gone head-says-article article-data publication-time cards-with-prices many-cards-with-prices list-data products-none-of-them-this-page'.split(
        ' ',
      );
    for (const kind of kinds) expect(accepts(pageToldSchema, { kind, evidence }), kind).toBe(true);
    expect(accepts(pageToldSchema, { kind: '', evidence: [] })).toBe(false);
    expect(accepts(pageToldSchema, { kind: 'offer', evidence: [''] })).toBe(false);
  });

  it('takes addresses of the web only, and pictures that a page made', () => {
    for (const address of ['https://a.example', 'HTTP://a.example/b']) {
      expect(accepts(webAddressSchema, address)).toBe(true);
      expect(accepts(photoAddressSchema, address)).toBe(true);
    }
    expect(accepts(photoAddressSchema, 'blob:https://a.example/1')).toBe(true);
    for (const address of [
      'javascript:alert(1)',
      'data:image/png,',
      'file:///a',
      'https:///a',
      'https:// a',
      'x https://a.example',
    ]) {
      expect(messageOf(webAddressSchema, address)).toBe('no web address (http or https)');
      expect(messageOf(photoAddressSchema, address)).toBe('no address of a photo (http or https)');
    }
    expect(accepts(webAddressSchema, 'blob:https://a.example/1')).toBe(false);
    expect(messageOf(listingSchema.shape.readAt, 'today')).toBe('no date and time');
  });
});

describe('what the page script hands over', () => {
  const labelled = { name: 'a', value: 'b', origin: 'visible', where: 'p', confidence: 1 };
  const note = { code: 'data-cut', where: 'page', count: 0 };
  const extract = {
    labelled: [labelled],
    signs,
    notes: [note],
    state: { things: [{ a: 'b' }], texts: ['x'] },
    cut: { nodesRead: null, attributes: 0, characters: 0 },
    picked: [{ field: 'title', words: 'a', where: 'b' }],
    footer: 'a',
  };
  const form = pageExtractSchema.omit({ listing: true });
  const changed = (path: (string | number)[], value: unknown): unknown => {
    const copy = structuredClone(extract) as unknown as Record<string | number, unknown>;
    let at = copy;
    for (const step of path.slice(0, -1)) at = at[step] as Record<string | number, unknown>;
    at[path.at(-1) as string] = value;
    return copy;
  };

  it('is taken whole', () => {
    expect(accepts(form, extract)).toBe(true);
    expect(accepts(form, changed(['labelled', 0, 'caveats'], ['repaired']))).toBe(true);
    expect(accepts(labelledSchema, { ...labelled, caveats: [1] })).toBe(false);
  });

  it.each<[(string | number)[], unknown[], unknown[]]>([
    [
      ['signs', 'product'],
      ['clear', 'unclear', 'none'],
      ['', 'other'],
    ],
    [
      ['signs', 'products'],
      [0, 1],
      [-1, 1.5],
    ],
    [
      ['signs', 'cards'],
      [0, 1],
      [-1, 1.5],
    ],
    [
      ['signs', 'ownPrice'],
      [0, 1],
      [-0.1, 1.1],
    ],
    [['signs', 'headType'], [null, 'product'], [1]],
    [
      ['labelled', 0, 'confidence'],
      [0, 1],
      [-0.1, 1.1],
    ],
    [
      ['cut', 'nodesRead'],
      [null, 0, 1],
      [-1, 0.5],
    ],
    [
      ['cut', 'attributes'],
      [0, 1],
      [-1, 0.5, null],
    ],
    [
      ['cut', 'characters'],
      [0, 1],
      [-1, 0.5, null],
    ],
    [
      ['notes', 0, 'count'],
      [0, 1],
      [-1, 0.5],
    ],
    [['notes', 0, 'field'], ['price', undefined], ['']],
    [
      ['notes', 0, 'code'],
      'page-is-picture page-is-pdf which-product pick-the-variant data-stale price-not-in-text frame-not-read page-changing page-still-loading data-cut data-unreadable data-too-long-to-repair photo-without-address pick-not-found pick-unreadable'.split(
        ' ',
      ),
      [''],
    ],
    [['more'], [], [1]],
  ])('%j takes %j and not %j', (path, good, bad) => {
    for (const value of good) expect(accepts(form, changed(path, value)), String(value)).toBe(true);
    for (const value of bad) expect(accepts(form, changed(path, value)), String(value)).toBe(false);
  });

  it('has signs of a page and no others', () => {
    expect(accepts(pageSignsSchema, { ...signs, more: 1 })).toBe(false);
  });
});

describe('what the buyer can point at', () => {
  it('is each field of a listing that a page shows', () => {
    const fields =
      'title description price maker model condition measures colour material itemCode posted returns shipping payment seller photo'.split(
        ' ',
      );
    for (const field of fields) expect(accepts(pickSchema, { field, selector: 'p' }), field).toBe(true);
    expect(accepts(pickFieldSchema, '')).toBe(false);
  });

  it('has a selector of one to a thousand characters', () => {
    const of = (length: number) => accepts(pickSchema, { field: 'price', selector: 'p'.repeat(length) });
    expect([0, 1, 1000, 1001].map(of)).toEqual([false, true, true, false]);
  });
});
