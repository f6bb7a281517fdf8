import type { ScreenWords } from '../../screen-words';

/** First words of the fields' names that are no nouns: only they lose their capital inside a line. */
const noNoun = /^(?:Mindestens|Höchstens|Nur|Deckt|Zwölf)(?!\p{L})/u;

/** The words by which two files of one maker are held side by side. */
export const differenceStrings = {
  differs: {
    plant: (code, country) => `Werkstatt ${code}, ${country}`,
    system: (name) => `Aufbau „${name}“`,
    carrier: (kind, where) => `Auf ${kind}: ${where}`,
    mark: (texts) => `Zeichen ${texts}`,
    part: (name) => `Teil ${name}`,
    construction: (part, is) => `${part}: ${is}`,
    model: (name) => `Modell ${name}`,
    number: (kind, part) => `${kind}: ${part}`,
    typeface: (looks) => `Schrift: ${looks}`,
    price: (model, condition, year, currency) =>
      `Preis ${model === null ? 'irgendeines Stücks' : `von ${model}`}, ${condition}, ${year}, ${currency}`,
  },
  sides: {
    width: (length) => `Breite ${length}`,
    height: (length) => `Höhe ${length}`,
    depth: (length) => `Tiefe ${length}`,
  },
  sizeWithin: (sides, unit, tolerance) => `${sides} ${unit}, Toleranz ± ${tolerance}`,
  piecesMade: (number) => `${number} Stück gefertigt`,
  inLine: (label) => (noNoun.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label),
} satisfies Partial<ScreenWords['makers']>;
