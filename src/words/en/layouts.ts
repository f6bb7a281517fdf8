import type { LayoutWords } from '../layout-words';

const parts = { year: 'year', month: 'month', week: 'week', day: 'day', quarter: 'quarter' } as const;
const backwards = (reversed: boolean) => (reversed ? ', backwards' : '');

export const layouts: LayoutWords = {
  'year-letter': ({ first, place, letters, skipped }) =>
    `year letter from ${first} in place ${place}, letters ${letters}${skipped === null ? '' : `; ${skipped || 'none'} taken to be skipped`}`,
  'year-digit': ({ place }) => `year of one digit in place ${place}`,
  'two-digits': ({ of, places: [tens, units] }) =>
    `${of === 'year' ? 'year of two digits' : parts[of]} in places ${tens} and ${units}`,
  'four-digits': ({ place, reversed }) => `year of four digits from place ${place}${backwards(reversed)}`,
  'day-of-year': ({ place, reversed }) => `day of the year from place ${place}${backwards(reversed)}`,
  'one-of': ({ of, characters, place }) => `${parts[of]} as one of ${characters} in place ${place}`,
  check: ({ rule }) => `check character (${rule}) at the end`,
  plant: ({ from, to }) => `workshop in places ${from} to ${to}`,
  'plant-letters': () => 'workshop letters, countries not known',
  literal: ({ text }, kit) => `${kit.quote(text)} stands in every code`,
  serial: ({ digits }) => (digits === 1 ? 'running number of one digit' : `running number of ${digits} digits`),
  'serial-table': () => 'running number that rises with the date; its table holds only what the known codes tell',
  unexplained: ({ characters }) =>
    characters === 1 ? 'one character not explained' : `${characters} characters not explained`,
};
