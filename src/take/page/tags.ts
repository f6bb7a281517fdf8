/** Elements that stand within a line of text and break none. */
export const inlineTags: ReadonlySet<string> = new Set(
  'a abbr b bdi bdo cite code data del dfn em font i ins kbd label mark q ruby s samp small span strike strong sub sup time u var wbr tt big center'.split(
    ' ',
  ),
);
