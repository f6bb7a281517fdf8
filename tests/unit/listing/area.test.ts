import { describe, expect, it } from 'vitest';
import { findArea, titleWords, wordLikeness } from '../../../src/listing/page/area';
import { attributeText } from '../../../src/listing/page/dom';
import { bag, gathered, slices } from './gathered';

const words = '<p data-n="words">A tan leather bag with an olive lining, carried twice.</p>';

/** Names of the elements that are the listing's own, and which is its heading. */
const area = async (body: string, titles: string[] = []) => {
  const { snapshot } = await gathered(body);
  const { heading, outside } = await findArea(snapshot, titles, slices());
  const named = snapshot.elements.map(({ element }, at) => ({ name: attributeText(element, 'data-n'), at }));
  return {
    own: named.filter(({ name, at }) => name !== '' && outside[at] === 0).map(({ name }) => name),
    heading: named[heading]?.name ?? null,
  };
};
const own = async (body: string) => (await area(body)).own.join(' ');
const heading = async (body: string, ...titles: string[]) => (await area(body, titles)).heading;

describe('what lies outside of the listing', () => {
  it.each([
    ['navigation', '<nav><i data-n="x">x</i></nav>'],
    ['a footer', '<footer><i data-n="x">x</i></footer>'],
    ['the page’s header', '<header><i data-n="x">x</i></header>'],
    ...['navigation', 'contentinfo', 'search', 'dialog', 'alertdialog', 'banner', 'complementary-ad'].map((role) => [
      role,
      `<div role="${role}"><i data-n="x">x</i></div>`,
    ]),
    ...[
      'related',
      'similar-items',
      'recommend',
      'cross-sell',
      'also-like',
      'you-may',
      'recently',
      'sponsor',
      'advert',
    ].map((name) => [name, `<div class="${name}"><i data-n="x">x</i></div>`]),
    ...[
      'newsletter',
      'cookie',
      'consent',
      'breadcrumbs',
      'suggest',
      'more-from',
      'other-items',
      'trending',
      'footer',
    ].map((name) => [name, `<div id="${name}"><i data-n="x">x</i></div>`]),
    ...[
      'main-nav',
      'navbar',
      'mega-menu',
      'social-share',
      'ad-slot',
      'adsense',
      'hero-banner',
      'promo',
      'comments',
    ].map((name) => [name, `<div class="box ${name}"><i data-n="x">x</i></div>`]),
  ])('%s', async (_, html) => {
    expect(await own(`${html}<main>${bag}${words}</main>`)).toBe('bag words');
  });

  it.each([
    ['a header in the main part', `<main><header><i data-n="x">x</i></header>${bag}</main>`],
    ['a header in an article', `<article><header><i data-n="x">x</i></header>${bag}</article>`],
    ['a header in a section', `<section><div><header><i data-n="x">x</i></header></div>${bag}</section>`],
    ['a part of a word', `<main><div class="unrelated"><i data-n="x">x</i></div>${bag}</main>`],
    ['another role', `<main><div role="group"><i data-n="x">x</i></div>${bag}</main>`],
    ['the main part, however it is called', `<main class="promo"><i data-n="x">x</i>${bag}</main>`],
  ])('and not %s', async (_, html) => {
    expect(await own(html)).toBe('x bag');
  });

  it('is not what holds the heading of the piece', async () => {
    const promoted = `<div class="promo">${bag}${words}</div><div class="related"><i data-n="x">x</i></div>`;
    expect(await area(promoted, ['Ondrasse Carryall'])).toEqual({ own: ['bag', 'words'], heading: 'bag' });
  });

  it('is what stands under a heading for others: its own section, or what follows it', async () => {
    const others = '<h2>You may also like</h2><p data-n="x">x</p>';
    expect(await own(`<main>${bag}${words}<section>${others}</section></main>`)).toBe('bag words');
    expect(await own(`<main>${bag}${words}${others}</main>`)).toBe('bag words');
    expect(await own(`<main>${bag}${others}<h2>Details</h2>${words}</main>`)).toBe('bag words');
    expect(await own(`<main>${bag}${others}<h3>Details</h3>${words}</main>`)).toBe('bag');
    expect(await own(`<main>${bag}<div role="heading">Similar</div><p data-n="x">x</p></main>`)).toBe('bag');
    // A section that tells of the piece before that heading stays.
    expect(await own(`<main>${bag}<section>${words}${others}</section></main>`)).toBe('bag words');
    expect(await own(`<main>${bag}<section><p data-n="s">${'a'.repeat(39)}</p>${others}</section></main>`)).toBe('bag');
    expect(await own(`<main>${bag}<section><p data-n="s">${'a'.repeat(40)}</p>${others}</section></main>`)).toBe(
      'bag s',
    );
    expect(await own(`<main>${bag}<section><p hidden>${'a'.repeat(40)}</p>${others}</section></main>`)).toBe('bag');
  });

  it('is no heading of more than eighty characters, and none of another word', async () => {
    const under = (text: string) => own(`<main>${bag}<h2>${text}</h2><p data-n="x">x</p></main>`);
    expect(await under('similar '.padEnd(80, 'a'))).toBe('bag');
    expect(await under('similar '.padEnd(81, 'a'))).toBe('bag x');
    expect(await under('Details')).toBe('bag x');
  });
});

describe('the heading of the piece', () => {
  const h = (tag: string, text: string, name: string, more = '') => `<${tag} data-n="${name}"${more}>${text}</${tag}>`;

  it('is the first of the page, or the one that the page’s names are like', async () => {
    expect(await heading(h('h1', 'One bag', 'a') + h('h1', 'Two bags', 'b'))).toBe('a');
    expect(await heading(h('h1', 'One bag', 'a') + h('h1', 'Two purses', 'b'), 'Two purses | Attic')).toBe('b');
    expect(await heading(h('h1', 'Attic', 'a') + h('h2', 'Two purses', 'b'), 'Two purses')).toBe('b');
    expect(await heading(h('h1', 'Bag', 'a') + h('h2', 'Two old purses', 'b'), 'Two new things')).toBe('a');
  });

  it('is a second one only where the page’s names are like it, and never a third', async () => {
    expect(await heading(h('h2', 'Two purses', 'a'))).toBeNull();
    expect(await heading(h('h2', 'Two purses', 'a'), 'Purses of ours')).toBe('a');
    expect(await heading(h('h2', 'Two old purses', 'a'), 'Purses of ours')).toBeNull();
    expect(await heading(h('h3', 'Two purses', 'a'), 'Two purses')).toBeNull();
  });

  it('may be said by a role', async () => {
    expect(await heading(h('div', 'Two purses', 'a', ' role="heading" aria-level="1"'))).toBe('a');
    expect(await heading(h('div', 'Two purses', 'a', ' role="heading"'), 'Two purses')).toBe('a');
    expect(await heading(h('div', 'Two purses', 'a', ' role="heading" aria-level="3"'), 'Two purses')).toBeNull();
  });

  it('is three to four hundred characters of what is shown, and none over others', async () => {
    expect(await heading(h('h1', 'ab', 'a'))).toBeNull();
    expect(await heading(h('h1', 'abc', 'a'))).toBe('a');
    expect(await heading(h('h1', 'a'.repeat(400), 'a'))).toBe('a');
    expect(await heading(h('h1', 'a'.repeat(401), 'a'))).toBeNull();
    expect(await heading(h('h1', 'A bag', 'a', ' hidden'))).toBeNull();
    expect(await heading(h('h1', 'Similar bags', 'a'))).toBeNull();
  });

  it('is rather none in a link or outside of the listing', async () => {
    expect(await heading(`<a href="/x">${h('h1', 'One bag', 'a')}</a>${h('h1', 'Two bags', 'b')}`)).toBe('b');
    expect(await heading(`<a href="/x">${h('h1', 'One bag', 'a')}</a>`)).toBe('a');
    expect(await heading(`<nav>${h('h1', 'One bag', 'a')}</nav>${h('h1', 'Two bags', 'b')}`)).toBe('b');
    expect(await heading(`<nav>${h('h1', 'One bag', 'a')}</nav>`, 'One bag')).toBe('a');
    expect(await heading(`<nav>${h('h1', 'One bag', 'a')}</nav>`)).toBeNull();
  });
});

describe('how like two titles are', () => {
  it.each([
    ['Ondrasse Carryall', 'ondrasse carryall tan', 1],
    ['Ondrasse Carryall', 'Ondrasse Satchel', 0.5],
    ['Léonie', 'leonie', 1],
    ['bag', 'purse', 0],
    ['', 'bag', 0],
    ['…', 'bag', 0],
    ['革鞄', '革鞄', 1],
    ['茶色革鞄', '革鞄', 1],
    ['茶色革鞄', '色革財布', 1 / 3],
  ])('%s and %s: %f', (a, b, like) => {
    expect(wordLikeness(a, b)).toBeCloseTo(like, 9);
    expect(wordLikeness(b, a)).toBeCloseTo(like, 9);
  });

  it('is told by words once each, of a thousand characters', () => {
    expect([...titleWords('Bag, bag & Purse 30')]).toEqual(['bag', 'purse', '30']);
    expect([...titleWords('茶色革')]).toEqual(['茶色', '色革']);
    expect([...titleWords(`${'a'.repeat(999)} bc`)]).toEqual(['a'.repeat(999)]);
    expect([...titleWords(`${'a'.repeat(998)} bc`)]).toEqual(['a'.repeat(998), 'b']);
  });
});
