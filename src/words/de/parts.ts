import { type KnownPartNames, type PartNames, partNamer } from '../parts';

/** The parts themselves, as a question about one of them names it. */
export const namedParts: PartNames = {
  body: 'die Außenseite',
  lining: 'das Futter',
  stitching: 'die Nähte',
  trim: 'der Besatz',
  hardware: 'die Metallteile',
  zip: 'der Reißverschluss',
  handle: 'die Henkel',
  strap: 'der Schulterriemen',
  base: 'der Boden',
  edge: 'die Kanten',
  tab: 'die Henkelansätze',
  lock: 'das Schloss',
  'dust-bag': 'der Staubbeutel',
  pattern: 'das Muster',
};

/** What a buyer looks at: the outside of a bag is seen from its front and its back. */
const looked: KnownPartNames = {
  ...namedParts,
  body: 'die Vorderseite',
  lining: 'die Innenseite',
  edge: 'die Ecken und Kanten',
  pattern: 'die Rückseite',
  clasp: 'der Verschluss',
  chain: 'die Kette',
  feet: 'die Füße',
  rivet: 'die Nieten',
  screw: 'die Schrauben',
  logo: 'das Logo',
  label: 'das Etikett',
  pocket: 'die Innentasche',
  card: 'die Karte',
};
export const parts = partNamer(looked);

/** The parts without an article: "Futter aus olive twill". */
export const bareParts: PartNames = {
  body: 'Außenseite',
  lining: 'Futter',
  stitching: 'Nähte',
  trim: 'Besatz',
  hardware: 'Metallteile',
  zip: 'Reißverschluss',
  handle: 'Henkel',
  strap: 'Schulterriemen',
  base: 'Boden',
  edge: 'Kanten',
  tab: 'Henkelansätze',
  lock: 'Schloss',
  'dust-bag': 'Staubbeutel',
  pattern: 'Muster',
};

/** Every part that a maker file can speak of without words of its own. */
export const fileParts: KnownPartNames = {
  ...bareParts,
  clasp: 'Verschluss',
  chain: 'Kette',
  feet: 'Füße',
  rivet: 'Nieten',
  screw: 'Schrauben',
  logo: 'Logo',
  label: 'Etikett',
  pocket: 'Innentasche',
  card: 'Karte',
};

/** A part of a maker file, as a question about it names it. */
export const namedPart = partNamer({ ...looked, ...namedParts });

/** A part as a maker file names it. */
export const filePart = partNamer(fileParts);
