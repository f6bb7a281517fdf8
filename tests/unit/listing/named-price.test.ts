import { parseHTML } from 'linkedom';
import { expect, it } from 'vitest';
import { readListing } from '../../../src/listing';

const read = async (boxes: string) => {
  const { document } = parseHTML(
    `<!doctype html><html lang="en"><head><title>Ondrasse</title></head><body><main><h1>Ondrasse Palma Tote</h1>${boxes}<p>A tote of smooth calf.</p></main></body></html>`,
  );
  const { price } = await readListing(document as unknown as Document, {
    url: 'https://attic-arcade.example/item/1042',
    now: '2026-03-01T12:00:00Z',
  });
  return price.map(({ value }) => value.minor);
};
const prose = '<p>Some words of the offer that stand here.</p>'.repeat(6);
const others = `<div class="a"><div class="b">${prose}<div class="price">€65.27</div></div></div>`;
const own = (id: string) => `<div class="d">${prose}<span id="${id}">€66.75</span></div>`;

it('a price whose element is called so by its id stands before one of a box beside it', async () => {
  expect(await read(`${others}${own('priceblock_main')}`)).toEqual([66_75, 65_27]);
});

it('where nothing is called so, the surer one stays first', async () => {
  expect((await read(`${others}${own('box')}`))[0]).toBe(65_27);
});
