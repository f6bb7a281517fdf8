import { describe, expect, it } from 'vitest';
import { emptyDraft } from '../../src/listing/draft';
import { Slices, usualBudget } from '../../src/listing/page/slices';
import { addDataPhotos } from '../../src/listing/photos/data-photos';
import { PhotoSet } from '../../src/listing/photos/photo-set';
import { hasType, type Item, valuesOf } from '../../src/listing/structured/item';
import { joinItems } from '../../src/listing/structured/join';
import { readJsonLd } from '../../src/listing/structured/json-ld';
import { readMicrodata } from '../../src/listing/structured/microdata';
import { isProduct, readProduct } from '../../src/listing/structured/product-facts';
import { readRdfa } from '../../src/listing/structured/rdfa';
import { documentOf } from '../unit/listing/page';
import { readFixture } from './fixture';

interface Fixture {
  cases: { id: string; notation: 'jsonld' | 'microdata' | 'rdfa'; html: string; expected: unknown }[];
}
const fixture = readFixture<Fixture>('fixtures/schemaorg-product-offer.json');
const base = 'https://example.com/';

async function itemsIn(html: string, notation: string): Promise<Item[]> {
  const items = await notationItems(html, notation);
  joinItems(items);
  return items;
}

async function notationItems(html: string, notation: string): Promise<Item[]> {
  const document = documentOf(html.replace('<!doctype html>', '<!doctype html><html>'));
  const slices = new Slices(usualBudget, undefined, () => 0);
  if (notation === 'jsonld') return (await readJsonLd([document], slices)).items;
  return notation === 'microdata' ? readMicrodata(document, slices) : readRdfa(document, slices);
}

/** The five fields of a block's product (or of the first thing that it offers), as one comparable value each. */
async function fieldsOf(html: string, notation: string): Promise<Record<string, string> | null> {
  const items = await itemsIn(html, notation);
  const subject =
    items.find(isProduct) ?? items.find((item) => valuesOf(item, 'offers').length > 0 || hasType(item, 'Offer'));
  if (!subject) return null;
  const found = { draft: emptyDraft(), labelled: [], hints: {} };
  readProduct(subject, found);
  const photos = new PhotoSet();
  addDataPhotos(subject, base, photos);
  const { title, maker, price } = found.draft;
  return {
    // The examples write some names in capitals or with a full stop in one notation only.
    name: (title[0]?.value ?? '').toLowerCase().replace(/\.$/, ''),
    brand: maker[0]?.value ?? '',
    price: price
      .map(({ value }) => `${value.kind} ${value.minor}-${value.minorTo ?? ''}`)
      .sort()
      .join(),
    currency: [...new Set(price.map(({ value }) => value.currency))].sort().join(),
    image: photos
      .links()
      .map((photo) => photo.url)
      .sort()
      .join(),
  };
}

describe.skipIf(!fixture)(
  'one block in several notations (fixtures/schemaorg-product-offer.json; skipped: not present)',
  () => {
    it('reads the same name, brand, price, currency and image from microdata and RDFa as from JSON-LD in at least 97%', async () => {
      let compared = 0;
      const apart: string[] = [];
      for (const { id, notation, html } of fixture?.cases ?? []) {
        if (notation === 'jsonld') continue;
        const other = fixture?.cases.find((one) => one.id === `${id.split('/')[0]}/jsonld`);
        if (!other) continue;
        const [left, right] = [await fieldsOf(html, notation), await fieldsOf(other.html, 'jsonld')];
        if (!left && !right) continue;
        for (const field of ['name', 'brand', 'price', 'currency', 'image']) {
          if (!left?.[field] && !right?.[field]) continue;
          compared += 1;
          if (left?.[field] !== right?.[field]) apart.push(`${id} ${field}: ${left?.[field]} / ${right?.[field]}`);
        }
      }
      expect(compared).toBeGreaterThan(60);
      expect(apart, apart.join('\n')).toHaveLength(Math.min(apart.length, Math.floor(compared * 0.03)));
    });
  },
);
