import type { Listing, Price } from '../../src/listing';

/** What a page must give; a key that is absent is not asked. Prices read "sale EUR 540.00", addresses lack the origin. */
export interface Expectation {
  kind: Listing['kind'];
  title?: string;
  maker?: string;
  condition?: string;
  availability?: string;
  /** The best price. */
  price?: string;
  /** All prices, each once, best first. */
  prices?: string[];
  pricesInclude?: string[];
  /** Every reading of the best price, minor units. */
  readings?: number[];
  priceCaveats?: string[];
  confidenceBelow?: number;
  descriptionHas?: string;
  textHas?: string;
  textLacks?: string[];
  photos?: string[];
  photosInclude?: string[];
  photoCount?: number;
  problems?: string[];
  prototypeClean?: boolean;
}

export function priceWords({ kind, minor, minorTo, exponent, currency }: Price): string {
  const amount = (value: number) => (value / 10 ** exponent).toFixed(exponent);
  return `${kind} ${currency ?? '?'} ${amount(minor)}${minorTo === undefined ? '' : `-${amount(minorTo)}`}`;
}

/** What a listing gives where the expectation asks, in the expectation's own form. */
export function answerTo(
  expected: Expectation,
  listing: Listing,
  origin: string,
  prototypeClean: boolean,
): Expectation {
  const [price] = listing.price;
  const prices = [...new Set(listing.price.map(({ value }) => priceWords(value)))];
  const photos = listing.photos.map(({ url }) => url.replace(origin, ''));
  const kept = (wanted: string[], given: string[]) => wanted.filter((one) => given.includes(one));
  const description = listing.description[0]?.value ?? '';
  const all: Required<Expectation> = {
    kind: listing.kind,
    title: listing.title[0]?.value ?? '',
    maker: listing.maker[0]?.value ?? '',
    condition: listing.condition[0]?.value ?? '',
    availability: listing.availability[0]?.value ?? '',
    price: price ? priceWords(price.value) : '',
    prices,
    pricesInclude: kept(expected.pricesInclude ?? [], prices),
    readings: price ? [price.value.minor, ...(price.value.otherMinor ?? [])] : [],
    priceCaveats: kept(expected.priceCaveats ?? [], price?.caveats ?? []),
    confidenceBelow:
      price && price.confidence < (expected.confidenceBelow ?? 0)
        ? (expected.confidenceBelow ?? 0)
        : (price?.confidence ?? 1),
    descriptionHas: description.includes(expected.descriptionHas ?? '') ? (expected.descriptionHas ?? '') : description,
    textHas: listing.text.includes(expected.textHas ?? '') ? (expected.textHas ?? '') : listing.text.slice(0, 500),
    textLacks: (expected.textLacks ?? []).filter(
      (words) => !listing.text.includes(words) && !description.includes(words),
    ),
    photos,
    photosInclude: kept(expected.photosInclude ?? [], photos),
    photoCount: photos.length,
    problems: kept(
      expected.problems ?? [],
      listing.problems.map(({ code }) => code),
    ),
    prototypeClean,
  };
  return Object.fromEntries(Object.entries(all).filter(([key]) => key in expected)) as unknown as Expectation;
}
