import { describe, expect, it } from 'vitest';
import { findPairs } from '../../../src/listing/visible/pairs';
import { gatheredOf, slices } from './gathered';

const pairs = async (html: string) => {
  const { snapshot, area } = await gatheredOf(html);
  return findPairs(snapshot, area.outside, slices());
};
const told = async (html: string) => (await pairs(html)).map(({ name, value }) => `${name} = ${value}`);

describe('names and values that a page sets side by side', () => {
  it('are told whole', async () => {
    const [pair, ...others] = await pairs('<dl id="facts"><dt>Brand</dt><dd>Ondrasse</dd></dl>');
    expect(pair).toEqual({
      name: 'Brand',
      value: 'Ondrasse',
      origin: 'visible',
      where: expect.stringContaining('dd'),
      confidence: 0.65,
    });
    expect(others).toEqual([]);
  });

  it.each<[string, string, string[]]>([
    ['a list of terms', '<dl><dt>A</dt><dd>1a</dd><dt>B</dt><dd>2b</dd></dl>', ['A = 1a', 'B = 2b']],
    ['a term without a value', '<dl><dt>A</dt><dt>B</dt><dd>2b</dd></dl>', ['B = 2b']],
    ['a table', '<table><tr><th>A</th><td>1a</td></tr></table>', ['A = 1a']],
    ['a row of cells', '<table><tr><td>A</td><td>1a</td></tr></table>', ['A = 1a']],
    ['a row of two elements', '<div><span>A</span><span>1a</span></div>', ['A = 1a', ' = A\n1a']],
    ['tags of a list', '<ul><li>Ondrasse</li><li>Black</li><li>Good</li></ul>', [' = Ondrasse\nBlack\nGood']],
    ['tags of two kinds', '<div><a>Ondrasse</a><b>Black</b></div>', []],
    ['a tag that is a sentence', '<ul><li>Ondrasse</li><li>Would you like one?</li></ul>', []],
    ['a row of four', '<div><b>A</b><i>1a</i><i>x</i><i>y</i></div>', ['A = 1a']],
    ['a row of five', '<div><b>A</b><i>1a</i><i>x</i><i>y</i><i>z</i></div>', []],
    ['a row of five under a heading', '<div><h3>A</h3><i>1a</i><i>x</i><i>y</i><i>z</i></div>', ['A = 1a']],
    ['a row that no name begins', '<div><i>A</i><i>1a</i></div>', []],
    ['words before their only element', '<p>A <b>1a</b></p>', ['A = 1a']],
    ['a line with a colon', '<p>Brand: Ondrasse</p>', ['Brand = Ondrasse']],
    ['a field before a dash', '<p><b>Condition</b> – Good</p>', ['Condition = Good']],
    ['the same with a hyphen', '<li><strong>Größe</strong> - 30 cm</li>', ['Größe = 30 cm']],
    ['a dash in prose', '<p>A fine bag – hardly used</p>', []],
    ['a dash behind words and one of them', '<p>The <b>bag</b> – hardly used</p>', ['The = bag']],
    ['no dash behind it', '<p><b>Condition</b> of the bag</p>', []],
    ['a dash without a blank', '<p><b>Colour</b>-fast</p>', []],
    ['lines with colons', '<p>A: 1a<br>B: 2b</p>', ['A = 1a', 'B = 2b']],
    ['a number is no name', '<dl><dt>1.5</dt><dd>1a</dd></dl>', []],
    ['nothing is no value', '<dl><dt>A</dt><dd></dd></dl>', []],
    ['a name of sixty', `<dl><dt>${'a'.repeat(60)}</dt><dd>1a</dd></dl>`, [`${'a'.repeat(60)} = 1a`]],
    ['a name of sixty-one', `<dl><dt>${'a'.repeat(61)}</dt><dd>1a</dd></dl>`, []],
    ['a value of six hundred', `<dl><dt>A</dt><dd>${'b'.repeat(600)}</dd></dl>`, [`A = ${'b'.repeat(600)}`]],
    ['a value of more', `<dl><dt>A</dt><dd>${'b'.repeat(601)}</dd></dl>`, []],
    ['a name on two lines', '<dl><dt>A<br>B</dt><dd>1a</dd></dl>', []],
    ['a name of forty in a row', `<div><b>${'a'.repeat(40)}</b><i>1a</i></div>`, [`${'a'.repeat(40)} = 1a`]],
    ['a name of forty-one in a row', `<div><b>${'a'.repeat(41)}</b><i>1a</i></div>`, []],
    ['a cry is no name', '<div><b>Buy now!</b><i>1a</i></div>', []],
    ['a question is no name', '<div><b>Questions?</b><i>1a</i></div>', []],
    ['a sentence is no name', '<div><b>This is all there is.</b><i>1a</i></div>', []],
    ['a short form is a name', '<div><b>No.</b><i>1a</i></div>', ['No. = 1a']],
    ['the same twice', '<p>A: 1a</p><p>A: 1a</p><p>A: 2b</p>', ['A = 1a', 'A = 2b']],
    ['hidden ones', '<dl hidden><dt>A</dt><dd>1a</dd></dl>', []],
    ['a hidden value', '<div><b>A</b><i hidden>x</i><i>1a</i></div>', ['A = 1a']],
    ['those of other pieces', '<div class="related"><p>A: 1a</p></div>', []],
  ])('%s', async (_, html, wanted) => {
    expect(await told(html)).toEqual(wanted);
  });

  it('are three hundred at most', async () => {
    const rows = Array.from({ length: 305 }, (_, at) => `<dt>A${at}</dt><dd>b</dd>`).join('');
    expect(await pairs(`<dl>${rows}</dl>`)).toHaveLength(300);
  });

  it.each<[string, string, string[]]>([
    ['/user/moth', 'moth_and_lamp', ['seller = moth_and_lamp']],
    ['/user/moth', 'moth_and_lamp<br>12 sales', ['seller = moth_and_lamp']],
    ['/mitglied/moth/', 'moth', ['seller = moth']],
    ['/user/moth?tab=1', 'moth', ['seller = moth']],
    ['/user/moth/reviews', 'moth', []],
    ['/user/m', 'moth', []],
    ['/users', 'moth', []],
    ['/item/moth', 'moth', []],
    ['/user/moth', 'm', []],
    ['/user/moth', 'mo', ['seller = mo']],
    ['/user/moth', 'm'.repeat(40), [`seller = ${'m'.repeat(40)}`]],
    ['/user/moth', 'm'.repeat(41), []],
  ])('a link to a member’s page names the seller: %s, %s', async (address, words, wanted) => {
    expect(await told(`<a href="${address}">${words}</a>`)).toEqual(wanted);
  });
});
