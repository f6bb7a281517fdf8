import { describe, expect, it } from 'vitest';
import { lookBySource } from '../../../src/listing/page/look-by-source';
import { Slices, usualBudget } from '../../../src/listing/page/slices';
import { takeSnapshot } from '../../../src/listing/page/snapshot';
import { visibleText, type Wanted } from '../../../src/listing/page/visible-text';
import { documentOf } from './page';

const taken = async (html: string, options: Partial<Parameters<typeof takeSnapshot>[1]> = {}, nodes = 60_000) => {
  const document = documentOf(html);
  const slices = new Slices({ ...usualBudget, nodes }, undefined, () => 0);
  const base = 'https://attic-arcade.example/item/1';
  const snapshot = await takeSnapshot(document, {
    look: lookBySource(document),
    budget: usualBudget,
    slices,
    base,
    ...options,
  });
  return { snapshot, slices };
};
const text = async (html: string, wanted?: Wanted, options?: Parameters<typeof taken>[1]) =>
  visibleText((await taken(html, options)).snapshot, 0, wanted);

describe('the text of a page as a reader sees it', () => {
  it.each<[string, string, string]>([
    ['blocks on their own lines', '<p>a</p><p>b</p>', 'a\n\nb'],
    ['a break', 'a<br>b', 'a\nb'],
    ['words of one line', '<i>a</i> <b>b</b>', 'a b'],
    ['words that run together in letters', '<i>a</i><b>b</b>', 'ab'],
    ['words that would run together', '<i>Brand</i><b>Ondrasse</b>', 'Brand Ondrasse'],
    ['a bracket behind a word', '<i>Bags</i><b>(2)</b>', 'Bags (2)'],
    ['a number behind a word', '<i>Size</i><b>30</b>', 'Size 30'],
    ['a number behind one letter', '<i>A</i><b>30</b>', 'A30'],
    ['raised cents', '<i>£12</i><sup>99</sup>', '£12.99'],
    ['a raised number that is none', '<i>£12</i><sup>1</sup>', '£12 1'],
    ['raised digits of three', '<i>12</i><sup>999</sup>', '12999'],
    ['two digits beside a sum are its cents', '<i>£12</i><b>99</b>', '£1299'],
    ['one digit beside a sum is not', '<i>£12</i><b>9</b>', '£12 9'],
    ['three digits beside a sum are not', '<i>£12</i><b>999</b>', '£12 999'],
    ['cells of a row', '<table><tr><td>a</td><td>b</td></tr></table>', 'a\tb'],
    ['blanks as one', 'a  \n\t b', 'a b'],
    ['kept lines', '<pre>a\nb</pre>', 'a\nb'],
    ['kept lines by a rule', '<p style="white-space:pre-line">a\nb</p>', 'a\nb'],
    ['a tag of no text', 'a<script>x</script><style>y</style><template>z</template>b', 'ab'],
    ['text for readers without scripts', 'a<noscript>x</noscript>b', 'ab'],
  ])('has %s', async (_, html, wanted) => {
    expect((await text(html)).replace(/\n+/g, '\n')).toBe(wanted.replace(/\n+/g, '\n'));
  });

  it.each<[string, string, boolean]>([
    ['the attribute', '<p hidden>x</p>', false],
    ['no display', '<p style="display:none">x</p>', false],
    ['no display, in blanks', '<p style="display : none">x</p>', false],
    ['another display', '<p style="display:flex">x</p>', true],
    ['no visibility', '<p style="visibility:hidden">x</p>', false],
    ['no opacity', '<p style="opacity:0">x</p>', false],
    ['no opacity to a place', '<p style="opacity:0.0">x</p>', false],
    ['some opacity', '<p style="opacity:0.5">x</p>', true],
    ['another name', '<p style="backface-visibility:hidden">x</p>', true],
    ['no height and nothing over it', '<p style="height:0;overflow:hidden">x</p>', false],
    ['no width and nothing over it', '<p style="overflow:clip;width:0px">x</p>', false],
    ['no height alone', '<p style="height:0">x</p>', true],
    ['a height', '<p style="height:08px;overflow:hidden">x</p>', true],
    ['no size of letters', '<p style="font-size:0">x</p>', false],
    ['a size of letters', '<p style="font-size:0.9em">x</p>', true],
    ['letters far out', '<p style="text-indent:-9999px">x</p>', false],
    ['letters a little out', '<p style="text-indent:-20px">x</p>', true],
    ['a closed dialog', '<dialog>x</dialog>', false],
    ['an open dialog', '<dialog open>x</dialog>', true],
    ['what is hidden in an element', '<p hidden><b>x</b></p>', false],
  ])('is shown or not by %s', async (_, html, shown) => {
    expect(await text(html)).toBe(shown ? 'x' : '');
  });

  it.each([
    ['a name for it', '<p class="sr-only">x</p>'],
    ['another name', '<p class="a visually-hidden">x</p>'],
    ['a place off the page', '<p style="position:absolute;left:-9999px">x</p>'],
    ['a cut to nothing', '<p style="clip:rect(0 0 0 0)">x</p>'],
    ['a path of half', '<p style="clip-path:inset(50%)">x</p>'],
  ])('is for screen readers by %s', async (_, html) => {
    expect([await text(html), await text(html, { assistive: true })]).toEqual(['', 'x']);
  });

  it.each([
    ['a tag', '<p>y <s>x</s></p>'],
    ['another tag', '<p>y <del>x</del></p>'],
    ['a line through', '<p>y <i style="text-decoration: line-through">x</i></p>'],
    ['a line through what holds it', '<p>y <i style="text-decoration:line-through"><b>x</b></i></p>'],
  ])('is struck by %s', async (_, html) => {
    expect([await text(html), await text(html, { struck: true })]).toEqual(['y', 'y x']);
  });

  it('ends where enough was read', async () => {
    expect(await text('<p>abc</p><p>def</p><p>ghi</p>', { most: 3 })).toBe('abc\n\ndef');
    expect(await text('<p>abc</p><p>def</p><p>ghi</p>', { most: 2 })).toBe('abc');
  });

  it('leaves out what lies outside', async () => {
    const { snapshot } = await taken('<p>a</p><p>b</p>');
    const outside = Uint8Array.from(snapshot.elements, ({ pieces: [from, to] }) =>
      snapshot.pieces.slice(from, to).some((one) => one.text === 'a') && to - from < 4 ? 1 : 0,
    );
    expect(visibleText(snapshot, 0, { outside })).toBe('b');
    expect(visibleText(snapshot, 999)).toBe('');
  });
});

describe('the elements of a page', () => {
  it('are told whole: where each begins, ends and stands', async () => {
    const { snapshot } = await taken('<html><body><div><p hidden><s>a</s></p></div><p>b</p></body></html>');
    expect(
      snapshot.elements.map(({ tag, parent, end, shown, struck }) => [tag, parent, end, shown, struck].join(' ')),
    ).toEqual([
      'html -1 6 shown false',
      'body 0 6 shown false',
      'div 1 5 shown false',
      'p 2 5 hidden false',
      's 3 5 hidden true',
      'p 1 6 shown false',
    ]);
    expect(snapshot.elements.map(({ depth }) => depth)).toEqual([1, 2, 3, 4, 5, 3]);
    expect(snapshot.unreadFrames).toEqual([]);
  });

  it('are no remarks', async () => {
    const { snapshot } = await taken('<html><body><p>a<!-- x -->b</p></body></html>');
    expect(snapshot.elements.map(({ tag }) => tag)).toEqual(['html', 'body', 'p']);
    expect(visibleText(snapshot, 0)).toBe('ab');
  });

  it('are as many as the budget has, each with its end', async () => {
    const many = `<html><body>${'<i>a</i>'.repeat(50)}</body></html>`;
    const { snapshot, slices } = await taken(many, {}, 20);
    // Two elements around them, and a text in each.
    expect(snapshot.elements).toHaveLength(2 + 9);
    expect(snapshot.elements.every(({ end }) => end > 0)).toBe(true);
    expect(slices.skipped.nodes).toBe(1);
  });

  it('are followed as deep as the budget goes', async () => {
    const deep = `<html><body>${'<b>'.repeat(6)}x${'</b>'.repeat(6)}</body></html>`;
    const { snapshot } = await taken(deep, { budget: { ...usualBudget, depth: 4 } });
    expect(snapshot.elements.map(({ tag }) => tag)).toEqual(['html', 'body', 'b', 'b']);
  });

  it('show the words of a frame that were read elsewhere, and tell of one that was not', async () => {
    const frame = '<div class="description"><iframe src="/words"></iframe></div><iframe src="/advert"></iframe>';
    const address = 'https://attic-arcade.example/words';
    const { snapshot } = await taken(frame);
    expect(snapshot.unreadFrames.map((one) => one.address)).toEqual([address, 'https://attic-arcade.example/advert']);
    expect(await text(frame, {}, { frameTexts: { [address]: 'Made in Belgium' } })).toBe('Made in Belgium');
  });
});
