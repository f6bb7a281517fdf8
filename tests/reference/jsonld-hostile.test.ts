import { describe, expect, it } from 'vitest';
import { Slices, usualBudget } from '../../src/listing/page/slices';
import { hasType, textOf } from '../../src/listing/structured/item';
import { readJsonLd } from '../../src/listing/structured/json-ld';
import { offersOf } from '../../src/listing/structured/offer-facts';
import { documentOf } from '../unit/listing/page';
import { readFixture } from './fixture';

interface Hostile {
  cases: { id: string; text: string; name: string; price: string }[];
}
const fixture = readFixture<Hostile>('fixtures/jsonld-hostile.json');

describe.skipIf(!fixture)('broken JSON-LD (fixtures/jsonld-hostile.json; skipped: not present)', () => {
  for (const { id, text, name, price } of fixture?.cases ?? [])
    it(`reads name and price of "${id}"`, async () => {
      const document = documentOf('');
      const script = document.createElement('script');
      script.setAttribute('type', 'application/ld+json');
      script.textContent = text;
      document.body.appendChild(script);
      const { items } = await readJsonLd([document], new Slices(usualBudget, undefined, () => 0));
      const product = items.find((item) => hasType(item, 'Product'));
      expect(product && textOf(product, 'name')).toBe(name);
      const [offer] = product ? offersOf(product) : [];
      expect(offer && Number(textOf(offer, 'price'))).toBe(Number(price));
      expect(({} as Record<string, unknown>).polluted).toBeUndefined();
    });

  it('covers all 33', () => expect(fixture?.cases).toHaveLength(33));
});
