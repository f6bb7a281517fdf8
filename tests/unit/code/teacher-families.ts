import type { KnownCode } from '../../../src/code/teacher';
import type { Layout } from '../../../src/maker/types';
import { isoWeeksInYear } from '../../../src/span';
import { pick } from '../../reference/number-systems';

const two = (number: number) => String(number).padStart(2, '0');
const plants: [string, string][] = [
  ['KV', 'BE'],
  ['HJ', 'FR'],
  ['ZM', 'ES'],
  ['LD', 'BE'],
];

export interface Family {
  name: string;
  layout: Layout;
  example: (chance: () => number) => KnownCode;
}
const between = (chance: () => number, first: number, last: number) =>
  first + Math.floor(chance() * (last - first + 1));

/** Each family's own arithmetic written out once more, so that the teacher is not tested with the decoder's. */
export const families: Family[] = [
  {
    name: 'three digits: year, year, month',
    layout: [{ year: 2 }, { month: '1-9' }],
    example: (chance) => {
      const [year, month] = [between(chance, 1979, 1989), between(chance, 1, 9)];
      return { code: `${year % 100}${month}`, reads: `${year}-${two(month)}` };
    },
  },
  {
    name: 'four digits: year, year, month, month',
    layout: [{ year: 2 }, { month: 2 }],
    example: (chance) => {
      const [year, month] = [between(chance, 1980, 1999), between(chance, 1, 12)];
      return { code: `${year % 100}${two(month)}`, reads: `${year}-${two(month)}` };
    },
  },
  {
    name: 'year, year, month, month, plant',
    layout: [{ year: 2 }, { month: 2 }, { plant: 2 }],
    example: (chance) => {
      const [year, month, [plant, place]] = [between(chance, 1980, 1999), between(chance, 1, 12), pick(chance, plants)];
      return { code: `${year % 100}${two(month)}${plant}`, reads: `${year}-${two(month)}, ${place}` };
    },
  },
  {
    name: 'plant, year, year, month, month',
    layout: [{ plant: 2 }, { year: 2 }, { month: 2 }],
    example: (chance) => {
      const [year, month, [plant, place]] = [between(chance, 1980, 1999), between(chance, 1, 12), pick(chance, plants)];
      return { code: `${plant}${year % 100}${two(month)}`, reads: `${year}-${two(month)}, ${place}` };
    },
  },
  {
    name: 'plant, interleaved month and year',
    layout: [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }],
    example: (chance) => {
      const [year, month, [plant, place]] = [between(chance, 1990, 2006), between(chance, 1, 12), pick(chance, plants)];
      const [m, y] = [two(month), two(year % 100)];
      return { code: `${plant}${m[0]}${y[0]}${m[1]}${y[1]}`, reads: `${year}-${m}, ${place}` };
    },
  },
  {
    name: 'plant, interleaved week and year',
    layout: [{ plant: 2 }, { week: 'tens' }, { year: 'tens' }, { week: 'units' }, { year: 'units' }],
    example: (chance) => {
      const [year, [plant, place]] = [between(chance, 2007, 2023), pick(chance, plants)];
      const week = two(between(chance, 1, isoWeeksInYear(year)));
      const y = two(year % 100);
      return { code: `${plant}${week[0]}${y[0]}${week[1]}${y[1]}`, reads: `${year}-W${week}, ${place}` };
    },
  },
  {
    name: 'letter of a cycle, quarter, number',
    layout: [{ year: 'cycle', letters: 'ABCDEFGHKLMNPRSTVWXY', first: 1962 }, { quarter: 1 }, { serial: 4 }],
    example: (chance) => {
      const [at, quarter] = [between(chance, 0, 19), between(chance, 1, 4)];
      const code = `${'ABCDEFGHKLMNPRSTVWXY'[at]}${quarter}${between(chance, 1000, 9999)}`;
      return { code, reads: `${1962 + at}-Q${quarter}` };
    },
  },
];

/** The cycle's first letter may be told as any year of the same remainder; which years are known decides. */
export const normal = (layout: Layout) =>
  JSON.stringify(
    layout.map((slot) =>
      'year' in slot && slot.year === 'cycle' ? { year: 'cycle', letters: slot.letters.length > 18 } : slot,
    ),
  );
