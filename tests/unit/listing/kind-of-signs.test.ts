import { describe, expect, it } from 'vitest';
import { emptyDraft } from '../../../src/listing/draft';
import type { PageSigns } from '../../../src/listing/extract-types';
import { pageKind } from '../../../src/listing/page-kind';

const none: PageSigns = {
  pointed: false,
  product: 'none',
  offered: false,
  products: 0,
  cards: 0,
  ownPrice: 0,
  priceWithoutWords: false,
  headType: null,
  published: false,
  article: false,
  list: false,
  controls: [],
  sells: false,
  cut: false,
};
type Gone = { sold: true };
/** Each sign as a page gives it, in the order in which evidence is told. */
const signs: [string, Partial<PageSigns> | 'auction' | Gone][] = [
  ['pointed-at', { pointed: true }],
  ['product-data', { product: 'clear', offered: true }],
  ['product-data-without-offer', { product: 'unclear' }],
  ['head-says-product', { headType: 'og:product' }],
  ['buying-control', { controls: ['Add to cart'] }],
  ['selling-form', { sells: true }],
  ['price-in-its-place', { ownPrice: 0.6 }],
  ['price-alone', { ownPrice: 0.45 }],
  ['place-for-a-price', { priceWithoutWords: true }],
  ['auction-amounts', 'auction'],
  ['said-to-be-gone', { sold: true }],
  ['head-says-article', { headType: 'blog' }],
  ['article-data', { article: true }],
  ['publication-time', { published: true }],
  ['cards-with-prices', { cards: 4 }],
  ['many-cards-with-prices', { cards: 8 }],
  ['list-data', { list: true }],
  ['products-none-of-them-this-page', { products: 3 }],
];
const letters = { offer: 'o', auction: 'a', ended: 'e', list: 'L', article: 'A', cut: 'c', none: '.' };

function told(names: readonly string[], more: Partial<PageSigns> = {}, titled = true) {
  const given = signs.filter(([name]) => names.includes(name)).map(([, sign]) => sign);
  const draft = emptyDraft();
  if (titled) draft.title.push({ value: 'Bag', origin: 'visible', where: 'h1', confidence: 0.8 });
  const gone = given.some((sign) => typeof sign === 'object' && 'sold' in sign);
  if (gone) draft.availability.push({ value: 'sold', origin: 'visible', where: 'text', confidence: 0.8 });
  const page = given.filter((sign): sign is Partial<PageSigns> => typeof sign === 'object' && !('sold' in sign));
  return pageKind(Object.assign({}, none, ...page, more), draft, given.includes('auction'));
}
const kinds = (beside: readonly string[]): string[] =>
  signs.map(([row]) => signs.map(([column]) => letters[told([row, column, ...beside]).kind]).join(''));

describe('the kind of a page', () => {
  it.each(signs.map(([name]) => name))('is told by %s among what speaks for it', (name) => {
    expect(told([name]).evidence).toEqual([name]);
  });

  // Rows and columns are the signs in their order, two at a time: o offer, a auction, e ended, L list, A article, . none.
  it.each<[string, string[], string]>([
    [
      'two signs',
      [],
      `
      oooooooooaeooooooo
      oooooooooaeooooooo
      oooooooooaeAAoLLoo
      oooooooooaeAAooLoL
      oooooooooaeAAooooo
      oooooooooaeAAooooo
      oooooooooaeAAoLLoL
      oooooooooaeAAoLLoL
      oooooooooaeAAoLLoL
      aaaaaaaaaaeAAaaLaL
      eeeeeeeeeeeAAeLLeL
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      oooooooooaeAA.LL.L
      ooLoooLLLaLAALLLLL
      ooLLooLLLLLAALLLLL
      oooooooooaeAA.LL.L
      oooLooLLLLLAALLLLL`,
    ],
    [
      'two signs beside products of which none is this page',
      ['products-none-of-them-this-page'],
      `
      oooooooooaeooooooo
      oooooooooaeooooooo
      oooooooooaeAAoLLoo
      oooLoooooaeAALLLLL
      oooooooooaeAAoLLLo
      oooooooooaeAAoLLLo
      ooooooLLoaLAALLLLL
      ooooooLLLaLAALLLLL
      oooooooLLaLAALLLLL
      aaaaaaaaaLeAALLLLL
      eeeeeeLLLeLAALLLLL
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      oooLooLLLLLAALLLLL
      ooLLLLLLLLLAALLLLL
      ooLLLLLLLLLAALLLLL
      oooLLLLLLLLAALLLLL
      oooLooLLLLLAALLLLL`,
    ],
    [
      'two signs on a page of many cards that calls itself a list',
      ['many-cards-with-prices', 'list-data'],
      `
      oooooooooaeooooooo
      oLLooooLoaLLLLLLLL
      oLLLLLLLLLLAALLLLL
      ooLLoLLLLaLAALLLLL
      ooLoLLLLLaLAALLLLL
      ooLLLLLLLLLAALLLLL
      ooLLLLLLLLLAALLLLL
      oLLLLLLLLLLAALLLLL
      ooLLLLLLLLLAALLLLL
      aaLaaLLLLLLAALLLLL
      eLLLLLLLLLLAALLLLL
      oLAAAAAAAAAAAAAAAA
      oLAAAAAAAAAAAAAAAA
      oLLLLLLLLLLAALLLLL
      oLLLLLLLLLLAALLLLL
      oLLLLLLLLLLAALLLLL
      oLLLLLLLLLLAALLLLL
      oLLLLLLLLLLAALLLLL`,
    ],
    [
      'the same beside a control',
      ['many-cards-with-prices', 'list-data', 'buying-control'],
      `
      oooooooooaeooooooo
      ooLooooooaeooooooo
      oLLoLooooaeAALLLLL
      oooooooooaeAoooooL
      ooLoLLLLLaLAALLLLL
      ooooLLoooaeAALLLLL
      ooooLoLLoaeAALLLLL
      ooooLoLLoaLAALLLLL
      ooooLoooLaeAALLLLL
      aaaaaaaaaaeaaaaaaL
      eeeeLeeLeeLAALLLLL
      ooAAAAAAAaAAAAAAAA
      ooAoAAAAAaAAAAAAAA
      ooLoLLLLLaLAALLLLL
      ooLoLLLLLaLAALLLLL
      ooLoLLLLLaLAALLLLL
      ooLoLLLLLaLAALLLLL
      ooLLLLLLLLLAALLLLL`,
    ],
    [
      'two signs on a page that calls itself an article',
      ['head-says-article'],
      `
      oooooooooaeooooooo
      ooAooooooaeooooooo
      oAAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAaAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      aaAAaAAAAAAAAAAAAA
      eeAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA
      ooAAAAAAAAAAAAAAAA`,
    ],
    [
      'two signs on an article with a price and a control',
      ['article-data', 'price-in-its-place', 'buying-control'],
      `
      oooooooooaeooooooo
      oooooooooaeooooooo
      oooooooooaeooooooo
      oooooooooaeAoooooo
      ooooAoAAoaeAAAAAAA
      oooooooooaeooooooo
      ooooAoAAoaeAAAAAAA
      ooooAoAAoaAAAAAAAA
      oooooooooaeooooooo
      aaaaaaaaaaeaaaaaaa
      eeeeeeeAeeeeeeeeee
      oooAAoAAoaeAAAAAAA
      ooooAoAAoaeAAAAAAA
      ooooAoAAoaeAAAAAAA
      ooooAoAAoaeAAAAAAA
      ooooAoAAoaeAAAAAAA
      ooooAoAAoaeAAAAAAA
      ooooAoAAoaeAAAAAAA`,
    ],
  ])('of %s', (_what, beside, wanted) => {
    expect(kinds(beside)).toEqual(wanted.trim().split(/\s+/));
  });

  it.each<[string, Partial<PageSigns>, string[]]>([
    ['a price at four tenths and a half', { ownPrice: 0.45 }, ['price-alone']],
    ['a price below', { ownPrice: 0.449 }, []],
    ['a price below six tenths', { ownPrice: 0.599 }, ['price-alone']],
    ['three cards', { cards: 3 }, []],
    ['seven cards', { cards: 7 }, ['cards-with-prices']],
    ['two products', { products: 2 }, []],
    ['three products of which one is clear', { products: 3, product: 'clear' }, ['product-data-without-offer']],
    ['an unclear product with an offer', { product: 'unclear', offered: true }, ['product-data-without-offer']],
    ['no product with an offer', { offered: true }, []],
    ['a head that says nothing of it', { headType: 'website' }, []],
    ['a head that says article', { headType: 'Article' }, ['head-says-article']],
  ])('weighs %s', (_what, more, evidence) => {
    expect(told([], more).evidence).toEqual(evidence);
  });

  it('is cut where a part was not read, unless what was read says that a piece is offered', () => {
    expect(told([], { cut: true }).kind).toBe('cut');
    expect(told(['list-data', 'many-cards-with-prices'], { cut: true }).kind).toBe('cut');
    expect(told(['product-data'], { cut: true }).kind).toBe('offer');
  });

  it('is none without a title, and gone only where that is nearly certain', () => {
    expect(told(['product-data'], {}, false).kind).toBe('none');
    expect(told(['pointed-at'], {}, false).kind).toBe('offer');
    const of = (value: 'sold' | 'removed' | 'reserved' | 'offered', confidence: number) => {
      const draft = emptyDraft();
      draft.availability.push({ value, origin: 'visible', where: 'text', confidence });
      return pageKind(none, draft, false).evidence;
    };
    expect(of('sold', 0.8)).toEqual(['said-to-be-gone']);
    expect(of('removed', 0.8)).toEqual(['said-to-be-gone']);
    expect(of('sold', 0.79)).toEqual([]);
    expect(of('reserved', 1)).toEqual([]);
    expect(of('offered', 1)).toEqual([]);
  });
});
