import { describe, expect, it } from 'vitest';
import { agesIn } from '../../../src/text/age';

const now = '2026-01-15T10:00:00Z';
const agesOf = (text: string) =>
  agesIn(text, now).map(({ span, start, end }) => [text.slice(start, end), `${span.from}..${span.to}`]);
const about = (first: number, last: number) => `${first}-01-01..${last}-12-31`;

describe('ages counted back from the reading day', () => {
  it.each([
    [
      'years and tens of them are round, with five years of room',
      'about 30 years old',
      '30 years old',
      about(1991, 2001),
    ],
    ['fives with three', '25 years old', '25 years old', about(1998, 2004)],
    ['any other number with one', '27 yrs old', '27 yrs old', about(1998, 2000)],
    ['a hundred is a ten', '100-year-old', '100-year-old', about(1921, 1931)],
  ])('%s', (_, text, words, span) => {
    expect(agesOf(text)).toEqual([[words, span]]);
  });

  it('of at least so many years are open behind', () => {
    for (const words of ['over', 'more than', 'at least', 'uber', 'mehr als', 'mindestens', 'meer dan', 'ruim'])
      expect(agesOf(`${words} 40 years old`)).toEqual([[`${words} 40 years old`, 'null..1987-12-31']]);
    for (const words of ['plus de', 'oltre', 'piu di', 'mas de'])
      expect(agesOf(`ha ${words} 40 anni`)).toEqual([[`ha ${words} 40 anni`, 'null..1987-12-31']]);
    expect(agesOf('40年以上前の品')).toEqual([['40年以上前の品', 'null..1987-12-31']]);
  });

  it.each([
    [10, ['ten years old', 'zehn jahre alt', 'il a dix ans', 'ha dieci anni', 'tiene diez anos', 'tien jaar oud']],
    [
      20,
      [
        'twenty years old',
        'zwanzig jahre alt',
        'elle a vingt ans',
        'ha venti anni',
        'tiene veinte anos',
        'twintig jaar oud',
      ],
    ],
    [
      30,
      [
        'thirty years old',
        'dreissig jahre alt',
        'dreißig jahre alt',
        'age de trente ans',
        'ha circa trenta anni',
        'tiene unos treinta anos',
        'dertig jaar oud',
      ],
    ],
    [40, ['forty years old']],
    [50, ['fifty years old']],
  ])('%i is written in words', (years, all) => {
    for (const words of all) expect(agesOf(words)).toEqual([[words, about(2026 - years - 5, 2026 - years + 5)]]);
  });

  it('are read in Japanese', () => {
    expect(agesOf('30年ほど前のもの')).toEqual([['30年ほど前のもの', about(1991, 2001)]]);
    expect(agesOf('27年前のバッグ')).toEqual([['27年前のバッグ', about(1998, 2000)]]);
  });

  it('lie between one and 250 years', () => {
    expect(['0 years old', '1 years old', '250 years old', '251 years old'].map((text) => agesOf(text).length)).toEqual(
      [0, 1, 1, 0],
    );
  });

  it('are not read out of a guarantee, a longer word or a longer number', () => {
    for (const text of [
      'il a 10 ans de garantie',
      'ha 10 anni di garanzia',
      'tiene 10 anos de garantia',
      '30 years oldish',
      '1030 years old',
      'x30 years old',
      '30 years',
    ])
      expect(agesOf(text)).toEqual([]);
  });

  it('are told as loose, each of them where it stands', () => {
    const found = agesIn('one is 30 years old, the other 27 years old', now);
    expect(found.map(({ form, span, start }) => [form, span.precision, span.about, start])).toEqual([
      ['age', 'range', true, 7],
      ['age', 'range', true, 31],
    ]);
  });
});
