import type { LayoutWords } from '../layout-words';

const parts = { year: 'Jahr', month: 'Monat', week: 'Woche', day: 'Tag', quarter: 'Quartal' } as const;
const backwards = (reversed: boolean) => (reversed ? ', rückwärts geschrieben' : '');

export const layouts: LayoutWords = {
  'year-letter': ({ first, place, letters, skipped }) =>
    `Jahresbuchstabe ab ${first} an Stelle ${place}, Buchstaben ${letters}${skipped === null ? '' : `; vermutlich ${skipped === '' ? 'keiner ausgelassen' : `ausgelassen: ${skipped}`}`}`,
  'year-digit': ({ place }) => `einstelliges Jahr an Stelle ${place}`,
  'two-digits': ({ of, places: [tens, units] }) =>
    `${of === 'year' ? 'zweistelliges Jahr' : parts[of]} an den Stellen ${tens} und ${units}`,
  'four-digits': ({ place, reversed }) => `vierstelliges Jahr ab Stelle ${place}${backwards(reversed)}`,
  'day-of-year': ({ place, reversed }) => `Tag des Jahres ab Stelle ${place}${backwards(reversed)}`,
  'one-of': ({ of, characters, place }) => `${parts[of]} als eines der Zeichen ${characters} an Stelle ${place}`,
  check: ({ rule }) => `Prüfzeichen (${rule}) am Ende`,
  plant: ({ from, to }) => `Werkstatt an den Stellen ${from} bis ${to}`,
  'plant-letters': () => 'Buchstaben einer Werkstatt, deren Land nicht bekannt ist',
  literal: ({ text }, kit) => `${kit.quote(text)} steht in jedem Code`,
  serial: ({ digits }) => (digits === 1 ? 'einstellige laufende Nummer' : `${digits}-stellige laufende Nummer`),
  'serial-table': () =>
    'laufende Nummer, die mit der Zeit steigt; ihre Tabelle enthält nur, was die bekannten Codes sagen',
  unexplained: ({ characters }) =>
    characters === 1 ? 'ein Zeichen ist nicht erklärt' : `${characters} Zeichen sind nicht erklärt`,
};
