/** What stores, and the browser's page of extensions, say of this one. */
export const manifest = {
  description:
    "Reads a second-hand listing, decodes the maker's stamp, and shows what agrees, what contradicts and what to ask.",
};
