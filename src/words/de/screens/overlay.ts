import type { ScreenWords } from '../../screen-words';

const percent = (value: number) => `${String(value).replace('.', ',')}\u00a0%`;

/** Was auf einem Foto liegt, und die Griffe, die es bewegen. */
export const overlayStrings: ScreenWords['overlay'] = {
  handle: 'Griff',
  named: (label, handle) => `${label}, ${handle}`,
  whole: 'alles zusammen',
  point: 'Punkt',
  start: 'Anfang',
  end: 'Ende',
  topLeft: 'oben links',
  topRight: 'oben rechts',
  bottomRight: 'unten rechts',
  bottomLeft: 'unten links',
  corner: (number, of) => `Ecke ${number} von ${of}`,
  at: (across, down) => `${percent(across)} von links, ${percent(down)} von oben`,
  hint: 'Zieh an einem Griff, oder wähle einen und bewege ihn mit den Pfeiltasten; mit der Umschalttaste geht er weiter.',
};
