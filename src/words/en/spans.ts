import type { SpanForms } from '../span-forms';

export const spans: SpanForms = {
  any: 'any date',
  upTo: (end) => `up to ${end}`,
  from: (start) => `from ${start}`,
  weekOf: (day) => `the week of ${day}`,
  decade: (first) => `the ${first}s`,
  range: (start, end) => `${start} to ${end}`,
  about: (words) => `about ${words}`,
  during: { closed: (start, end) => `from ${start} to ${end}`, one: (words) => `in ${words}` },
};
