import { addValue, hasType, type Item, isItem, itemsOf, valuesOf } from './item';

/** Joins what a page's data says in several places: by `@id`, then offers to the product that they name. */
export function joinItems(items: Item[]): void {
  joinById(items);
  joinOffers(items);
}

/** Joins things with the same `@id`: every mention gets what any of them says, once each; cycles need no care. */
function joinById(items: Item[]): void {
  const byId = new Map<string, Item[]>();
  for (const item of items) if (item.id !== null) byId.set(item.id, [...(byId.get(item.id) ?? []), item]);
  for (const same of byId.values()) {
    const [first, ...others] = same as [Item, ...Item[]];
    for (const other of others) {
      for (const type of other.types) if (!first.types.includes(type)) first.types.push(type);
      for (const [name, values] of other.properties) {
        const already = first.properties.get(name);
        if (!already) first.properties.set(name, values);
        else for (const value of values) if (!already.includes(value)) already.push(value);
      }
      for (const caveat of other.caveats) if (!first.caveats.includes(caveat)) first.caveats.push(caveat);
      first.holder ??= other.holder;
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
  for (const offer of items) {
    if (!hasType(offer, 'Offer', 'AggregateOffer')) continue;
    for (const value of valuesOf(offer, 'itemOffered')) {
      const product = isItem(value) ? value : byId.get(String(value));
      if (product && product !== offer && !itemsOf(product, 'offers').includes(offer))
        addValue(product, 'offers', offer);
    }
  }
}
