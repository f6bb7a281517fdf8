import type { CodeSystem } from '../maker/types';
import { type Book, openSystem } from './book';

/** A code system's shape without a maker. */
export interface CodeFamily extends Pick<CodeSystem, 'id' | 'used' | 'layout'> {
  name: string;
  /** Share among the families: shapes that nearly anything fits weigh little. */
  weight: number;
}

/**
 * Shapes that makers of leather goods have used, with the decades in which they are met: common practice, no source.
 * The periods are wide on purpose; a maker file narrows them.
 */
export const codeFamilies: CodeFamily[] = [
  {
    id: 'year-month-three-digits',
    name: 'three digits: year, year, month',
    used: ['1979', '1989'],
    layout: [{ year: 2 }, { month: '1-9' }],
    weight: 1,
  },
  {
    id: 'year-month-four-digits',
    name: 'four digits: year, year, month, month',
    used: ['1980', '1999'],
    layout: [{ year: 2 }, { month: 2 }],
    weight: 1,
  },
  {
    id: 'year-month-plant',
    name: 'four digits, then plant letters: year, year, month, month',
    used: ['1980', '1999'],
    layout: [{ year: 2 }, { month: 2 }, { separator: '-. /', optional: true }, { plant: 2 }],
    weight: 1,
  },
  {
    id: 'plant-year-month',
    name: 'plant letters, then four digits: year, year, month, month',
    used: ['1980', '1999'],
    layout: [{ plant: 2 }, { separator: '-. /', optional: true }, { year: 2 }, { month: 2 }],
    weight: 0.5,
  },
  {
    id: 'plant-interleaved-month',
    name: 'two plant letters and four digits: first and third the month, second and fourth the year',
    used: ['1988', '2009'],
    layout: [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }],
    weight: 1,
  },
  {
    id: 'plant-interleaved-week',
    name: 'two plant letters and four digits: first and third the week, second and fourth the year',
    used: ['2005', '2023'],
    layout: [{ plant: 2 }, { week: 'tens' }, { year: 'tens' }, { week: 'units' }, { year: 'units' }],
    weight: 1,
  },
  {
    id: 'letter-cycle',
    name: 'a letter and a number: the letter may stand for a year of a cycle that only the maker knows',
    used: ['1940', '2023'],
    layout: [{ any: 1, of: 'letter' }, { separator: '-. /', optional: true }, { serial: { min: 1, max: 6 } }],
    weight: 0.1,
  },
  {
    id: 'serial',
    name: 'a running number, which dates nothing without the maker’s table',
    used: ['1940', '2023'],
    layout: [{ serial: { min: 4, max: 10 } }],
    weight: 0.05,
  },
  {
    id: 'long-serial',
    name: 'a long running number, which dates nothing without the maker’s table',
    used: ['1940', '2023'],
    layout: [{ serial: { min: 11, max: 20 } }],
    weight: 0.02,
  },
];

/** The families as a book without a maker. */
export const familyBook: Book = {
  maker: null,
  systems: codeFamilies.map((family) => openSystem(family, null, new Map(), family.weight).system),
};
