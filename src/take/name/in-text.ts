/** The makers that a heading below the main one names, alone or among words of headings; a heading may have capitals only. */
export const makersOfHeading = (heading: string, makers: readonly string[]): string[] =>
  makers.filter((maker) => heading.toLowerCase().includes(maker.toLowerCase()));

/** Makers that a text names, in order of their place. */
export const makersIn = (text: string, makers: readonly string[]): string[] =>
  makers
    .map((maker) => ({ maker, at: text.indexOf(maker) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at)
    .map(({ maker }) => maker);
