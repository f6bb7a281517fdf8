import type { Migration } from '.';

/**
 * From version 2 a record keeps its earlier looks, and other notes beside the buyer's own. The key of the listing's
 * address left the record: it is worked out anew, so that a better rule finds old records too.
 */
export const keepBoth: Migration = {
  to: 2,
  migrate: async ({ key: _key, ...raw }) => ({ otherNotes: [], earlier: [], ...raw }),
};
