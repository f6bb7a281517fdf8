import { addValue, hasType, type Item, isItem, valuesOf } from './item';

/** Joins what a page's data says in several places: by `@id`, then offers to the product that they name. */
export function joinItems(items: Item[]): void {
  joinById(items);
  joinOffers(items);
}

/** Joins things with the same `@id`: every mention gets what any of them says, once each; cycles need no care. */
function joinById(items: Item[]): void {
  const byId = new Map<string, Item[]>();
  for (const item of items) {
    if (item.id === null) continue;
    const same = byId.get(item.id);
    if (same) same.push(item);
    else byId.set(item.id, [item]);
  }
  for (const same of byId.values()) {
    const [first, ...others] = same as [Item, ...Item[]];
    // Sets beside the lists: asking a list for each of its values would cost their square.
    const known = new Map([...first.properties].map(([name, values]) => [name, new Set(values)]));
    const types = new Set(first.types);
    for (const other of others) {
      for (const type of other.types) types.add(type);
      for (const [name, values] of other.properties) {
        const already = known.get(name) ?? new Set();
        for (const value of values) already.add(value);
        known.set(name, already);
      }
      for (const caveat of other.caveats) if (!first.caveats.includes(caveat)) first.caveats.push(caveat);
      first.holder ??= other.holder;
    }
    if (others.length > 0) {
      first.types.splice(0, first.types.length, ...types);
      for (const [name, values] of known) first.properties.set(name, [...values]);
    }
    for (const other of others) {
      other.properties = first.properties;
      other.types = first.types;
    }
  }
}

/** An offer that names its product by `itemOffered` becomes one of that product's offers. */
function joinOffers(items: readonly Item[]): void {
  const byId = new Map(items.flatMap((item) => (item.id === null ? [] : [[item.id, item] as const])));
  const joined = new Map<Item['properties'], Set<unknown>>();
  for (const offer of items) {
    if (!hasType(offer, 'Offer', 'AggregateOffer')) continue;
    for (const value of valuesOf(offer, 'itemOffered')) {
      const product = isItem(value) ? value : byId.get(String(value));
      if (!product || product === offer) continue;
      const offers = joined.get(product.properties) ?? new Set<unknown>(product.properties.get('offers'));
      joined.set(product.properties, offers);
      if (!offers.has(offer)) addValue(product, 'offers', offer);
      offers.add(offer);
    }
  }
}
