import type { Said } from './fold';
import { countSource, findCounts } from './said-number';

const patterns = [
  new RegExp(
    `(?<![\\d.,\\p{L}$£€])${countSource}\\s{0,2}\\+?\\s{0,2}(?:items? sold|sold items|sales|completed sales|orders completed|transactions|verkaufte artikel|artikel verkauft|verkaufe|verkauft|ventes|articles vendus|ventes realisees|vendite|articoli venduti|oggetti venduti|ventas|articulos vendidos|productos vendidos|verkopen|verkochte artikelen|artikelen verkocht|keer verkocht|件の販売実績|件販売)(?![\\p{L}])`,
    'gu',
  ),
  new RegExp(
    `(?<![\\p{L}])(?:items sold|sales|total sales|completed sales|verkaufte artikel|verkaufe|ventes|articles vendus|vendite|articoli venduti|ventas|articulos vendidos|verkopen|verkochte artikelen|販売実績|取引件数|出品数)\\s{0,2}[::]\\s{0,2}${countSource}`,
    'gu',
  ),
  /(?<![\p{L}])(?:no sales yet|first sale|noch keine verkaufe|aucune vente|nessuna vendita|sin ventas|nog geen verkopen)(?![\p{L}])/gu,
];

/** How many pieces the seller has sold: "1,234 sales", "Verkaufte Artikel: 56"; "no sales yet" is 0. */
export const findSalesCounts = (text: string): Said<number>[] =>
  findCounts(text, patterns).map((said) => (/first sale/iu.test(said.words) ? { ...said, value: 0 } : said));
