import type { Said } from './fold';
import { countSource, findCounts } from './said-number';

const patterns = [
  new RegExp(
    `(?<![\\d.,\\p{L}])${countSource}\\s{0,2}\\+?\\s{0,2}(?:people |users |times |mal |fois |volte |veces |keer |personen |personnes |persone |personas |mensen )?(?:are watching|watching|watchers?|watched this|have favou?rited|favou?rites?|favou?rited|likes?|hearts?|saves|saved this|beobachter|beobachten|haben diesen|merken|gemerkt|merkliste|favoriten|favoris|suivent|suivi par|ajoute aux favoris|aggiunto ai preferiti|guardado|osservatori|osservano|preferiti|ti piace|seguidores|siguen|favoritos|me gusta|volgers|volgen|favorieten|keer bewaard|x bewaard|人がウォッチ|いいね)`,
    'gu',
  ),
  new RegExp(
    `(?<![\\p{L}])(?:watchers|watching|watch count|favou?rites|likes|saves|beobachter|favoriten|gemerkt|favoris|suivis|osservatori|preferiti|seguidores|favoritos|volgers|bewaard|favorieten|ウォッチ|ウォッチ数|いいね|お気に入り)\\s{0,2}[::(]?\\s{0,2}${countSource}`,
    'gu',
  ),
];

/** How many people watch or marked the listing: "12 watchers", "Beobachter: 4", "いいね 35". */
export const findWatchers = (text: string): Said<number>[] => findCounts(text, patterns);
