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
};
