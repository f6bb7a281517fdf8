/** What the browser's own menus say; nothing else may come in here, because the background loads it. */
export const menu = {
  readListing: 'Read this listing with Tellstamp',
  openList: 'Open the watch list',
};
