import type { SpanForms } from '../span-forms';

export const spans: SpanForms = {
  any: 'jede Zeit',
  upTo: (end) => `bis ${end}`,
  from: (start) => `ab ${start}`,
  weekOf: (day) => `die Woche ab ${day}`,
  decade: (first) => `die ${first}er Jahre`,
  range: (start, end) => `${start} bis ${end}`,
  about: (words) => `um ${words}`,
  during: { closed: (start, end) => `von ${start} bis ${end}`, one: (words) => `im Zeitraum ${words}` },
};
