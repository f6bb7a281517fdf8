import { describe, expect, test } from 'vitest';
import { builtRound, datedIn, factsOf } from './framed';

/** The layout whose year is the first figure of its decade, and whose codes say no more of their date. */
function builtOf(rows: string) {
  const facts = factsOf(rows);
  const dated = datedIn(facts, facts.length).find(
    ({ year, part }) => year.places.join() === '0' && year.every === 10 && part.places.length === 0,
  );
  if (!dated) throw new Error('no such way to write the date');
  return builtRound(dated).candidate;
}

describe('the period of a layout reaches from its first known date to its last', () => {
  test.each([
    ['dates of one year', '6K = 1986; 9T = 1989', ['1986', '1989']],
    ['in any order', '9T = 1989; 6K = 1986; 8H = 1988', ['1986', '1989']],
    ['one date', '6K = 1986; 6T = 1986', ['1986', '1986']],
    ['a vague date with a year in it', '6K = 1986; 6T = 1996; 5H = 1985 or 1995', ['1986', '1996']],
    ['a vague date at its first year', '5K = 1985; 9T = 1989; 5H = 1975 or 1985', ['1985', '1989']],
    ['a vague date at its last year', '6K = 1986; 5T = 1995; 5H = 1995 or 2005', ['1986', '1995']],
    ['a vague date near its beginning', '6K = 1986; 9T = 1989; 5H = 1985 or 1995', ['1985', '1989']],
    ['a vague date near its end', '6K = 1986; 9T = 1989; 1H = 1981 or 1991', ['1986', '1991']],
    ['a vague date as near to both', '6K = 1986; 6T = 1986; 1H = 1981 or 1991', ['1981', '1986']],
    ['vague dates alone', '5K = 1985 or 1995; 5T = 1985 or 1995', ['1985', '1985']],
    ['a range of which the code says the year', '6K = 1986; 6T = 1986; 8H = 1985..1989', ['1986', '1988']],
    ['a code without a date', '6K = 1986; 9T = 1989; 1H = BE', ['1986', '1989']],
  ])('%s: %s', (_, rows, used) => {
    expect(builtOf(rows).used).toEqual(used);
  });
});

test('a running number behind the date takes as many figures as the codes that agree have', () => {
  expect(builtOf('6-1 = 1986; 9-123 = 1989').layout.at(-1)).toEqual({ serial: { min: 1, max: 3 } });
  expect(builtOf('6-12 = 1986; 9-12 = 1989').layout).toEqual([{ year: 1 }, { separator: '-' }, { serial: 2 }]);
});
