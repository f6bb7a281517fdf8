import { describe, expect, it } from 'vitest';
import { emptyDraft } from '../../../src/listing/draft';
import { findSeenPrices, proposeSeenPrices } from '../../../src/listing/visible/price';
import { gathered, slices } from './gathered';
import { hints } from './page';

const seen = async (html: string, language = 'en') => {
  const page = await gathered(`<html lang="${language}"><body>${html}</body></html>`);
  return findSeenPrices(page.snapshot, page.area, { ...hints, language }, slices());
};
/** Each as "kind sum currency, confidence" and whether it stands alone. */
const told = async (html: string) =>
  (await seen(html)).map(
    ({ price: { kind, minor, currency }, confidence, alone }) =>
      `${kind} ${minor / 100} ${currency}, ${Number(confidence.toFixed(2))}${alone ? ' alone' : ''}`,
  );
const heading = '<h1>Ondrasse Carryall</h1>';
/** Behind what is asked for, so that the part of the page that holds all is no short one. */
const more = `<p>${'Its handles are short, its lining is of twill. '.repeat(3)}</p>`;
const prose = (count: number) => `<p>${'The strap is long. '.repeat(3)}</p>`.repeat(count);

describe('how likely a price is that of the piece', () => {
  it.each([
    // 0.45, and 0.14 near the heading.
    ['near the heading', `${heading}<p>£54</p>`, 0.59],
    ['59 pieces of text behind it', `${heading}${'<i>a</i>'.repeat(56)}<p>£54</p>`, 0.59],
    ['further away', `${heading}${prose(30)}<p>£54</p>`, 0.52],
    ['far away', `${heading}${prose(120)}<p>£54</p>`, 0.45],
    ['without a heading', '<p>£54</p>', 0.47],
    [
      'in a long line',
      `${heading}<p>The bag hung in a window by the sea with a little tag that says £54 on it</p>`,
      0.41,
    ],
    ['in a line of sixty', `${heading}<p>${'a'.repeat(56)} £54</p>`, 0.59],
    ['in a line of sixty-one', `${heading}<p>${'a'.repeat(57)} £54</p>`, 0.41],
    ['behind a label', `${heading}<p>Price: £54</p>`, 0.71],
    ['under a label', `${heading}<div><p>Price</p><p>£54</p></div>`, 0.71],
    ['under another word', `${heading}<div><p>Weight</p><p>£54</p></div>`, 0.59],
    ['without a sign', `${heading}<p>Price: 54.00</p>`, 0.51],
    ['in an element that is called a price', `${heading}<p class="price">£54</p>`, 0.79],
    ['in one so called, without a sign', `${heading}<p class="price">54.00</p>`, 0.79],
    ['with a label in it', `${heading}<p class="price">Price: £54</p>`, 0.8],
    ['in an element that holds one so called', `${heading}<p>Here <b class="price">£54</b></p>`, 0.79],
    ['in an element that is called otherwise', `${heading}<p class="old">£54</p>`, 0.44],
    ['in the price of something else', `${heading}<p class="shipping-price">£54</p>`, 0.44],
    ['two levels in', `${heading}<div class="price"><div><b>£54</b></div></div>`, 0.79],
    ['from a sum on', `${heading}<p>from £54</p>`, 0.49],
    ['within a range', `${heading}<p>£54 - £60</p>`, 0.49],
    ['for the shipping', `${heading}<p>Shipping £54</p>`, 0.39],
    ['without tax', `${heading}<p>£54 excl. VAT</p>`, 0.39],
  ])('%s', async (_, html, confidence) => {
    const [best] = await seen(`<main>${html}${more}</main>`);
    expect(best?.price.minor).toBe(5400);
    expect(best?.confidence).toBeCloseTo(confidence, 6);
  });

  it('is told by the likeliest first, the earlier of equals', async () => {
    expect(await told(`<main>${heading}<p>£1</p><p>£2</p><p class="price">£3</p>${more}</main>`)).toEqual([
      'sale 3 GBP, 0.79 alone',
      'sale 1 GBP, 0.59 alone',
      'sale 2 GBP, 0.59 alone',
    ]);
  });

  it('stands alone on its line but for so many characters, or where it is called so', async () => {
    const alone = async (html: string) => (await seen(`<main>${heading}${html}</main>`))[0]?.alone;
    expect(await alone(`<p>${'a'.repeat(29)} £54</p>`)).toBe(true);
    expect(await alone(`<p>${'a'.repeat(30)} £54</p>`)).toBe(false);
    expect(await alone(`<p class="price">${'a'.repeat(30)} £54</p>`)).toBe(true);
  });
});

describe('prices that are seen', () => {
  it.each([
    ['in one line', '<p>£54 or £60</p>', ['sale 54', 'sale 60']],
    ['struck through: from before', '<p><s>£90</s> £54</p>', ['sale 54', 'was 90']],
    [
      'of a copy for screen readers in place of split digits',
      '<p class="price"><span class="sr-only">£54.50</span><span aria-hidden="true">54<sup>50</sup></span></p>',
      ['sale 54.5'],
    ],
    ['with raised cents', '<p class="price">£54<sup>50</sup></p>', ['sale 54.5']],
    ['in pieces on lines of their own', '<div class="price"><div>£</div><div>54</div></div>', ['sale 54']],
    ['and not those that are hidden', '<p hidden>£60</p><p>£54</p>', ['sale 54']],
    ['and not those of other pieces', '<p>£54</p><div class="related"><p>£60</p></div>', ['sale 54']],
    ['and no numbers without a sign in prose', '<p>I paid 54.00 for this bag in a shop by the sea</p>', []],
    ['and nothing without a digit', '<p class="price">on request</p>', []],
  ])('%s', async (_, html, wanted) => {
    expect(
      (await seen(`<main>${heading}${html}</main>`)).map(({ price: { kind, minor } }) => `${kind} ${minor / 100}`),
    ).toEqual(wanted);
  });

  it('are from before where an element inside a price is called so and another is the price', async () => {
    const box = (inner: string) => told(`<main>${heading}<div class="price-box">${inner}</div></main>`);
    expect(await box('<span class="old-price">£90</span><span class="now">£54</span>')).toEqual([
      'sale 54 GBP, 0.79 alone',
      'was 90 GBP, 0.59 alone',
    ]);
    // The only price is the price, whatever it is called.
    expect((await box('<span class="old-price">£90</span>')).map((one) => one.split(',')[0])).toEqual(['sale 90 GBP']);
  });

  it('are proposed up to eight of them, and no zero', async () => {
    const draft = emptyDraft();
    const all = await seen(
      `<main>${heading}${[0, 1, 2, 3, 4, 5, 6, 7, 8, 9].map((sum) => `<p>£${sum}</p>`).join('')}</main>`,
    );
    proposeSeenPrices(all, draft);
    expect(draft.price.map(({ value }) => value.minor)).toEqual([100, 200, 300, 400, 500, 600, 700, 800]);
    expect(draft.price[0]).toMatchObject({ origin: 'visible', confidence: 0.59, words: '£1' });
    expect(draft.price[0]?.where).toContain('p');
  });
});
