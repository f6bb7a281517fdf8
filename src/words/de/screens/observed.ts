import type { ScreenWords } from '../../screen-words';

/** Was auf einem Foto zu sehen ist oder gemessen wurde, und die Einheiten. */
export const observedStrings: ScreenWords['observed'] = {
  title: 'Auf diesem Foto gemessen',
  byHand: 'von dir gesetzt',
  notMeasured: 'nicht gemessen',
  yes: 'ja',
  no: 'nein',
  within: (value, uncertainty) => `${value} ± ${uncertainty}`,
  units: {
    px: (value) => `${value} px`,
    degree: (value) => `${value}°`,
    share: (value) => value,
    step: (value) => `${value} von 255`,
  },
  what: {
    'longer-side': 'Längere Seite',
    'shorter-side': 'Kürzere Seite',
    sharpness: 'Schärfe',
    'too-weak': 'Zu klein oder zu unscharf, um einen Stempel zu zeigen',
    'ground-lightness': 'Helligkeit des Grundes',
    'ground-spread': 'Unebenheit des Grundes',
    'ground-noise': 'Körnung des Grundes',
    margin: 'Anteil eines gleichmäßigen Rands um das Bild',
    hash: 'Prüfwert, der dasselbe Foto wiedererkennt',
    'screen-bars': 'Leisten eines Telefonbildschirms',
    watermark: 'Webadresse im Foto',
    print: 'Druckschrift',
    'stamp-line': 'Geprägte Zeile',
    code: 'Code',
  },
};
