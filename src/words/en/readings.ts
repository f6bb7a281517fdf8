import type { ReadingWords } from '../reading-words';
import { sayTells } from '../say-reading';

const names = {
  year: 'year',
  month: 'month',
  quarter: 'quarter',
  week: 'week',
  day: 'day',
  'day-of-year': 'day of year',
  serial: 'serial number',
  plant: 'workshop',
  check: 'check character',
  fixed: 'fixed characters',
  any: 'characters',
};

export const readings: ReadingWords = {
  tells: {
    year: ({ year }) => String(year),
    month: ({ month }, kit) => kit.month(month),
    quarter: ({ number }) => `quarter ${number}`,
    week: ({ number }) => `week ${number}`,
    day: ({ number }) => `day ${number}`,
    'day-of-year': ({ number }) => `day ${number} of the year`,
    serial: ({ number }) => `number ${number}`,
    plant: ({ place }, kit) => (place === null ? 'place not known' : kit.place(place)),
    check: () => 'agrees with the other characters',
    fixed: () => 'always there',
    any: () => 'not explained',
  },
  reasons: {
    part: ({ value, tells }, kit) => `${names[tells.kind]} ${kit.quote(value)}: ${sayTells(tells, kit.language)}`,
    century: ({ used }, kit) => `the century or decade follows from the system's period: ${kit.span(used)}`,
    'check-agrees': () => 'the check character agrees',
    'in-table': () => 'the number lies in a range of the table',
    'in-future': () => 'the date lies in the future',
    'system-not-in-use': ({ used }, kit) => `code's system not in use at its own date: it was used ${kit.span(used)}`,
    'plant-not-in-use': ({ used }, kit) =>
      `workshop not in use at that date: it worked ${kit.list(used.map((one) => kit.span(one)))}`,
  },
  places: {
    year: 'year',
    month: 'month',
    week: 'week',
    quarter: 'quarter',
    day: 'day',
    'day of year': 'day of the year',
    plant: 'workshop',
    serial: 'running number',
    check: 'check character',
  },
};
