import type { PartNames } from '../parts';

export const parts: PartNames = {
  body: 'die Vorderseite',
  lining: 'die Innenseite',
  stitching: 'die Nähte',
  trim: 'der Besatz',
  hardware: 'die Metallteile',
  zip: 'der Reißverschluss',
  handle: 'die Henkel',
  strap: 'der Schulterriemen',
  base: 'der Boden',
  edge: 'die Ecken und Kanten',
  tab: 'die Henkelansätze',
  lock: 'das Schloss',
  'dust-bag': 'der Staubbeutel',
  pattern: 'die Rückseite',
};
