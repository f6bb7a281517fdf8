import { describe, expect, it } from 'vitest';
import { readHtml } from './page';

const page = (heading: string, body: string, title = 'Ondrasse Carryall 30, tan | Attic') =>
  `<!doctype html><html lang="en-GB"><head><title>${title}</title><meta property="og:title" content="Ondrasse Carryall 30, tan"></head>
   <body><main>${heading}<p class="price">£540</p>${body}</main></body></html>`;
const heading = '<h1>Ondrasse Carryall 30, tan</h1>';

describe('what stands in the place of a value', () => {
  it.each(['{{ product.brand }}', '%BRAND%', 'undefined', 'N/A', 'Unbranded'])('%s is no maker', async (words) => {
    expect((await readHtml(page(heading, `<dl><dt>Brand</dt><dd>${words}</dd></dl>`))).maker).toEqual([]);
  });

  it.each([
    ['Seller', 'Sign in'],
    ['Seller', 'View profile'],
    ['Location', 'All categories'],
    ['Location', 'Condition'],
  ])('under "%s", "%s" is a word of a menu', async (label, words) => {
    const { seller } = await readHtml(page(heading, `<p>${label}</p><p>${words}</p>`));
    expect([seller.name, seller.place]).toEqual([[], []]);
    const named = await readHtml(page(heading, `<dl><dt>Seller</dt><dd>moth_and_lamp</dd></dl>`));
    expect(named.seller.name[0]?.value).toBe('moth_and_lamp');
  });
});

describe('words at the start of a heading that nobody sees', () => {
  it('are kept where the tab’s title is short: what it leaves out may be half of the name', async () => {
    const short = page('<h1>Tessaro Vell Carryall</h1>', '', 'Carryall').replace(/<meta[^>]*>/, '');
    expect((await readHtml(short)).title[0]?.value).toBe('Tessaro Vell Carryall');
  });

  it('are left out where all other names of the page are its end', async () => {
    const { title } = await readHtml(
      page('<h1><span class="g-hdn">Details about  </span>Ondrasse Carryall 30, tan</h1>', ''),
    );
    expect(title[0]).toMatchObject({
      value: 'Ondrasse Carryall 30, tan',
      words: 'Details about Ondrasse Carryall 30, tan',
    });
  });

  it('stay where another name of the page has them too', async () => {
    const whole = 'Rare Ondrasse Carryall 30, tan';
    const { title } = await readHtml(page(`<h1>${whole}</h1>`, '', `${whole} | Attic`));
    expect(title[0]?.value).toBe(whole);
  });
});
