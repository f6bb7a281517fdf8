import { describe, expect, it } from 'vitest';
import { type PageOptions, readListing } from '../../../src/listing';
import { documentOf, now, pageUrl } from './page';

const heading = '<h1>Ondrasse Carryall 30</h1><p class="price">€540.00</p>';
const page = (body: string, title = 'Ondrasse Carryall 30') =>
  `<!doctype html><html lang="en"><head><title>${title}</title></head><body><main>${body}</main></body></html>`;

/** Reads a page and counts how often it is asked for an attribute: work that is the same on every machine. */
async function readCounted(html: string, options: Partial<PageOptions> = {}) {
  const document = documentOf(html);
  let asked = 0;
  let step: object | null = Object.getPrototypeOf(document.querySelector('h1'));
  while (step && !Object.hasOwn(step, 'getAttribute')) step = Object.getPrototypeOf(step);
  const prototype = step as { getAttribute(name: string): string | null };
  const getAttribute = prototype.getAttribute;
  prototype.getAttribute = function (name) {
    asked += 1;
    return getAttribute.call(this, name);
  };
  try {
    const listing = await readListing(document, { url: pageUrl, now, ...options });
    const cut = listing.problems.filter(({ code }) => code === 'page-cut').map(({ data }) => data);
    return { listing, asked, cut };
  } finally {
    prototype.getAttribute = getAttribute;
  }
}

describe('pages larger than anybody reads', () => {
  it('100,000 attributes of one element are not gone through one by one', async () => {
    const names = Array.from({ length: 100_000 }, (_, index) => `data-name-${index}="/photos/${index}.jpg"`).join(' ');
    for (const tag of ['img src="/photos/1.jpg"', 'div class="gallery"']) {
      const { listing, asked, cut } = await readCounted(page(`${heading}<${tag} ${names}></div>`));
      expect(listing.price[0]?.value.minor).toBe(54000);
      expect(asked).toBeLessThan(1_000);
      expect(cut).toEqual([{ nodesRead: null, attributes: 99_941, characters: 0 }]);
    }
  }, 60_000);

  it('a title of a megabyte is read as far as a title goes, and the rest is said', async () => {
    const { listing, cut } = await readCounted(page(heading, 'Ondrasse '.repeat(110_000)));
    expect(listing.title.map(({ value }) => value.length).every((length) => length <= 1_000)).toBe(true);
    expect(listing.price[0]?.value.minor).toBe(54000);
    expect(cut).toEqual([{ nodesRead: null, attributes: 0, characters: 989_000 }]);
  }, 60_000);

  it('a text, a class and an address of a megabyte are cut, and an address is never half read', async () => {
    const long = 'a'.repeat(1_000_000);
    const body = `${heading}<p>${'A lovely bag. '.repeat(70_000)}</p><img class="${long}" src="/${long}.jpg" srcset="/${long} 2x">`;
    const { listing, cut } = await readCounted(page(body));
    expect(listing.photos).toEqual([]);
    expect(listing.text.length).toBeLessThanOrEqual(50_000);
    expect(cut).toEqual([{ nodesRead: null, attributes: 0, characters: 1_960_004 }]);
  }, 60_000);

  it('data of 8,000 offers for one product, and 8,000 things of one name, are joined once each', async () => {
    const offers = Array.from({ length: 8_000 }, (_, index) => ({
      '@type': 'Offer',
      price: String(index + 1),
      itemOffered: { '@id': '#bag' },
    }));
    const things = Array.from({ length: 8_000 }, (_, index) => ({
      '@id': '#bag',
      '@type': 'Product',
      color: `c${index}`,
    }));
    const data = JSON.stringify([
      { '@id': '#bag', '@type': 'Product', name: 'Ondrasse Carryall 30' },
      ...offers,
      ...things,
    ]);
    const { listing } = await readCounted(page(`${heading}<script type="application/ld+json">${data}</script>`));
    expect(listing.title[0]?.value).toBe('Ondrasse Carryall 30');
    expect(listing.colour).toHaveLength(12);
  }, 60_000);

  it('a page that replaces its address without end is read, under the address that it had', async () => {
    let times = 0;
    const view = {
      location: {
        get href() {
          times += 1;
          return `${pageUrl}?t=${times}`;
        },
      },
    } as unknown as PageOptions['view'];
    const look = { getComputedStyle: () => ({ getPropertyValue: (name: string) => looks[name] ?? '' }) };
    const { listing } = await readCounted(page(heading), { view: Object.assign(view as object, look) as never });
    expect(listing.kind).toBe('listing');
    expect(listing.url).toMatch(/\?t=\d+$/);
    expect(listing.problems.map(({ code }) => code)).not.toContain('page-changing');
  });
});

const looks: Record<string, string> = { display: 'block', visibility: 'visible', opacity: '1', position: 'static' };
