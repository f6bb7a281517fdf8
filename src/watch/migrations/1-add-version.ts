import type { Migration } from '.';

/**
 * Records of the first trial builds had no version, no note and no bin. They were never published; the step stands
 * so that the chain has a first link, and so that an export made then still imports.
 */
export const addVersion: Migration = {
  to: 1,
  migrate: async (raw) => ({ note: '', removedAt: null, pictures: [], ...raw }),
};
