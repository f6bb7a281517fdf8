/** Ids of evidence by what it comes from, so that a finding can name what it rests on. */
export const evidenceId = {
  claim: (claimId: string) => `claim-${claimId}`,
  /** The days in which the country claimed existed. */
  country: (claimId: string) => `claim-${claimId}-country`,
  reading: (decodingId: string) => `reading-${decodingId}`,
  system: (decodingId: string) => `system-${decodingId}`,
  plant: (decodingId: string) => `plant-${decodingId}`,
  mark: (markId: string) => `mark-${markId}`,
  construction: (claimId: string) => `construction-${claimId}`,
  model: (claimId: string) => `model-${claimId}`,
  today: 'today',
  /** An age that the claim gives the piece, or the day that it names besides. */
  age: (claimId: string) => `age-${claimId}`,
  stamping: 'stamping',
  /** When the maker began to stamp, without an end. */
  stampingBegun: 'stamping-begun',
  stamped: (decodingId: string) => `stamped-${decodingId}`,
  size: (measureId: string) => `size-${measureId}`,
  modelSize: (side: string) => `model-size-${side}`,
  namedWidth: 'named-width',
  proportion: (sides: string) => `proportion-${sides}`,
  familyProportion: (sides: string) => `family-proportion-${sides}`,
  /** What was measured on a photo, and a number of the maker's file by its place there. */
  measured: (observationId: string) => `measured-${observationId}`,
  fileNumber: (at: number) => `file-number-${at}`,
  price: (what: string, at: number) => `price-${what}-${at}`,
  floor: (at: number) => `floor-${at}`,
  /** How the piece is, as a claim says, or the page's field for its condition. */
  quality: (claimId: string) => `quality-${claimId}`,
  conditionField: 'quality-field',
  codeText: (decodingId: string) => `code-text-${decodingId}`,
  /** What pieces in the same condition cost at least. */
  likeFloor: (at: number) => `floor-like-${at}`,
};
