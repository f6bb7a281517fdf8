import { propose } from '../draft';
import { dataPrice } from './data-price';
import { availabilityOf } from './offer-facts';
import { type HeadTags, headTag } from './open-graph';
import { type Found, labelledFrom } from './product-facts';
import { conditionOf, originTrust } from './terms';

/** Reads what the head says of a product: Open Graph `product:` tags, older `og:price:`, twitter labels. */
export function readHeadFacts(tags: HeadTags, found: Found, caveats: readonly string[]): void {
  const { draft, hints } = found;
  const from = (where: string, scale = 1) => ({
    origin: 'open-graph' as const,
    where,
    confidence: originTrust['open-graph'] * scale,
    caveats,
  });
  const currency = headTag(tags, 'product:price:currency', 'og:price:currency', 'product:sale_price:currency');
  const amount = (name: string, kind: 'sale' | 'was') => {
    const text = headTag(tags, name);
    const price = text === null ? null : dataPrice(text, currency, kind, hints);
    if (price)
      propose(draft.price, price.price, { ...from(name), caveats: [...caveats, ...price.caveats] }, price.words);
  };
  const onSale = headTag(tags, 'product:sale_price:amount') !== null;
  amount('product:sale_price:amount', 'sale');
  amount('product:price:amount', onSale ? 'was' : 'sale');
  amount('og:price:amount', onSale ? 'was' : 'sale');
  amount('product:original_price:amount', 'was');
  propose(draft.maker, headTag(tags, 'product:brand', 'og:brand'), from('product:brand'));
  propose(draft.colour, headTag(tags, 'product:color'), from('product:color'));
  propose(draft.material, headTag(tags, 'product:material'), from('product:material'));
  propose(
    draft.itemCode,
    headTag(tags, 'product:mfr_part_no', 'product:retailer_item_id', 'product:retailer_part_no'),
    from('product:retailer_item_id', 0.8),
  );
  const condition = headTag(tags, 'product:condition', 'og:condition');
  if (condition) propose(draft.condition, conditionOf(condition), from('product:condition'), condition);
  const availability = headTag(tags, 'product:availability', 'og:availability');
  if (availability)
    propose(draft.availability, availabilityOf(availability), from('product:availability'), availability);
  for (let index = 1; index <= 6; index += 1) {
    const name = headTag(tags, `twitter:label${index}`);
    const value = headTag(tags, `twitter:data${index}`);
    if (name && value)
      found.labelled.push(
        labelledFrom(name, value, { origin: 'meta', where: `twitter:data${index}`, confidence: 0.5, caveats }),
      );
  }
}
