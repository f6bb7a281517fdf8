import { expect, it } from 'vitest';
import { readHtml } from './page';

const opens = 'I am selling my Tilda, bought in October 2011 at a shop in Husum.';
const closes = 'Sold as a private person, and posted with tracking within two days.';
const page = (...paragraphs: string[]) =>
  readHtml(
    `<main><h1>Velmar Lane Tilda</h1><p class="price">€249</p><section>${paragraphs.map((text) => `<p>${text}</p>`).join('')}</section>` +
      '<aside>Seller: <a href="/u/kistenweise">kistenweise</a> · Kiel · 4,9 (128)</aside></main>',
  );
const described = async (...paragraphs: string[]) => (await page(...paragraphs)).description[0]?.value;

it('a seller’s prose goes on behind a line or two with a label', async () => {
  const number = 'Number on the tab inside: TI/11-34. The clasp is silver.';
  expect(await described(opens, number, closes)).toBe(`${opens}\n${number}\n${closes}`);
  expect(await described(opens, 'Width: 32 cm', 'Height: 26 cm', closes)).toBe(
    `${opens}\nWidth: 32 cm\nHeight: 26 cm\n${closes}`,
  );
});

it('and not behind a table of them, or a heading', async () => {
  const rows = ['Width: 32 cm', 'Height: 26 cm', 'Colour: tan'];
  expect(await described(opens, ...rows, closes)).toBe(closes);
  expect(await described(opens, 'Post and returns', closes)).toBe(closes);
  expect(await described('Short line.', 'Width: 32 cm', 'Post and returns', closes)).toBe(closes);
});

it('a rating behind a dot on the seller’s line is the seller’s', async () => {
  const { seller } = await page(opens);
  expect(seller.rating.map(({ value }) => value)).toEqual([{ share: 0.98, count: 128, words: '4,9' }]);
});

it('sentences behind a word and a colon are prose, and no rows of a table', async () => {
  const update = 'Update 2 May: nobody came for it on Saturday, so it is still here and still mine.';
  const german = 'DE: Meine Tilda, im Herbst 2011 in Husum gekauft. Innen ist sie sauber.';
  const maker = 'Maker: it says Velmar Lane in the pocket, see the third photo for how deep it is stamped.';
  expect(await described(update, german, maker)).toBe([update, german, maker].join('\n'));
  const read = await page(update, german, maker);
  expect(read.maker).toEqual([]);
  expect((await page('Maker: Velmar Lane', opens)).maker[0]?.value).toBe('Velmar Lane');
  const japanese = '状態：角に小さなスレがあります。内側はきれいです、写真をご覧ください。';
  expect(await described(opens, '色：茶', '柄：無地', '縫製：手縫い', japanese)).toBe(opens);
  expect(await described(japanese, japanese)).toBe(`${japanese}\n${japanese}`);
});
