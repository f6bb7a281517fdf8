import type { Layout, Period, Slot } from '../maker/types';
import { type Book, openSystem } from './book';

/** A code system's shape without a maker. */
export interface CodeFamily {
  id: string;
  used: Period;
  /** Ways to write it; most have one. */
  layouts: Layout[];
  /** Share among the families: shapes that nearly anything fits weigh little. */
  weight: number;
}

/**
 * Stamped dates of leather goods are hardly older than this, and two digits are then of one century: common practice,
 * no source. No family has years of its own: when a shape was in use is a maker's own affair.
 */
const anyYears: Period = ['1940', null];

const between: Slot = { separator: '-. /', optional: true };
/** A stroke or a dot that has to be there. */
const stroke: Slot = { separator: '/.-' };
const [year, month, week]: Slot[] = [{ year: 2 }, { month: 2 }, { week: 2 }];
const plant: Slot = { plant: 2 };

const family = (id: string, weight: number, ...layouts: Layout[]): CodeFamily => ({
  id,
  used: anyYears,
  layouts,
  weight,
});

/** Shapes that makers of leather goods have used: common practice, no source. A maker file says which, and when. */
export const codeFamilies: CodeFamily[] = [
  family('year-month', 1, [year!, month!]),
  family('month-year', 0.7, [month!, year!]),
  family('year-week', 0.3, [year!, week!]),
  family('week-year', 0.4, [week!, year!]),
  family('year-month-three-digits', 0.7, [year!, { month: '1-9' }]),
  family('month-year-three-digits', 0.4, [{ month: '1-9' }, year!]),
  family(
    'month-stroke-year',
    4,
    [month!, stroke, year!],
    [{ month: '1-9' }, stroke, year!],
    [month!, stroke, { year: 4 }],
    [{ month: '1-9' }, stroke, { year: 4 }],
  ),
  family(
    'year-stroke-month',
    1.5,
    [year!, stroke, month!],
    [year!, stroke, { month: '1-9' }],
    [{ year: 4 }, stroke, month!],
  ),
  family('week-stroke-year', 0.5, [week!, stroke, year!]),
  family('year-stroke-week', 0.4, [year!, stroke, week!]),
  family('year-month-plant', 0.8, [year!, month!, between, plant]),
  family('month-year-plant', 0.5, [month!, year!, between, plant]),
  family('plant-year-month', 0.5, [plant, between, year!, month!]),
  family('plant-month-year', 0.4, [plant, between, month!, year!]),
  family('plant-week-year', 0.3, [plant, between, week!, year!]),
  family('plant-year-week', 0.3, [plant, between, year!, week!]),
  family('plant-interleaved-month', 1, [
    plant,
    { month: 'tens' },
    { year: 'tens' },
    { month: 'units' },
    { year: 'units' },
  ]),
  family('plant-interleaved-week', 0.8, [
    plant,
    { week: 'tens' },
    { year: 'tens' },
    { week: 'units' },
    { year: 'units' },
  ]),
  family('letter-cycle', 0.1, [{ any: 1, of: 'letter' }, between, { serial: { min: 1, max: 6 } }]),
  family(
    'framed-letter',
    0.05,
    [{ separator: '([{' }, { any: 1, of: 'letter' }, { separator: ')]}' }],
    [{ separator: '([{' }, { any: 1, of: 'letter' }, { separator: ')]}' }, between, { serial: { min: 1, max: 6 } }],
  ),
  family('serial', 0.05, [{ serial: { min: 4, max: 10 } }]),
  family('long-serial', 0.02, [{ serial: { min: 11, max: 20 } }]),
];

/** The families as a book without a maker. */
export const familyBook: Book = {
  maker: null,
  systems: codeFamilies.map(
    ({ weight, layouts, ...rest }) =>
      // A family counts once, however many ways it has to be written.
      openSystem({ ...rest, layouts }, null, new Map(), weight / layouts.length).system,
  ),
};
