/** The maker that a heading below the main one names, alone or among words of headings. */
export const makerOfHeading = (heading: string, makers: readonly string[]): string | null =>
  makers.find((maker) => heading.toLowerCase().includes(maker.toLowerCase())) ?? null;

/** Makers that a text names, in order of their place. */
export const makersIn = (text: string, makers: readonly string[]): string[] =>
  makers
    .map((maker) => ({ maker, at: text.indexOf(maker) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at)
    .map(({ maker }) => maker);
