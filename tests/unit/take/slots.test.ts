import { describe, expect, it } from 'vitest';
import { plantsInSlots } from '../../../src/take/prose/plant-slots';
import { exactDates } from '../../../src/take/said/example';
import { ordinalOf } from '../../../src/take/said/ordinal-words';
import { takeHtml } from '../../take-pages/score';
import { compact } from './compact';

const told = (body: string, title = 'Ondrasse date codes') =>
  takeHtml(`<html><head><title>${title}</title></head><body><h1>${title}</h1>${body}</body></html>`).map(compact);
const slots = (sentence: string) =>
  plantsInSlots(sentence).plants.map(({ own }) => [own.code, own.name ?? own.place, own.used ?? null]);

describe('workshops in a sentence', () => {
  it.each([
    [
      'We had H, at Hexham, until 1961, and G in Goole from 1970.',
      [
        ['H', 'Hexham', [null, '1961']],
        ['G', 'Goole', ['1970', null]],
      ],
    ],
    [
      'D ist Dessau und, ab 1978, T ist Torgau.',
      [
        ['D', 'Dessau', null],
        ['T', 'Torgau', ['1978', null]],
      ],
    ],
    [
      'Les autres étaient Nevers (N, jusqu’en 1969) et Vichy (V, depuis 1980).',
      [
        ['N', 'Nevers', [null, '1969']],
        ['V', 'Vichy', ['1980', null]],
      ],
    ],
    ['Poi R, cioè Rovigo, fino al 1974.', [['R', 'Rovigo', [null, '1974']]]],
  ])('%s', (sentence, plants) => {
    expect(slots(sentence)).toEqual(plants);
  });

  it('stays silent where no name begins as the code does, or a code has two times', () => {
    expect(slots('Plan B was Hexham until 1961.')).toEqual([]);
    expect(slots('Size S was made in Spain until 1990.')).toEqual([]);
    expect(slots('H was Hexham until 1961 and again from 1970 to 1975.')).toEqual([]);
    // A town without a sign between it and a lone letter.
    expect(slots('In hall H Hexham traders sell until 1990.')).toEqual([]);
  });

  it('gives a time behind a code without its name to no other', () => {
    expect(slots('G is Goole, and K, which occurs from 1974, something else.')).toEqual([['G', 'Goole', null]]);
  });
});

describe('ordinals in words', () => {
  it.each([
    ['nineteenth', 19],
    ['thirty-second', 32],
    ['einundzwanzigsten', 21],
    ['dix-neuvième', 19],
    ['vingt et unième', 21],
    ['quarantatreesima', 43],
    ['decimoquinta', 15],
    ['achtendertigste', 38],
    ['nobody', null],
  ])('%s', (word, number) => {
    expect(ordinalOf(word)).toBe(number);
  });

  it('are weeks of a year', () => {
    expect(exactDates('finished in the thirty-second week of 1981', '2026-11-29')).toMatchObject([
      { reads: '1981-W32' },
    ]);
    expect(exactDates('in der einundzwanzigsten Woche 1977', '2026-11-29')).toMatchObject([{ reads: '1977-W21' }]);
  });
});

describe('what entries tell between them', () => {
  it('is read as rows, whatever sign parts their pieces', () => {
    expect(
      told('<p>HX • Hexham • 1951–1969<br>GO • Goole • 1960–today<br>ES • Spain • since 1994</p>', 'Ondrasse bags'),
    ).toEqual(['plant | HX | ZZ | Hexham | 1951–1969', 'plant | GO | ZZ | Goole | 1960–', 'plant | ES | ES | 1994–']);
    expect(
      told(
        '<p>Linings</p><ul><li>until 1966 | drill</li><li>1967–1981 | cotton</li><li>since 1982 | nylon</li></ul>',
        'Ondrasse bags',
      ),
    ).toEqual([
      'construction | lining | drill | –1966',
      'construction | lining | cotton | 1967–1981',
      'construction | lining | nylon | 1982–',
    ]);
  });

  it('is of a model where its clauses have labels of their own', () => {
    const body =
      '<dl><dt>The Drover</dt><dd>Size: 30 x 22 x 9 cm. Made from 1958 to 1971. Lining: drill. Code: under the flap.</dd></dl>';
    expect(told(body)).toEqual([
      'model | The Drover | 30 22 9 cm | 1958–1971',
      'construction | lining | drill | The Drover',
      'carrier | The Drover | under the flap | stamp',
    ]);
  });
});

describe('codes and prices in sentences', () => {
  it('sit on what a sentence names between a time and a place on the piece', () => {
    const body =
      '<p>Four digits, month and year: 0663 is June 1963.</p><p>Since 1990 there has only been a sticker in the inner pocket.</p>';
    expect(told(body).filter((one) => one.startsWith('carrier'))).toEqual([
      'carrier | in the inner pocket | sticker | 1990–',
    ]);
  });

  it('began where pieces bore nothing before, in whatever words', () => {
    for (const sentence of [
      'There were none before 1955.',
      'Until 1954 the bags bore nothing.',
      'They began numbering their bags in 1955.',
    ])
      expect(
        told(
          `<p>Now for the codes. ${sentence}</p><p>From 1955 to 1970 four digits, month and year: 0663 is June 1963.</p>`,
        ),
      ).toEqual(['stamped | 1955–', 'code-system | 1955–1970 | month 2 + year 2 | 0663 = 1963-06']);
    expect(told('<p>The lining was of felt from 1960 to 1970. Until 1959 there was no lining.</p>')).toEqual([
      'construction | lining | felt | 1960–1970',
    ]);
  });

  it('are of one form where one sentence tells its example and another its time', () => {
    const body =
      '<p>Mine says H3467: the letter is the workshop, then the week, then the year, week 34 of 1967.</p><p>Ondrasse used a letter, two digits of the week, two of the year from 1961 to 1979.</p>';
    expect(told(body)).toEqual(['code-system | 1961–1979 | plant 1 + week 2 + year 2 | H3467 = 1967-W34']);
  });

  it('cost each what stands beside its year, in the order of both', () => {
    expect(
      told(
        '<p>The Drover 30 measures 30 x 22 x 9 cm. The Drover 30 was listed at £41 in 1971 and £96 in 1981.</p>',
        'Ondrasse models',
      ),
    ).toEqual([
      'model | Drover 30 | 30 22 9 cm',
      'price | Drover 30 | 41 | GBP | 1971 | new',
      'price | Drover 30 | 96 | GBP | 1981 | new',
    ]);
    expect(told('<p>The Drover 30 fetched £41 at auction in 1991 and £96 in 2001.</p>', 'Ondrasse models')).toEqual([]);
  });
});
