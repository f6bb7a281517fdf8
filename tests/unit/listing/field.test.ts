import { describe, expect, it } from 'vitest';
import { emptyDraft, likeliest, propose, sameValue, settleDraft } from '../../../src/listing/draft';
import { Slices, usualBudget } from '../../../src/listing/page/slices';
import { widthFromAddress } from '../../../src/listing/photos/image-size';
import { titleWithoutSite } from '../../../src/listing/visible/title';

describe('a field', () => {
  const from = { origin: 'meta' as const, where: 'x'.repeat(201), confidence: 0.5 };
  it('takes texts trimmed, once each of one origin, the surer one', () => {
    const field = emptyDraft().title;
    for (const value of [null, undefined, '', ' ']) propose(field, value, from);
    expect(field).toEqual([]);
    propose(field, ' a ', from, 'w'.repeat(501));
    expect(field).toEqual([
      { value: 'a', origin: 'meta', where: 'x'.repeat(200), confidence: 0.5, words: 'w'.repeat(500) },
    ]);
    propose(field, 'a', { ...from, where: 'same', confidence: 0.5 });
    propose(field, 'a', { ...from, where: 'less', confidence: 0.4 });
    expect(field[0]?.where).toBe('x'.repeat(200));
    propose(field, 'a', { ...from, where: 'more', confidence: 0.6 });
    propose(field, 'a', { ...from, origin: 'visible' }, 'a');
    expect(field.map(({ where, words }) => [where.slice(0, 4), words?.slice(0, 1)])).toEqual([
      ['more', 'w'],
      ['xxxx', undefined],
    ]);
    expect([likeliest(field), likeliest([])]).toEqual(['a', '']);
  });

  it.each([
    [['repaired'], 0.9],
    [['unusual-names'], 0.92],
    [['stale'], 0.3],
    [['ambiguous'], 0.75],
    [['currency-open'], 0.9],
    [['tie'], 0.6],
    [['hidden'], 0.8],
    [['other'], 1],
    [['tie', 'tie'], 0.6],
    [['tie', 'stale'], 0.18],
  ])('is weaker by its caveats %j', (caveats, confidence) => {
    const field = emptyDraft().title;
    propose(field, 'a', { ...from, confidence: 1, caveats });
    expect(field[0]).toMatchObject({ confidence, caveats: [...new Set(caveats)] });
  });

  it('stays between nought and one, to a thousandth', () => {
    const of = (confidence: number) => {
      const field = emptyDraft().title;
      propose(field, 'a', { ...from, confidence });
      return field[0]?.confidence;
    };
    expect([-1, 0.12345, 0.1239, 2].map(of)).toEqual([0, 0.123, 0.124, 1]);
  });

  it('has at most twelve candidates, the surest first and equals as they came', () => {
    const draft = emptyDraft();
    for (let at = 0; at < 14; at += 1)
      propose(draft.title, `t${at}`, { ...from, confidence: at < 2 ? 0.1 : at === 13 ? 0.9 : 0.5 });
    expect(settleDraft(draft).title.map(({ value }) => value)).toEqual([
      't13',
      ...Array.from({ length: 11 }, (_, at) => `t${at + 2}`),
    ]);
    expect(settleDraft(draft).ends).toBeUndefined();
    expect(settleDraft({ ...draft, ends: [] }).ends).toEqual([]);
  });

  it('tells equal values by what they hold', () => {
    expect([
      sameValue('a', 'a'),
      sameValue({ a: 1 }, { a: 1 }),
      sameValue({ a: 1 }, { a: 2 }),
      sameValue('1', 1),
      sameValue('a', 'b'),
    ]).toEqual([true, true, false, false, false]);
  });
});

describe('the work of one reading', () => {
  it('is granted once for what several steps look at, and counts what it leaves out', () => {
    const slices = new Slices({ ...usualBudget, attributes: 10 }, undefined, () => 0);
    const [one, other] = [{}, {}];
    expect(slices.takeOf(one, '', 'attributes', 6, 60)).toBe(6);
    expect(slices.takeOf(one, '', 'attributes', 6, 60)).toBe(6);
    expect(slices.takeOf(one, '', 'attributes', 4, 60)).toBe(4);
    expect(slices.takeOf(other, '', 'attributes', 6, 3)).toBe(3);
    expect(slices.takeOf(one, 'more', 'attributes', 6, 60)).toBe(1);
    expect(slices.skipped).toEqual({ nodes: 0, attributes: 8, characters: 0 });
    expect(slices.take('nodes', 5)).toBe(5);
  });

  it('pauses when a slice is used up, and not before', async () => {
    let now = 0;
    let pauses = 0;
    const slices = new Slices(
      usualBudget,
      async () => {
        pauses += 1;
      },
      () => now,
    );
    now = 7;
    expect(slices.due).toBe(false);
    await slices.rest();
    expect(pauses).toBe(0);
    now = 8;
    expect(slices.due).toBe(true);
    await slices.rest();
    expect([pauses, slices.due, slices.longestMs]).toEqual([1, false, 8]);
    now = 20;
    await slices.rest();
    now = 28;
    await slices.rest();
    expect([pauses, slices.longestMs]).toEqual([3, 12]);
  });
});

describe('a title without its site', () => {
  it.each([
    ['Palma Tote | Arcade', null, 'Palma Tote'],
    ['Arcade – Palma Tote – Bags', null, 'Palma Tote'],
    ['Palma - Arcade of Ghent', 'Arcade of Ghent', 'Palma'],
    ['Arcade of Ghent', 'Arcade of Ghent', 'Arcade of Ghent'],
    ['Arcade | Arcade', 'Arcade', 'Arcade'],
    ['One | Two', null, 'One'],
    ['Semi-new bag', null, 'Semi-new bag'],
    ['  Palma \n Tote ', null, 'Palma Tote'],
    ['Palma Tote|Arcade', null, 'Palma Tote'],
    ['| Palma Tote', null, '| Palma Tote'],
  ])('%j of %s is %j', (title, site, wanted) => {
    expect(titleWithoutSite(title, site)).toBe(wanted);
  });
});

describe('about how wide a named version is', () => {
  /** In pixels, as far as common practice goes; own table, no source. */
  const widths: Record<string, number> = {
    tiny: 40,
    mini: 60,
    thumb: 100,
    thumbnail: 100,
    thumbs: 100,
    thumbnails: 100,
    compact: 160,
    sm: 200,
    small: 200,
    klein: 200,
    petit: 200,
    preview: 240,
    med: 400,
    md: 400,
    medium: 400,
    lg: 800,
    large: 800,
    grande: 800,
    big: 900,
    gross: 900,
    'gro%C3%9F': 900,
    grand: 900,
    groot: 900,
    xl: 1200,
    hd: 1400,
    xxl: 1600,
    zoom: 1600,
    full: 1800,
    master: 1900,
    orig: 2000,
    original: 2000,
  };
  it.each(Object.entries(widths))('%s is about %i', (word, width) => {
    expect(widthFromAddress(`https://a.example/p_${word}.jpg`)).toEqual({ width, exact: false });
  });
});
