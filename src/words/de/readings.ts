import type { ReadingWords } from '../reading-words';
import { sayTells } from '../say-reading';

const names = {
  year: 'Jahr',
  month: 'Monat',
  quarter: 'Quartal',
  week: 'Woche',
  day: 'Tag',
  'day-of-year': 'Tag im Jahr',
  serial: 'laufende Nummer',
  plant: 'Werkstatt',
  check: 'Prüfzeichen',
  fixed: 'feste Zeichen',
  any: 'Zeichen',
};

export const readings: ReadingWords = {
  tells: {
    year: ({ year }) => String(year),
    month: ({ month }, kit) => kit.month(month),
    quarter: ({ number }) => `${number}. Quartal`,
    week: ({ number }) => `Woche ${number}`,
    day: ({ number }) => `Tag ${number}`,
    'day-of-year': ({ number }) => `${number}. Tag des Jahres`,
    serial: ({ number }) => `Nummer ${number}`,
    plant: ({ place }, kit) => (place === null ? 'Ort nicht bekannt' : kit.place(place)),
    check: () => 'passt zu den anderen Zeichen',
    fixed: () => 'steht immer da',
    any: () => 'nicht erklärt',
  },
  reasons: {
    part: ({ value, tells }, kit) => `${names[tells.kind]} ${kit.quote(value)}: ${sayTells(tells, kit.language)}`,
    century: ({ used }, kit) => `Jahrhundert oder Jahrzehnt folgen aus der Zeit der Schreibweise: ${kit.span(used)}`,
    'check-agrees': () => 'das Prüfzeichen passt',
    'in-table': () => 'die Nummer liegt in einem Bereich der Tabelle',
    'in-future': () => 'das Datum liegt in der Zukunft',
    'system-not-in-use': ({ used }, kit) =>
      `die Schreibweise war zu ihrem eigenen Datum nicht in Gebrauch: sie galt ${kit.span(used)}`,
    'plant-not-in-use': ({ used }, kit) =>
      `die Werkstatt arbeitete zu dieser Zeit nicht: sie arbeitete ${kit.list(used.map((one) => kit.span(one)))}`,
  },
  places: {
    year: 'Jahr',
    month: 'Monat',
    week: 'Woche',
    quarter: 'Quartal',
    day: 'Tag',
    'day of year': 'Tag im Jahr',
    plant: 'Werkstatt',
    serial: 'laufende Nummer',
    check: 'Prüfzeichen',
  },
};
