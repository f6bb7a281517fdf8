import type { Said } from './fold';
import { countSource, findCounts } from './said-number';

const patterns = [
  new RegExp(
    `(?<![\\d.,\\p{L}$£€])${countSource}\\s{0,2}(?:bids?|bidders|gebote?|bieter|encheres?|encherisseurs|offerte|rilanci|pujas?|ofertas|biedingen|bod|件の入札|入札)(?![\\p{L}])`,
    'gu',
  ),
  new RegExp(
    `(?<![\\p{L}])(?:number of bids|bids|gebote|anzahl gebote|encheres|offerte|numero di offerte|pujas|biedingen|入札件数|入札数|入札)\\s{0,2}[::(]\\s{0,2}${countSource}`,
    'gu',
  ),
  /(?<![\p{L}])(?:no bids yet|no bids|be the first to bid|keine gebote|noch keine gebote|aucune enchere|nessuna offerta|sin pujas|nog geen biedingen|geen biedingen)(?![\p{L}])|入札なし/gu,
];

/** Number of bids shown: "7 bids", "Gebote: 3"; "no bids yet" is 0. */
export const findBids = (text: string): Said<number>[] => findCounts(text, patterns);
