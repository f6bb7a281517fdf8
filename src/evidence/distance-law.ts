import type { Listing } from '../listing/types';
import { isPlaceCode } from '../place';
import { findPlaces, isCompanyElsewhere } from '../text';

/** Where Directive 2011/83/EU or UK S.I. 2013/3134 is the law on what a consumer buys at a distance. */
const covered = new Set(
  'AT BE BG CY CZ DE DK EE ES FI FR GB GR HR HU IE IT LT LU LV MT NL PL PT RO SE SI SK'.split(' '),
);
/** The money of those countries. That a trader asks it is a sign of the market meant (from memory: CJEU C-585/08, para 93). */
const currencies = new Set('BGN CZK DKK EUR GBP HUF PLN RON SEK'.split(' '));

/**
 * Whether a trader's page tells that European or British law on sales at a distance holds: by the countries that the
 * seller's place names, else by the currency that is asked. `elsewhere` where any of them is another's, or the company
 * is called as those of other countries are; `untold` where the page tells neither place nor currency.
 */
export function distanceLaw({ seller, price }: Pick<Listing, 'seller' | 'price'>): 'covered' | 'elsewhere' | 'untold' {
  if (seller.name.some(({ value }) => isCompanyElsewhere(value))) return 'elsewhere';
  const named = seller.place.flatMap(({ value }) => findPlaces(value).map(({ place }) => place));
  if (named.length > 0) return named.every((place) => covered.has(place)) ? 'covered' : 'elsewhere';
  // "Kyoto, JP": two letters alone may also be a part of a country ("Wilmington, DE"), and only tell where it is not.
  const codes = seller.place.flatMap(({ value }) => /(?:^|,\s)([A-Z]{2})$/.exec(value.trim())?.[1] ?? []);
  if (codes.some((code) => isPlaceCode(code) && !covered.has(code))) return 'elsewhere';
  const asked = price.flatMap(({ value }) => (value.kind === 'shipping' ? [] : (value.currency ?? [])));
  if (asked.length === 0) return 'untold';
  return asked.every((currency) => currencies.has(currency)) ? 'covered' : 'elsewhere';
}
