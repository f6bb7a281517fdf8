import { kitFor } from '../../kit';
import type { ScreenWords } from '../../screen-words';
import { differencesSaid, expectedSaid } from '../codes';

/** What is read of a stamp: lines, what they may mean, and codes by hand. */
export const stampStrings: ScreenWords['stamp'] = {
  title: 'Was der Stempel sagt',
  waiting: 'Noch wurde kein Foto gelesen.',
  none: 'In den gelesenen Fotos wurde kein Stempel gefunden.',
  unsure: 'Nicht sicher genug, um als gelesen zu gelten',
  unclear: (number) =>
    `${number === 1 ? 'Eine weitere Zeile' : `${number} weitere Zeilen`}, nicht sicher genug, um als gelesen zu gelten`,
  candidates: 'Vielleicht',
  mayGoOn:
    'Er kann außerhalb des Fotos oder über den erfassten Teil hinaus weitergehen, oder ein Wort daneben wurde mitgelesen.',
  tooLong:
    'Er ist länger als ein Datumscode, und keine Datei erklärt ihn: eine Nummer anderer Art, oder Worte neben dem Code.',
  otherNumber: {
    year: 'Er kann eine Jahreszahl sein: Worte stehen daneben, und keine Datei erklärt ihn als Code.',
    time: 'Er kann eine Uhrzeit sein: Ein Datum steht daneben, und keine Datei erklärt ihn als Code.',
    measure:
      'Er kann eine Größe oder ein Gewicht sein: Er endet auf das Zeichen einer Einheit, und keine Datei erklärt ihn als Code.',
    row: 'Er kann eine Reihe von Löchern oder Stichen sein: Seine Zeichen haben eine Form, und keine Datei erklärt ihn als Code.',
  },
  upsideDown: (text) => `Auf dem Kopf liest er sich als ${text}.`,
  alike: (place, may) => `Zeichen ${place} kann ${may.join(' oder ')} sein.`,
  share: (probability) => `${Math.round(probability * 100)} von 100`,
  noSystem: 'Keine Datei erklärt ihn bisher.',
  misfit: (slot, value, expected) => `${slot} ${value}: erwartet ${expectedSaid(expected, kitFor('de'))}`,
  nearest: (text, differences, system) => `Nahe: ${text}${differencesSaid(differences, kitFor('de'))}, nach ${system}`,
  barely: (system, says) => `Nicht sicher genug: ${says} nach ${system}.`,
  inPhoto: (number, copy = '') => (copy === '' ? `Foto ${number}` : `Foto ${number}, ${copy}`),
  inListing: 'Im Angebot zitiert',
  typed: 'Von dir eingegeben',
  pictureOf: (number) => `Die gestempelte Zeile in Foto ${number}`,
  type: 'Gib den Code ein, wie du ihn siehst',
  typeHint: 'Buchstaben und Ziffern; Leerzeichen sind gleich.',
  typeTooLong: (most) => `Das ist kein Stempel: Ein Code hat höchstens ${most} Zeichen.`,
  typeAction: 'Deuten',
  remove: (code) => `${code} entfernen`,
  reading: (system) => `nach ${system}`,
  alone: (shape) => `Nur nach seiner Form ist er ${shape}. Üblich, ohne Quelle.`,
  family: (shape) => `nur seiner Form, ${shape}; üblich, ohne Quelle`,
  families: {
    'year-month': 'Jahr und Monat',
    'month-year': 'Monat und Jahr',
    'year-week': 'Jahr und Woche',
    'week-year': 'Woche und Jahr',
    'year-month-three-digits': 'Jahr und einstelliger Monat',
    'month-year-three-digits': 'einstelliger Monat und Jahr',
    'month-stroke-year': 'Monat und Jahr mit Strich oder Punkt dazwischen',
    'year-stroke-month': 'Jahr und Monat mit Strich oder Punkt dazwischen',
    'week-stroke-year': 'Woche und Jahr mit Strich oder Punkt dazwischen',
    'year-stroke-week': 'Jahr und Woche mit Strich oder Punkt dazwischen',
    'year-month-plant': 'Jahr, Monat und zwei Buchstaben eines Werks',
    'month-year-plant': 'Monat, Jahr und zwei Buchstaben eines Werks',
    'plant-year-month': 'zwei Buchstaben eines Werks, Jahr und Monat',
    'plant-month-year': 'zwei Buchstaben eines Werks, Monat und Jahr',
    'plant-week-year': 'zwei Buchstaben eines Werks, Woche und Jahr',
    'plant-year-week': 'zwei Buchstaben eines Werks, Jahr und Woche',
    'plant-interleaved-month': 'zwei Buchstaben eines Werks, die Ziffern von Monat und Jahr abwechselnd',
    'plant-interleaved-week': 'zwei Buchstaben eines Werks, die Ziffern von Woche und Jahr abwechselnd',
    'letter-cycle':
      'ein Buchstabe, der für ein Jahr einer Reihe stehen kann, und eine Zahl: nur die Liste des Herstellers datiert sie',
    'framed-letter':
      'ein gerahmter Buchstabe, der für ein Jahr einer Reihe stehen kann: nur die Liste des Herstellers datiert ihn',
    serial: 'eine laufende Nummer, die ohne die Tabelle des Herstellers nichts datiert: vergleiche Aufkleber und Karte',
    'long-serial':
      'eine lange laufende Nummer, die ohne die Tabelle des Herstellers nichts datiert: vergleiche Aufkleber und Karte',
  },
  otherReadings: (number) => (number === 1 ? 'eine andere Lesart' : `${number} andere Lesarten`),
};
