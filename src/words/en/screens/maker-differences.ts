/** The words by which two files of one maker are held side by side. */
export const differenceStrings = {
  /** Which entry of a list it is in which they differ. */
  differs: {
    plant: (code: string, country: string) => `Workshop ${code} in ${country}`,
    system: (name: string) => `Code system “${name}”`,
    carrier: (kind: string, where: string) => `On ${kind}: ${where}`,
    mark: (texts: string) => `Mark ${texts}`,
    part: (name: string) => `Part ${name}`,
    construction: (part: string, is: string) => `${part}: ${is}`,
    model: (name: string) => `Model ${name}`,
    number: (kind: string, part: string) => `${kind}: ${part}`,
    typeface: (looks: string) => `Characters: ${looks}`,
    price: (model: string | null, condition: string, year: number, currency: string) =>
      `Price of ${model ?? 'any piece'}, ${condition}, ${year}, ${currency}`,
  },
  sides: {
    width: (length: number) => `width ${length}`,
    height: (length: number) => `height ${length}`,
    depth: (length: number) => `depth ${length}`,
  },
  sizeWithin: (sides: string, unit: string, tolerance: number) => `${sides} ${unit}, tolerance ± ${tolerance}`,
  piecesMade: (number: number) => `${number} made`,
  /** What a field is called, inside a line. */
  inLine: (label: string) => label.charAt(0).toLowerCase() + label.slice(1),
};
