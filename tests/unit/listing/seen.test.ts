import { describe, expect, it } from 'vitest';
import { lookBySource } from '../../../src/listing/page/look-by-source';
import { sellerName } from '../../../src/listing/visible/labelled';
import { placeLine } from '../../../src/listing/visible/place-line';
import { titleWithoutSite } from '../../../src/listing/visible/title';
import { labelOf } from '../../../src/text/label';
import { splitLabelled } from '../../../src/text/label-words';
import { documentOf, readHtml } from './page';

const heading = '<h1>Ondrasse Carryall 30</h1>';

describe('what a page shows', () => {
  it('leaves hidden text out, and text for screen readers too', async () => {
    const listing = await readHtml(`<style>.gone{display:none}</style><main>${heading}<p class="price">€540.00</p>
      <p class="gone">hidden by a rule</p><p style="visibility:hidden">hidden inline</p><p hidden>hidden attribute</p>
      <span class="sr-only">for screen readers</span><p>Seen words.</p></main>`);
    expect(listing.text).toContain('Seen words.');
    expect(listing.text).not.toMatch(/hidden|screen readers/);
  });

  it('reads the words of a frame of another site where they were given, and says so where they were not', async () => {
    const address = 'https://words.attic-arcade.example/1';
    const html = `<main>${heading}<p class="price">€540.00</p><div class="description">
      <iframe src="${address}" title="Description"></iframe></div></main>`;
    const without = await readHtml(html);
    expect(without.problems.map(({ code, where }) => [code, where])).toEqual([['frame-not-read', address]]);
    const given = await readHtml(html, { frameTexts: { [address]: 'Made in Belgium in 1995.' } });
    expect(given.description[0]?.value).toBe('Made in Belgium in 1995.');
    expect(given.problems).toEqual([]);
  });

  it('takes no words from a frame that is an advertisement, though they were given', async () => {
    const address = 'https://adverts.attic-arcade.example/1';
    for (const named of ['id="ads_frame_1" height="400"', 'title="Advertisement"', 'width="300" height="250"']) {
      const html = `<main>${heading}<p class="price">€540.00</p><div><iframe src="${address}" ${named}></iframe></div></main>`;
      const listing = await readHtml(html, { frameTexts: { [address]: 'Brand new for €20.00' } });
      expect([named, listing.text.includes('Brand new'), listing.price.length]).toEqual([named, false, 1]);
    }
  });

  it('takes struck prices as "was"', async () => {
    const listing = await readHtml(`<main>${heading}<p class="price"><s>€690.00</s> €540.00</p></main>`);
    expect(listing.price.map(({ value }) => [value.kind, value.minor])).toEqual([
      ['sale', 54000],
      ['was', 69000],
    ]);
  });

  it('holds a number for scripts against the prices seen: cents or units', async () => {
    const both = await readHtml(`<main>${heading}<p class="price" data-price="54000">€540.00</p></main>`);
    expect([...new Set(both.price.map(({ value }) => value.minor))]).toEqual([54000]);
    const alone = await readHtml(`<main>${heading}<p class="price" data-price="54000" data-currency="EUR"></p></main>`);
    expect(alone.price[0]?.value).toMatchObject({ minor: 5400000, otherMinor: [54000] });
    expect(alone.price[0]?.caveats).toContain('ambiguous');
  });

  it('leaves out what stands under "you may also like" in any language', async () => {
    for (const words of [
      'You may also like',
      'Das könnte dir gefallen',
      'Annonces similaires: autres annonces',
      'Potrebbe interessarti',
      '関連商品',
    ]) {
      const listing = await readHtml(
        `<main>${heading}<p class="price">€540.00</p><section><h2>${words}</h2><p class="price">€99.00</p><img src="/other.jpg"></section></main>`,
      );
      expect(
        listing.price.map(({ value }) => value.minor),
        words,
      ).toEqual([54000]);
      expect(listing.photos, words).toEqual([]);
    }
  });

  it('judges style from the source without recursion into comments that never end', () => {
    const document = documentOf(`<style>/* ${'/*'.repeat(50_000)}</style><p id="a">x</p>`);
    expect(() => lookBySource(document)).not.toThrow();
  });
});

describe('labels and names', () => {
  it('knows labels in seven languages, with or without colon and brackets', () => {
    expect(
      ['Brand:', 'État', 'Farbe', 'Misure', 'Ubicación', 'Verzendkosten', '【素材】', 'cookies'].map(labelOf),
    ).toEqual(['maker', 'condition', 'colour', 'measures', 'place', 'shipping', 'material', null]);
    expect(splitLabelled('【素材】牛革')).toEqual({ name: '素材', value: '牛革' });
    expect(splitLabelled('https://attic-arcade.example')).toBeNull();
  });

  it('cuts a seller name from what stands behind it', () => {
    expect(
      [
        'moth_and_lamp (318 sales)',
        'harbour_attic · 4.9 out of 5',
        'Name: pelle_e_carta. Rating: 4.7',
        'yuichi_lamp 評価：99.1%',
      ].map(sellerName),
    ).toEqual(['moth_and_lamp', 'harbour_attic', 'pelle_e_carta', 'yuichi_lamp']);
  });

  it('reads places from their own lines only', () => {
    expect(
      [
        '50667 Köln',
        'Milano (MI)',
        'Posted on 14 February 2026 · Leeds, West Yorkshire',
        'Made in Belgium in 1995.',
      ].map(placeLine),
    ).toEqual(['Köln', 'Milano', 'Leeds, West Yorkshire', null]);
  });

  it('takes the shop off a title', () => {
    expect(titleWithoutSite('Carryall 30 | Attic & Arcade', 'Attic & Arcade')).toBe('Carryall 30');
    expect(titleWithoutSite('Attic – Tessaro Vell Satchel 28', null)).toBe('Tessaro Vell Satchel 28');
    expect(titleWithoutSite('One title', null)).toBe('One title');
  });
});
