import { describe, expect, it } from 'vitest';
import { findCards } from '../../../src/listing/page/cards';
import { bag, gathered, gatheredOf, slices } from './gathered';

describe('cards of other pieces', () => {
  const cards = async (body: string) => {
    const page = await gatheredOf(body);
    const { roots, priced } = await findCards(page.snapshot, page.area.heading, page.otherPage, slices());
    return `${roots.map((at) => page.snapshot.elements[at]?.tag).join(' ')} ${priced}`.trim();
  };
  const card = (at: number, inner = '£54', tag = 'li') =>
    `<${tag}><a href="/item/${at}">Bag ${at}</a> ${inner}</${tag}>`;
  const three = (inner?: string, tag?: string) => [1, 2, 3].map((at) => card(at, inner, tag)).join('');

  it.each([
    ['three with prices', `<ul>${three()}</ul>`, 'li li li 3'],
    ['two are none', `<ul>${card(1)}${card(2)}</ul>`, '0'],
    ['three with pictures', `<ul>${three('<img src="/a.jpg">')}</ul>`, 'li li li 0'],
    ['three with neither', `<ul>${three('tan')}</ul>`, '0'],
    ['a price behind its sum', `<ul>${three('54 EUR')}</ul>`, 'li li li 3'],
    ['a price in yen', `<ul>${three('5400円')}</ul>`, 'li li li 3'],
    ['links alone', '<div><a href="/item/1">£1</a><a href="/item/2">£2</a><a href="/item/3">£3</a></div>', 'a a a 3'],
    ['two of a kind and one of another', `<div>${card(1)}${card(2)}${card(3, '£54', 'p')}</div>`, '0'],
    ['three of each of two kinds', `<div>${three()}${three('£54', 'p')}</div>`, 'li li li p p p 6'],
    ['links to pictures', '<div><a href="/1.jpg">£1</a><a href="/2.jpg">£2</a><a href="/3.jpg?x">£3</a></div>', '0'],
    ['links within the page', '<div><a href="#1">£1</a><a href="#2">£2</a><a href="#3">£3</a></div>', '0'],
    ['hidden ones', `<ul hidden>${three()}</ul>`, '0'],
    [
      'two links in one card',
      `<ul>${[1, 2, 3].map((at) => card(at, '<a href="/x">x</a> £5')).join('')}</ul>`,
      'li li li 3',
    ],
    [
      'a card five levels around its link',
      `<ul>${[1, 2, 3].map((at) => `<li>£5<i><b><u><s><a href="/item/${at}">x</a></s></u></b></i></li>`).join('')}</ul>`,
      'li li li 3',
    ],
    [
      'none six levels around it',
      `<ul>${[1, 2, 3].map((at) => `<li>£5<i><b><u><s><em><a href="/item/${at}">x</a></em></s></u></b></i></li>`).join('')}</ul>`,
      '0',
    ],
  ])('%s', async (_, body, wanted) => {
    expect(await cards(body)).toBe(wanted);
  });

  it('hold no heading of the piece', async () => {
    const page = await gathered(
      `<div><div><a href="/item/1">x</a> £1 ${bag}</div>${card(2, '£2', 'div')}${card(3, '£3', 'div')}</div>`,
    );
    const { roots } = await findCards(page.snapshot, page.area.heading, page.otherPage, slices());
    expect(roots).toEqual([]);
  });
});
