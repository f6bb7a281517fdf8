import { parseHTML } from 'linkedom';
import { describe, expect, it } from 'vitest';
import { readListing } from '../../../src/listing';

const now = '2026-03-01T12:00:00Z';
async function readWith(footer: string, seller = '', language = 'en') {
  const { document } = parseHTML(
    `<!doctype html><html lang="${language}"><head><title>Brown satchel</title></head><body><main><h1>Brown satchel</h1><p class="price">£80.00</p><figure><img src="/p/1.jpg" width="1200" height="1200" alt=""></figure><div class="description"><p>A brown leather satchel with a brass lock, made in England.</p></div>${seller ? `<p>Seller: <a class="seller" href="/u/1">${seller}</a></p>` : ''}<button>Add to basket</button></main><footer>${footer}</footer></body></html>`,
  );
  return readListing(document as unknown as Document, { url: 'https://satchel-yard.example/1', now });
}
const returnsOf = async (footer: string, seller = '', language = 'en') =>
  (await readWith(footer, seller, language)).returns.map(({ value }) => value.days ?? value.accepted);
const tradersOf = async (footer: string, seller = '', language = 'en') =>
  (await readWith(footer, seller, language)).seller.trader.map(({ value, words }) => [value, words]);

describe('what a shop’s footer says of returns', () => {
  it.each([
    ['en', 'Changed your mind? Returns within 21 days. Satchel Yard, Ripon.', 21],
    ['fr', 'Retour possible sous 30 jours.', 30],
    ['de', 'Widerrufsrecht 14 Tage. Ranzenhof GmbH.', 14],
    ['it', 'Reso entro 20 giorni.', 20],
    ['es', '15 días de devolución.', 15],
    ['nl', '14 dagen bedenktijd.', 14],
    ['ja', '到着後7日以内であれば返品を承ります。', 7],
  ])('within how many days (%s): %s', async (language, footer, days) => {
    expect(await returnsOf(`<p>${footer}</p>`, '', language)).toEqual([days]);
  });
  it.each([
    ['a link of its menu', '<p><a href="/returns">Returns within 30 days</a></p>', ''],
    ['what dealers of a market sell', '<p>What dealers sell may be returned within 14 days.</p>', ''],
    ['what it refuses', '<p>Sale goods: no returns.</p>', ''],
    [
      'terms of a market that names a seller beside itself',
      '<p>Returns within 14 days. Penny Barrow.</p>',
      'moth_and_mend',
    ],
  ])('leaves out %s', async (_, footer, seller) => {
    expect(await returnsOf(footer, seller)).toEqual([]);
  });
});

describe('a company in the footer that grants returns', () => {
  it.each([
    ['en', 'Returns within 21 days. Satchel Yard Ltd, Ripon.', 'Satchel Yard Ltd'],
    ['fr', 'Retour possible sous 30 jours. Le Cartable SARL, RCS Albi.', 'Le Cartable SARL'],
    ['de', 'Widerrufsrecht 14 Tage. Ranzenhof GmbH, HRB 0000.', 'Ranzenhof GmbH'],
    ['it', 'Reso entro 20 giorni. La Sacca S.R.L.', 'La Sacca S.R.L'],
    ['es', '15 días de devolución. Ropero Olmo S.L., CIF B0000.', 'Ropero Olmo S.L.'],
    ['nl', '14 dagen bedenktijd. Leerhoek B.V., KvK 0000.', 'Leerhoek B.V.'],
    ['ja', '到着後7日以内であれば返品を承ります。\n株式会社ナナツボ', '株式会社ナナツボ'],
  ])('sells as a trader (%s): %s', async (language, footer, company) => {
    const html = footer.split('\n').map((line) => `<p>${line}</p>`);
    const [[value, words] = []] = await tradersOf(html.join(''), '', language);
    expect([value, words?.replace(/\.$/, '')]).toEqual(['trader', company.replace(/\.$/, '')]);
  });
  it.each([
    ['that grants none', 'Attic Market Ltd, Ripon.', ''],
    ['of a market that names a seller', 'Returns within 14 days. Attic Market Ltd.', 'moth_and_mend'],
    ['of a market whose dealers grant them', 'What dealers sell may be returned within 14 days. Attic Market Ltd.', ''],
  ])('does not where it is one %s', async (_, footer, seller) => {
    expect(await tradersOf(`<p>${footer}</p>`, seller)).toEqual([]);
  });
});
