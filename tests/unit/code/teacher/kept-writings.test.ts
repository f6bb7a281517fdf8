import { it } from 'vitest';
import { partWritings } from '../../../../src/code/teacher/parts';
import { yearWritings } from '../../../../src/code/teacher/years';
import { keep, short } from '../said-short';
import { frameOf } from './framed';

/*
 * Every way in which small lists of codes can write their year, and a part of it, with what it costs and what each code
 * means by it. Where it changes on purpose, `npm test -- unit/code/teacher/kept --update` writes it anew.
 */

const cost = (bits: number) => bits.toFixed(3);

const lists: Record<string, { rows: string; least: number }> = {
  'two digits': { rows: '9403 = 1994-03; 9511 = 1995-11; 0107 = 2001-07; 9912 = 1999-12', least: 4 },
  'four digits': { rows: '1994K = 1994; 2003T = 2003; 1987K = 1987', least: 3 },
  'four digits turned': { rows: 'K4991 = 1994; T3002 = 2003; K7891 = 1987', least: 3 },
  'most have a digit': { rows: '4K = 1994; 3T = 2003; K7 = 1987', least: 2 },
  'a usual cycle': { rows: 'A7 = 1984; B1 = 1985; J4 = 1992; K9 = 1993; Z2 = 2006', least: 5 },
  'a cycle of its own': {
    rows: 'A4 = 1970; B1 = 1971; D9 = 1972; E3 = 1973; F2 = 1974; H7 = 1975; K5 = 1978; H1 = about 1976',
    least: 7,
  },
  'a cycle that some codes have': {
    rows: 'A4 = 1970; B1 = 1971; D9 = 1972; E3 = 1973; F2 = 1974; H7 = 1975; K5 = 1978',
    least: 4,
  },
  'a letter behind a digit': { rows: '7A = 1984; 1B = 1985; 4D = 1987; 9F = 1988; 2G = 1989', least: 5 },
  'two letters': { rows: 'AK = 1984; BM = 1985; DQ = 1986; EK = 1987', least: 4 },
  'two turns of a cycle': { rows: 'A1 = 1980; B2 = 1981; A3 = 2006; B4 = 2007', least: 4 },
  'enclosed letters': { rows: '(A)1 = 1982; (B)3 = 1983; (D)5 = 1985', least: 3 },
  'some enclosed letters': { rows: '(A)1 = 1982; B3 = 1983; (D)5 = 1985', least: 3 },
  'vague dates alone': { rows: 'A1 = bought 1990; B2 = before 1991; C3 = 1970..2000', least: 2 },
  'months in digits': { rows: '0394 = 1994-03; 1195 = 1995-11; 0701 = 2001-07', least: 3 },
  'months turned': { rows: '3049 = 1994-03; 1159 = 1995-11; 7010 = 2001-07', least: 2 },
  'months apart': { rows: '0934 = 1994-03; 1915 = 1995-11; 0071 = 2001-07; 1KKK = 1999-12', least: 3 },
  'month letters': { rows: 'A94 = 1994-01; L95 = 1995-12; D01 = 2001-04; H99 = 1999-08', least: 4 },
  'month letters without I': { rows: 'A94 = 1994-01; M95 = 1995-12; J01 = 2001-09; H99 = 1999-08', least: 4 },
  'month letters without I and J': { rows: 'A94 = 1994-01; N95 = 1995-12; K01 = 2001-09; H99 = 1999-08', least: 4 },
  'months with O, N and D': { rows: '194 = 1994-01; O95 = 1995-10; N01 = 2001-11; D99 = 1999-12', least: 4 },
  quarters: { rows: '194 = 1994-Q1; 495 = 1995-Q4; 201 = 2001-Q2; 399 = 1999-08', least: 4 },
  'quarter letters': { rows: 'A94 = 1994-Q1; D95 = 1995-Q4; B01 = 2001-Q2; C99 = 1999-08', least: 4 },
  weeks: { rows: '1494 = 1994-W14; 5398 = 1998-W53; 0101 = 2001-W01; 5299 = 1999-12-31', least: 4 },
  'days of the year': { rows: '07394 = 1994-03-14; 36500 = 2000-12-30; 36604 = 2004-12-31', least: 3 },
  'days of the year turned': { rows: '37094 = 1994-03-14; 56300 = 2000-12-30; 66304 = 2004-12-31', least: 3 },
  'days of the month': { rows: '140394 = 1994-03-14; 021195 = 1995-11-02; 290200 = 2000-02-29', least: 3 },
  'days behind a letter': { rows: 'C14 = 1994-03-14; L02 = 1995-12-02; B29 = 2000-02-29', least: 3 },
  'days without a known one': { rows: 'C14 = 1994-03; L02 = 1995-12; B29 = 2000-02', least: 3 },
  'weeks from Sundays': { rows: '1494 = 1994-04-06; 2695 = 1995-06-28; 5200 = 2000-12-26', least: 3 },
  'vague dates': { rows: '0394 = 1994..1996; 1195 = 1995; 0701 = about 2001; 0999 = 1999-07..1999-12', least: 4 },
  'vague days': { rows: 'C14 = 1994-03-14; L02 = 1995-12; B29 = 2000..2004', least: 3 },
  'codes without a date': { rows: '0394 = DE; 1195 = 1995-11; 1301 = 2001-07', least: 2 },
};

it('the ways to write a year', async () => {
  const out = Object.entries(lists)
    .slice(0, 13)
    .flatMap(([name, { rows, least }]) => {
      const frame = frameOf(rows);
      return [
        `${name}: ${rows}`,
        ...yearWritings(frame, least).map((one) => {
          const years = frame.facts.map(({ core }) => {
            const meant = Array.from({ length: 100 }, (_, at) => 1950 + at).filter((year) => one.means(core, year));
            return `${core} ${meant.slice(0, 3).join(' ')}${meant.length > 3 ? ` and ${meant.length - 3}` : ''}`;
          });
          return `  ${one.places.join()} ${short(one.slots)} costs ${cost(one.cost)}, every ${one.every}, tried ${cost(one.tried)}, says ${short(one.says)}: ${years.join(', ')}`;
        }),
      ];
    });
  await keep(out, 'years');
});

it('the ways to write a part of the year', async () => {
  const out = Object.entries(lists)
    .slice(13)
    .flatMap(([name, { rows, least }]) => {
      const frame = frameOf(rows);
      return [
        `${name}: ${rows}`,
        ...partWritings(frame, least).map((one) => {
          const said = frame.facts.map(
            (fact) => `${fact.core} ${one.yearsFor(fact).join(' ')} of ${cost(one.choices(fact))}`,
          );
          const other = one.yearsFor(frame.facts[0]!, frame.facts[1]!.core).join(' ');
          return `  ${one.places.join()} ${short(one.slots)} costs ${cost(one.cost)}, says ${short(one.says)}: ${said.join(', ')}; by the next ${other}`;
        }),
      ];
    });
  await keep(out, 'parts');
});
