import { isOfferControl } from '../text/offer-words';
import type { Draft } from './draft';
import type { PageSigns } from './extract-types';
import { isOfferedInWords } from './offered-in-words';
import type { Listing } from './types';

type Told = NonNullable<Listing['page']>;
type Sign = Told['evidence'][number];

/**
 * How much each sign speaks for an offer, an article or a list. Chosen so that no single weak sign makes an offer of an
 * article, and no carousel of others makes a list of an offer. Common practice, no source.
 */
const weights: Record<Sign, { offer?: number; article?: number; list?: number }> = {
  'pointed-at': {},
  'product-data': { offer: 4 },
  'product-data-without-offer': { offer: 2 },
  'head-says-product': { offer: 3 },
  'buying-control': { offer: 3 },
  'selling-form': { offer: 2 },
  'price-in-its-place': { offer: 2 },
  'price-alone': { offer: 1 },
  'place-for-a-price': { offer: 2 },
  'auction-amounts': { offer: 3 },
  'said-to-be-gone': { offer: 1 },
  'head-says-article': { article: 3 },
  'article-data': { article: 3 },
  'publication-time': { article: 2 },
  'cards-with-prices': { list: 3 },
  'many-cards-with-prices': { list: 4 },
  'list-data': { list: 2 },
  'products-none-of-them-this-page': { list: 4 },
};

function signsOf(signs: PageSigns, draft: Draft, auction: boolean, text: string): Sign[] {
  const [best] = draft.availability;
  const gone = best !== undefined && best.confidence >= 0.8 && (best.value === 'sold' || best.value === 'removed');
  const told: [Sign, boolean][] = [
    ['pointed-at', signs.pointed],
    ['product-data', signs.product === 'clear' && signs.offered],
    ['product-data-without-offer', signs.product === 'clear' ? !signs.offered : signs.product === 'unclear'],
    ['head-says-product', /product/i.test(String(signs.headType))],
    ['buying-control', signs.controls.some(isOfferControl)],
    ['selling-form', signs.sells],
    ['price-in-its-place', signs.ownPrice >= 0.6],
    [
      'price-alone',
      (signs.ownPrice >= 0.45 && signs.ownPrice < 0.6) ||
        (signs.ownPrice === 0 && isOfferedInWords(text, draft, signs)),
    ],
    ['place-for-a-price', signs.priceWithoutWords],
    ['auction-amounts', auction],
    ['said-to-be-gone', gone],
    ['head-says-article', /article|blog/i.test(String(signs.headType))],
    ['article-data', signs.article],
    ['publication-time', signs.published],
    ['cards-with-prices', signs.cards >= 4 && signs.cards < 8],
    ['many-cards-with-prices', signs.cards >= 8],
    ['list-data', signs.list],
    ['products-none-of-them-this-page', signs.product === 'none' && signs.products >= 3],
  ];
  return told.filter(([, holds]) => holds).map(([sign]) => sign);
}

/** A price that is called so and stands under the heading; a filter's range is less sure. */
const ownPriceSure = 0.75;

const sum = (told: readonly Sign[], what: 'offer' | 'article' | 'list'): number =>
  told.reduce((total, sign) => total + (weights[sign][what] ?? 0), 0);

/**
 * The kind of a page and what speaks for it. A page of which a part was not read is an offer where what was read
 * says so, and otherwise 'cut': what is missing might have told.
 */
export function pageKind(signs: PageSigns, draft: Draft, auction: boolean, text = ''): Told {
  const evidence = signsOf(signs, draft, auction, text);
  const kind = kindFrom(evidence, draft, signs);
  if (kind !== 'offer') return { kind: signs.cut ? 'cut' : kind, evidence };
  if (evidence.includes('said-to-be-gone')) return { kind: 'ended', evidence };
  return { kind: auction ? 'auction' : 'offer', evidence };
}

/**
 * What tools for building pages call every page of theirs is an article, also where a price stands under its heading;
 * one that was written has the time of it, or its data.
 */
const isSmallOffer = (told: readonly Sign[], ownPrice: number): boolean =>
  ownPrice >= ownPriceSure && !told.includes('article-data') && !told.includes('publication-time');

function kindFrom(told: readonly Sign[], draft: Draft, { ownPrice }: PageSigns): Told['kind'] {
  const [offer, article, list] = [sum(told, 'offer'), sum(told, 'article'), sum(told, 'list')];
  if (told.includes('pointed-at')) return 'offer';
  if (article >= 3 && offer < 6 && !told.includes('product-data') && !isSmallOffer(told, ownPrice)) return 'article';
  // Beside a control of the page's own, cards are a carousel of others, unless the page calls itself a list.
  const controls = told.includes('buying-control') || told.includes('selling-form');
  // A price under the heading is none of the cards'; a few of them are others beside it.
  const few = list === weights['cards-with-prices'].list && ownPrice >= ownPriceSure;
  if (list >= (controls ? 6 : 3) && list > offer && !few) return 'list';
  return offer >= 1 && draft.title.length > 0 ? 'offer' : 'none';
}
