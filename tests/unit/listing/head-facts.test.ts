import { describe, expect, it } from 'vitest';
import { emptyDraft, likeliest, propose, settleDraft } from '../../../src/listing/draft';
import { readHeadFacts } from '../../../src/listing/structured/head-facts';
import { headTag, readHeadTags } from '../../../src/listing/structured/open-graph';
import type { Candidate, Field } from '../../../src/listing/types';
import { documentOf, hints } from './page';

const tagsOf = (...tags: [string, string][]) =>
  readHeadTags(
    documentOf(
      `<html><head>${tags.map(([name, value]) => `<meta property="${name}" content="${value}">`).join('')}</head></html>`,
    ),
  );
const read = (tags: [string, string][], caveats: string[] = []) => {
  const found = { draft: emptyDraft(), labelled: [], hints };
  readHeadFacts(tagsOf(...tags), found, caveats);
  return found;
};
const told = (field: Candidate<unknown>[]) =>
  field.map(({ value, origin, where, confidence, words, caveats }) =>
    [JSON.stringify(value), origin, where, confidence, words, ...(caveats ?? [])]
      .filter((one) => one !== undefined)
      .join(' | '),
  );

describe('what the head says of a product', () => {
  it('is read whole, each tag as far as it is trusted', () => {
    const { draft, labelled } = read([
      ['product:price:amount', '540'],
      ['product:price:currency', 'EUR'],
      ['product:original_price:amount', '900'],
      ['product:brand', 'Ondrasse'],
      ['product:color', 'tan'],
      ['product:material', 'leather'],
      ['product:retailer_item_id', 'R1'],
      ['product:condition', 'used'],
      ['product:availability', 'instock'],
      ['twitter:label1', 'Lining'],
      ['twitter:data1', 'twill'],
      ['twitter:label6', 'Year'],
      ['twitter:data6', '1994'],
      ['twitter:label7', 'Seven'],
      ['twitter:data7', 'too many'],
      ['twitter:label2', 'Nothing'],
      ['twitter:data3', 'of nothing'],
    ]);
    expect(
      draft.price.map(({ value, confidence, where }) => [value.kind, value.minor, value.currency, where, confidence]),
    ).toEqual([
      ['sale', 54_000, 'EUR', 'product:price:amount', 0.7],
      ['was', 90_000, 'EUR', 'product:original_price:amount', 0.7],
    ]);
    const graph = (value: string, where: string, confidence = 0.7) =>
      `"${value}" | open-graph | ${where} | ${confidence}`;
    expect(told(draft.maker)).toEqual([graph('Ondrasse', 'product:brand')]);
    expect(told(draft.colour)).toEqual([graph('tan', 'product:color')]);
    expect(told(draft.material)).toEqual([graph('leather', 'product:material')]);
    expect(told(draft.itemCode)).toEqual([graph('R1', 'product:retailer_item_id', 0.56)]);
    expect(told(draft.condition)).toEqual([graph('used', 'product:condition')]);
    expect(told(draft.availability)).toEqual([`${graph('offered', 'product:availability')} | instock`]);
    const named = (name: string, value: string, at: number) => ({
      ...{ name, value, origin: 'meta', where: `twitter:data${at}`, confidence: 0.5 },
    });
    expect(labelled).toEqual([named('Lining', 'twill', 1), named('Year', '1994', 6)]);
  });

  it('takes each under any of its names, the first of them first', () => {
    const first = (field: 'maker' | 'itemCode' | 'condition' | 'availability', ...tags: [string, string][]) =>
      read(tags).draft[field][0]?.value;
    expect(first('maker', ['og:brand', 'Ondrasse'])).toBe('Ondrasse');
    expect(first('maker', ['og:brand', 'A'], ['product:brand', 'B'])).toBe('B');
    expect(first('itemCode', ['product:retailer_part_no', 'R2'], ['product:retailer_item_id', 'R1'])).toBe('R1');
    expect(first('itemCode', ['product:retailer_item_id', 'R1'], ['product:mfr_part_no', 'M'])).toBe('M');
    expect(first('itemCode', ['product:retailer_part_no', 'R2'])).toBe('R2');
    expect(first('condition', ['og:condition', 'new'])).toBe('new');
    expect(first('availability', ['og:availability', 'oos'])).toBeUndefined();
    expect(first('availability', ['og:availability', 'sold'])).toBe('sold');
  });

  it('has a price of before where it has one of a sale', () => {
    const prices = (...tags: [string, string][]) =>
      read(tags).draft.price.map(({ value: { kind, minor, currency } }) => `${kind} ${minor} ${currency}`);
    expect(prices(['og:price:amount', '540'], ['og:price:currency', 'GBP'])).toEqual(['sale 54000 GBP']);
    expect(
      prices(
        ['product:sale_price:amount', '540'],
        ['product:sale_price:currency', 'GBP'],
        ['product:price:amount', '900'],
        ['og:price:amount', '950'],
      ),
    ).toEqual(['sale 54000 GBP', 'was 90000 GBP', 'was 95000 GBP']);
    expect(prices(['product:price:amount', 'on request'])).toEqual([]);
  });

  it('is doubted as the page is', () => {
    const { draft, labelled } = read(
      [
        ['product:price:amount', '540'],
        ['product:brand', 'Ondrasse'],
        ['twitter:label1', 'Lining'],
        ['twitter:data1', 'twill'],
      ],
      ['stale'],
    );
    expect(told(draft.maker)).toEqual(['"Ondrasse" | open-graph | product:brand | 0.21 | stale']);
    expect(draft.price[0]).toMatchObject({ confidence: 0.189, caveats: ['stale', 'currency-open'] });
    expect(labelled).toMatchObject([{ caveats: ['stale'] }]);
  });
});

describe('tags of a head', () => {
  it('stand under the property or the name, in small letters, each with all of its values', () => {
    const tags = readHeadTags(
      documentOf(`<html><head><meta property=" OG:Title " content=" A "><meta name="og:title" content="B">
        <meta property="" name="description" content="D"><meta property="p" name="n" content="P">
        <meta property="empty" content="  "><meta content="of nothing"><meta name="none"></head></html>`),
    );
    expect([...tags]).toEqual([
      ['og:title', ['A', 'B']],
      ['description', ['D']],
      ['p', ['P']],
    ]);
    expect(headTag(tags, 'none', 'description', 'p')).toBe('D');
    expect(headTag(tags, 'none')).toBeNull();
  });

  it('are five hundred at most, of twenty thousand characters', () => {
    const many = tagsOf(...Array.from({ length: 501 }, (_, at): [string, string] => [`t${at}`, 'x']));
    expect(many.size).toBe(500);
    expect(headTag(tagsOf(['long', 'x'.repeat(20_001)]), 'long')).toHaveLength(20_000);
  });
});

describe('candidates of a field', () => {
  const from = { origin: 'json-ld', where: 'x', confidence: 0.9 } as const;
  const proposed = (...all: [string | null | undefined, object?, string?][]): Field<string> => {
    const into: Field<string> = [];
    for (const [value, over = {}, words] of all) propose(into, value, { ...from, ...over }, words);
    return into;
  };

  it('are trimmed, and nothing where nothing is said', () => {
    expect(proposed([' tan '])).toEqual([{ ...from, value: 'tan' }]);
    expect(proposed([''], ['  '], [null], [undefined])).toEqual([]);
  });

  it('keep the words where they differ, and so much of where they stand', () => {
    expect(proposed(['tan', {}, 'tan'])[0]).not.toHaveProperty('words');
    expect(proposed(['tan', {}, 'Tan'])[0]?.words).toBe('Tan');
    expect(proposed(['tan', { where: 'w'.repeat(201) }, 'v'.repeat(501)])[0]).toMatchObject({
      where: 'w'.repeat(200),
      words: 'v'.repeat(500),
    });
  });

  it.each([
    ['repaired', 0.9],
    ['unusual-names', 0.92],
    ['stale', 0.3],
    ['ambiguous', 0.75],
    ['currency-open', 0.9],
    ['tie', 0.6],
    ['hidden', 0.8],
    ['anything else', 1],
  ])('are weaker by what is doubted of them: %s, %f', (caveat, by) => {
    expect(proposed(['x', { confidence: 0.5, caveats: [caveat, caveat] }])).toEqual([
      { ...from, value: 'x', confidence: 0.5 * by, caveats: [caveat] },
    ]);
  });

  it('are trusted from 0 to 1, to the third place', () => {
    expect([1.2, -1, 0.12345].map((confidence) => proposed(['x', { confidence }])[0]?.confidence)).toEqual([
      1, 0, 0.123,
    ]);
    expect(proposed(['x', { caveats: [] }])[0]).not.toHaveProperty('caveats');
  });

  it('stand once of one origin, as the surest of them', () => {
    expect(proposed(['x', { confidence: 0.5 }], ['x', { where: 'y' }])).toEqual([{ ...from, value: 'x', where: 'y' }]);
    expect(proposed(['x'], ['x', { where: 'y' }])).toEqual([{ ...from, value: 'x' }]);
    expect(proposed(['x'], ['x', { origin: 'visible' }], ['y'])).toHaveLength(3);
    const prices: Field<{ minor: number }> = [];
    for (const minor of [1, 1, 2]) propose(prices, { minor }, from);
    expect(prices).toHaveLength(2);
  });

  it('are put in the order of trust, twelve of each field and forty measures', () => {
    const many = (count: number): Field<never> =>
      Array.from({ length: count }, (_, at) => ({ ...from, value: `v${at}`, confidence: (at % 2) / 2 }) as never);
    const names = ['title', 'description', 'maker', 'model', 'itemCode', 'price', 'condition', 'availability'] as const;
    const more = [
      'colour',
      'material',
      'posted',
      'ends',
      'watchers',
      'bids',
      'returns',
      'shipping',
      'payment',
    ] as const;
    const sellers = ['name', 'rating', 'salesCount', 'memberSince', 'trader', 'place'] as const;
    const draft = emptyDraft();
    for (const name of [...names, ...more]) draft[name] = many(13);
    for (const name of sellers) draft.seller[name] = many(13);
    draft.measures = many(41);
    const settled = settleDraft(draft);
    const wanted = [1, 3, 5, 7, 9, 11, 0, 2, 4, 6, 8, 10].map((at) => `v${at}`);
    for (const name of [...names, ...more])
      expect(
        settled[name]?.map(({ value }) => value),
        name,
      ).toEqual(wanted);
    for (const name of sellers)
      expect(
        settled.seller[name].map(({ value }) => value),
        name,
      ).toEqual(wanted);
    expect(settled.measures.map(({ value }) => value)).toEqual(Array.from({ length: 40 }, (_, at) => `v${at}`));
    expect(settleDraft(emptyDraft())).not.toHaveProperty('ends');
    expect([likeliest(settled.title), likeliest([])]).toEqual(['v1', '']);
  });
});
