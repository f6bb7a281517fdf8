import type { MenuWords } from '../menu';

/** What the browser's own menus say; nothing else may come in here, because the background loads it. */
export const menu: MenuWords = {
  readListing: 'Dieses Angebot mit Tellstamp lesen',
  openList: 'Merkliste öffnen',
};
