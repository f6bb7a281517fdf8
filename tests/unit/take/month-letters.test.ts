import { describe, expect, it } from 'vitest';
import { monthLettersTold } from '../../../src/take/said/month-letters';
import { takeHtml } from '../../take-pages/score';

const withoutI = 'ABCDEFGHJKLM';

describe('the letters of the months', () => {
  it.each([
    ['A = January … M = December, without I', withoutI],
    ['Der Monat läuft von A bis M, ohne I.', withoutI],
    ['Le mois va de A à M, sans le I.', withoutI],
    ['Il mese va dalla A alla M, esclusa la I.', withoutI],
    ['El mes va de la A a la M, sin la I.', withoutI],
    ['De maand loopt van A tot en met M, zonder I.', withoutI],
    ['Aが1月、Mが12月で、Iは使わない。', withoutI],
    ['A = enero, L = diciembre', 'ABCDEFGHIJKL'],
  ])('%s', (text, letters) => {
    expect(monthLettersTold(text)).toBe(letters);
  });

  it('are read month by month, in whatever order they have', () => {
    const names = 'Januar Februar März April Mai Juni Juli August September Oktober November Dezember'.split(' ');
    const rows = names.map((name, at) => `${'ZYXWVUTSRQPN'[at]} | ${name}`).join('\n');
    expect(monthLettersTold(rows)).toBe('ZYXWVUTSRQPN');
  });

  it('stay unknown where letters are missing, are left out unsaid, or are of something else', () => {
    expect(monthLettersTold('A = January … M = December')).toBeNull();
    expect(monthLettersTold('A = January, B = February')).toBeNull();
    expect(monthLettersTold('Workshops run from A to M, without I.')).toBeNull();
    expect(monthLettersTold('A = January, A = February and so on to L = January')).toBeNull();
  });

  const system = (body: string) =>
    takeHtml(`<title>Wexcombe date codes</title><h1>Wexcombe date codes</h1><p>${body}</p>`).flatMap((one) =>
      one.kind === 'code-system' ? [JSON.stringify(one.layout), one.examples.map(({ reads }) => reads)] : [],
    );
  const form = 'From 1980 to 1992 the bags carry one letter for the month and two digits for the year.';

  it('are those that an example asks for', () => {
    expect(system(`${form} K84 is October 1984.`)).toEqual([
      `[{"month":"letter","letters":"${withoutI}"},{"year":2}]`,
      ['1984-10'],
    ]);
    expect(system(`${form} C84 is March 1984.`)).toEqual(['[{"month":"letter"},{"year":2}]', ['1984-03']]);
  });

  it('date no road and no sheet of paper', () => {
    expect(system(`${form} We took the A40 in May 1990.`)).toEqual(['[{"month":"letter"},{"year":2}]', []]);
  });
});
