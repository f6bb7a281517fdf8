import { describe, expect, it } from 'vitest';
import { takeHtml } from '../../take-pages/score';
import { compact } from './compact';

const told = (body: string, title = 'Ondrasse date codes') =>
  takeHtml(`<html><head><title>${title}</title></head><body><h1>${title}</h1>${body}</body></html>`).map(compact);

describe('codes told in parts of a page', () => {
  it('are of one form at a time: the one before ends when the next begins', () => {
    expect(
      told(
        '<p>Ondrasse began to number its bags in 1961. The number has four digits, the week and the year: 0972 is week 9 of 1972. Since 1980 the letter of the workshop stands in front, as in F1285 for week 12 of 1985.</p>',
      ),
    ).toEqual([
      'code-system | 1961–1979 | week 2 + year 2 | 0972 = 1972-W09',
      'code-system | 1980– | plant 1 + week 2 + year 2 | F1285 = 1985-W12',
      'stamped | 1961–',
    ]);
  });

  it('have the workshop that is named beside the date of a code, where its letters are told nowhere else', () => {
    const answer = '<p>Mine says 0974B.</p><p>Month, year, workshop: September 1974, workshop at Bude.</p>';
    expect(told(answer)).toContain('plant | B | ZZ | Bude');
    expect(told(`${answer}<p>B is Bodmin.</p>`)).toContain('plant | B | ZZ | Bodmin');
  });

  it('take their order from a sentence and their examples from anywhere', () => {
    const body =
      '<p>Bis 1978 stehen Werk, Monat und Jahr im Code, danach Werk, Jahr und Woche.</p><table><tr><th>Code</th><th>Bedeutung</th></tr><tr><td>F0571</td><td>Mai 1971</td></tr><tr><td>H8833</td><td>Woche 33 von 1988</td></tr></table>';
    expect(told(body, 'Ondrasse Datumscodes')).toEqual([
      'code-system | plant 1 + month 2 + year 2 | F0571 = 1971-05 | –1978',
      'code-system | plant 1 + year 2 + week 2 | H8833 = 1988-W33 | 1979–',
    ]);
    expect(told('<p>Bis 1978 stehen Werk, Monat und Jahr im Code.</p>', 'Ondrasse Datumscodes')).toEqual([]);
  });

  it('are built as the places along the top of a table say', () => {
    const table =
      '<table><tr><th>Years</th><th>1–2</th><th>3–4</th></tr><tr><td>1960–1974</td><td>month</td><td>year</td></tr><tr><td>since 1975</td><td>year</td><td>week</td></tr></table>';
    expect(told(table)).toEqual([
      'code-system | 1960–1974 | month 2 + year 2',
      'code-system | 1975– | year 2 + week 2',
    ]);
  });

  it('are told under a period with their place and the parts of that time', () => {
    expect(
      told(
        '<ul><li>1950–1964: No stamp. Zip of brass, lining of suede.</li><li>1965–1980: Stamp under the flap: two digits for the year, two for the week (7122 = week 22 of 1971). Zip of nickel.</li></ul>',
      ),
    ).toEqual([
      'stamped | 1965–',
      'construction | zip | brass | 1950–1964',
      'construction | lining | suede | 1950–1964',
      'code-system | 1965–1980 | year 2 + week 2 | 7122 = 1971-W22',
      'carrier | under the flap | 1965–1980 | stamp',
      'construction | zip | nickel | 1965–1980',
    ]);
  });

  it('go on from the entry before: "after that"', () => {
    expect(
      told(
        '<ul><li>1960 to 1971: month and year (0465 = April 1965)</li><li>after that: week and year (1280 = week 12 of 1980)</li></ul>',
      ),
    ).toEqual([
      'code-system | 1960–1971 | month 2 + year 2 | 0465 = 1965-04',
      'code-system | 1972– | week 2 + year 2 | 1280 = 1980-W12',
    ]);
  });

  it.each([
    [
      'A workshop in Perth, which stamped with P from 1968 to 1982, and since 1985 another in Malta with the letter M.',
      ['P | ZZ | Perth | 1968–1982', 'M | MT | 1985–'],
    ],
    [
      'The workshops were Oban (O), opened in 1970, and Girvan (G), closed in 1983.',
      ['O | ZZ | Oban | 1970–', 'G | ZZ | Girvan | –1983'],
    ],
    [
      'One letter is the workshop: D for Dunbar and, from 1991 on, an L, which is Latvia.',
      ['D | ZZ | Dunbar', 'L | LV | 1991–'],
    ],
    ['The workshop letter R, which one often sees, is Rye (1970–1984).', ['R | ZZ | Rye | 1970–1984']],
  ])('name workshops: %s', (sentence, plants) => {
    expect(
      told(`<p>The letter in F1285 is the workshop.</p><p>${sentence}</p>`).filter((one) => one.startsWith('plant')),
    ).toEqual(plants.map((one) => `plant | ${one}`));
  });

  it('number their workshops, where an example holds such a number', () => {
    const form =
      'The first digit is the workshop (1 is Frome, 2 is Mere), the next two the month, the last two the year, as in 20691 for June 1991.';
    expect(told(`<p>${form}</p>`)).toEqual(expect.arrayContaining(['plant | 1 | ZZ | Frome', 'plant | 2 | ZZ | Mere']));
    expect(
      told('<p>Month and year, as in 0691 for June 1991. Workshop 1 is Frome, 2 is Mere.</p>').filter((one) =>
        one.startsWith('plant'),
      ),
    ).toEqual([]);
  });

  it.each([
    ['There is C 47 83 stamped under the flap.', 'under the flap'],
    ['Auf der Lasche innen steht 3268T.', 'Auf der Lasche innen'],
    ['Der Stempel, den man meist unter der Innentasche findet, ist klein.', 'unter der Innentasche'],
    ['Il codice si trova sul fondo della tasca e comprende una lettera.', 'sul fondo della tasca'],
    ['Los bolsos llevan un código en el interior de la solapa.', 'en el interior de la solapa'],
    ['1971年から内ポケットの中に番号が刻印されています。', '内ポケットの中'],
  ])('sit where it is said: %s', (sentence, where) => {
    const carriers = takeHtml(
      `<html><head><title>Ondrasse codes</title></head><body><h1>Ondrasse codes</h1><p>0574 is May 1974, month and year.</p><p>${sentence}</p></body></html>`,
    ).flatMap((one) => (one.kind === 'carrier' ? [one.where] : []));
    expect(carriers).toEqual([where]);
  });

  it('are nobody’s on a page of anything else', () => {
    const body =
      '<p>The letter is the dairy (D is Dunster, T is Taunton), the digits are month and year: D0419 was filled in April 2019.</p>';
    expect(told(body, 'Reading the codes on our cheeses')).toEqual([]);
  });
});
