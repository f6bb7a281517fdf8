import type { ScreenWords } from '../../screen-words';

/** What stands at the head of a case. */
export const headStrings: ScreenWords['head'] = {
  title: 'Was feststeht',
  against: 'Dagegen spricht',
  open: 'Noch offen',
  notLookedAt: 'Nicht angesehen',
  nothing: 'In dem, was angesehen wurde, ist nichts gefunden worden.',
  nothingWithoutFile: 'Nach dem, was für jede Tasche gilt, ist nichts gefunden worden.',
  aside: 'Du hast etwas zurückgestellt: Es steht unten.',
  nothingOpen: 'Nichts weiter in dem, was angesehen wurde.',
  more: 'Weiter unten steht mehr.',
  failed: (checks) =>
    `Ein Teil von Tellstamp ist hier ausgefallen, und was er ansieht, ist nicht beurteilt: ${checks.join(', ')}.`,
  photos: (numbers) => `${numbers.length === 1 ? 'Foto' : 'Fotos'} ${numbers.join(', ')}: nicht gelesen.`,
  withoutFile: (maker) =>
    `Was nur eine Datei über ${maker || 'den Hersteller'} sagen könnte: Zeit, Werkstatt, Maße, Materialien.`,
  untold: (reasons, more) =>
    `Manches ließ sich nicht sagen: ${reasons.join('; ')}${more ? '; weiter unten mehr' : ''}.`,
  never: 'Wer es gemacht hat: Das kann kein Foto zeigen. Leder, Stiche, Metall, Farben: nicht gemessen.',
  onlyMarked:
    'Wer es gemacht hat: Das kann kein Foto zeigen. Leder, Stiche, Metall, Farben: nur gemessen, wo Sie es markiert haben.',
};
