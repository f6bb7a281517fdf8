import { describe, expect, it } from 'vitest';
import { emptyDraft } from '../../../src/listing/draft';
import { readDescriptions } from '../../../src/listing/visible/description';
import { gathered, slices } from './gathered';

const read = async (body: string, head = '') => {
  const page = await gathered(
    `<html><head>${head}</head><body><main><h1>Ondrasse Carryall</h1>${body}</main></body></html>`,
  );
  const draft = emptyDraft();
  await readDescriptions(page.snapshot, page.area, page.tags, draft, slices());
  return draft.description;
};
const told = async (body: string, head = '') =>
  (await read(body, head)).map(({ value, confidence }) => `${value.replace(/\n+/g, '\n')} ${confidence}`);
const words = 'A tan leather bag.';
const prose = 'A tan leather bag with an olive lining, carried for two summers and kept in its pouch.';

describe('a description', () => {
  it.each<[string, string, string[]]>([
    ['in an element that is so named', `<div class="description">${words}</div>`, [`${words} 0.74`]],
    ['named by its id', `<div id="item-description">${words}</div>`, [`${words} 0.74`]],
    ['named for tests', `<div data-testid="listing-description">${words}</div>`, [`${words} 0.74`]],
    ['named as a property', `<div itemprop="description">${words}</div>`, [`${words} 0.74`]],
    ['named in another language', `<div class="beschreibung">${words}</div>`, [`${words} 0.74`]],
    ['of fifteen characters', '<div class="description">Tan bag, 30 cm.</div>', ['Tan bag, 30 cm. 0.74']],
    ['of fewer is none', '<div class="description">Tan bag, 30 cm</div>', []],
    [
      'the longest of several',
      `<div class="description">${words}</div><div class="description">${words} ${words}</div><div class="description">${words}</div>`,
      [`${words} ${words} 0.74`],
    ],
    ['without its own label', `<div class="description"><p>Description</p><p>${words}</p></div>`, [`${words} 0.74`]],
    ['none that is hidden', `<div class="description" hidden>${words}</div>`, []],
    ['none of another piece', `<div class="related"><div class="description">${words}</div></div>`, []],
    ['none that holds the heading', '', []],
  ])('%s', async (_, body, wanted) => {
    expect(await told(body)).toEqual(wanted);
  });

  it.each<[string, string, string[]]>([
    ['under a heading that says so', `<h2>Description</h2><p>${words}</p>`, [`${words} 0.72`]],
    ['under a bold word', `<section><b>Description</b><p>${words}</p></section>`, [`${words} 0.72`]],
    [
      'up to the next heading of its level',
      `<h2>Description</h2><p>${words}</p><h2>Shipping</h2><p>From Ghent.</p>`,
      [`${words} 0.72`],
    ],
    [
      'up to a heading above it',
      `<h3>Description</h3><p>${words}</p><h2>Shipping</h2><p>From Ghent.</p>`,
      [`${words} 0.72`],
    ],
    [
      'beyond a heading below it',
      `<h2>Description</h2><p>${words}</p><h3>Sizes</h3><p>30 cm wide.</p>`,
      [`${words}\nSizes\n30 cm wide. 0.72`],
    ],
    [
      'two levels out',
      `<section><div><div><h2>Description</h2></div></div><p>${words}</p></section>`,
      [`${words} 0.72`],
    ],
    ['three levels out', `<section><div><div><div><h2>Description</h2></div></div></div><p>${words}</p></section>`, []],
    ['too short there', '<section><div><h2>Description</h2><p>Tan bag, 30 cm</p></div></section>', []],
    ['under another heading', `<h2>Shipping</h2><p>${words}</p>`, []],
    ['under a hidden heading', `<h2 hidden>Description</h2><p>${words}</p>`, []],
  ])('%s', async (_, body, wanted) => {
    expect(await told(body)).toEqual(wanted);
  });

  it('is where it stands', async () => {
    const [named] = await read(`<div class="description">${words}</div>`);
    expect(named).toMatchObject({ origin: 'visible', where: expect.stringContaining('div') });
    const [under] = await read(`<h2>Description</h2><p>${words}</p>`);
    expect(under).toMatchObject({ origin: 'visible', where: expect.stringMatching(/^after .*h2/) });
  });

  it('both named and under a heading is told as both where they differ', async () => {
    const both = `<div class="description">${words}</div><h2>Description</h2><p>${prose}</p>`;
    expect(await told(both)).toEqual([`${words} 0.74`, `${prose} 0.72`]);
  });

  it.each<[string, string, string[]]>([
    ['the longest run of prose', `<div><p>${prose}</p></div>`, [`${prose} 0.55`]],
    ['of neighbouring paragraphs', `<div><p>${prose}</p><p>${words}</p></div>`, [`${prose}\n${words} 0.55`]],
    ['cut at a line that is no sentence', `<div><p>${prose}</p><p>Size M</p><p>${words}</p></div>`, [`${prose} 0.55`]],
    [
      'cut at a labelled line',
      `<div><p>${prose}</p><p>Colour: tan, as the photos show it by daylight.</p></div>`,
      [`${prose} 0.55`],
    ],
    ['of forty characters at least', `<p>${'a'.repeat(39)}.</p>`, [`${'a'.repeat(39)}. 0.55`]],
    ['of fewer is none', `<p>${'a'.repeat(38)}.</p>`, []],
    ['not in a link', `<p><a href="/x">${prose}</a></p>`, []],
    ['not in a button', `<button>${prose}</button>`, []],
    ['not of another piece', `<div class="similar"><p>${prose}</p></div>`, []],
    [
      'the longer of two places',
      `<section><p>${prose}</p></section><div><p>${prose} ${words}</p></div>`,
      [`${prose} ${words} 0.55`],
    ],
  ])('without a name is %s', async (_, body, wanted) => {
    expect(await told(body)).toEqual(wanted);
  });

  it('of the head is less sure, and that of the page beside it too', async () => {
    const head =
      '<meta property="og:description" content="Tan &amp;amp; olive."><meta name="description" content="Bags.">';
    expect(await told('', head)).toEqual(['Tan & olive. 0.5', 'Bags. 0.35']);
    expect(await told('', '<meta name="twitter:description" content="Tan.">')).toEqual(['Tan. 0.5']);
    expect(await told(`<p>${prose}</p>`, head)).toEqual([`${prose} 0.55`, 'Tan & olive. 0.5', 'Bags. 0.35']);
  });

  it('is cut at twenty thousand characters', async () => {
    const [named] = await read(`<div class="description">${'word '.repeat(5_000)}</div>`);
    expect(named?.value).toHaveLength(20_000 - 1);
    const [under] = await read(`<h2>Description</h2>${'<p>a word</p>'.repeat(4_000)}`);
    expect(under?.value.length).toBeGreaterThanOrEqual(19_990);
    expect(under?.value.length).toBeLessThanOrEqual(20_000);
  });
});
