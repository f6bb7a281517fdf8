import type { EachLanguage } from './each-language';

/*
 * Small words that join what a claim is read from: parts of patterns over folded text. None says anything by itself.
 * Common practice, no source.
 */

/** What joins two pieces of one title; the Japanese word stands without gaps. */
export const alsoNamed: EachLanguage = ['and|plus', 'et|plus', 'und|plus|sowie', 'ed?', 'y', 'en|plus', 'と'];
export const alongWith: EachLanguage = ['with', 'avec', 'mit', 'con', 'con', 'met', ''];
/** Before a noun that was not named yet. */
export const oneMore: EachLanguage = ['an?|the|its', 'une?', 'eine?|eine[rmn]', 'una?|uno', 'una?', 'een', ''];
export const named: EachLanguage = ['the', 'l[ae]', 'd(?:er|ie|as)', 'il|la', 'el|la', 'de|het', ''];
/** What goes on behind the name of the last piece, so that the name ends there. */
export const behindName: EachLanguage = [
  'set|lot|bundle|duo|in|from|of|made',
  'ensemble|lot|duo|de',
  'set|duo|in|aus|von',
  'set|duo|in|di',
  'conjunto|lote|duo|de',
  'set|duo|in|van',
  'の?セット',
];
/** "Two bags in one": one piece after all. */
export const asOne: EachLanguage = [
  '(?:in|as)\\s(?:1|one)',
  'en\\s(?:1|une?)',
  'in\\s(?:1|eine[mr])',
  'in\\s(?:1|un[oa]?)',
  'en\\s(?:1|un[oa]?)',
  'in\\s(?:1|een)',
  '',
];

/** How words end that deny that something is original: of a part as well as of the maker. */
export const original: EachLanguage = ['original', 'original', 'original', 'originale', 'original', 'origineel', ''];
/** Words of style that hint at a maker only where a name follows. */
export const needsName: EachLanguage = ['', 'facon', '', 'in\\sstile', '', '', ''];
/** How words end behind which a maker stands, or a look. */
export const comparedWith: EachLanguage = ['by|of', 'de|par|a', 'von|durch|an', 'a|di', 'a|de|en', 'op|door|van', ''];

/** Before a year that is one of making, whatever is said of a purchase ahead of it. */
export const madeAhead: EachLanguage = [
  'made',
  'fabriqu\\w*',
  'hergestellt',
  'prodott\\w*',
  'fabricad\\w*',
  'gemaakt',
  '',
];
/** Right behind a year that is one of making. */
export const madeBehind: EachLanguage = [
  'made|model(?!\\s?\\d)|production',
  'production',
  'hergestellt',
  'produzione',
  'produccion',
  'productie',
  '年製|(?:[\\p{Script=Katakana}ー]{2,10}|[\\p{Script=Han}]{1,3})?製|製造',
];

/** "Founded", as it is cut short before a year. */
export const foundedShort: EachLanguage = ['est|estd', 'fond', 'gegr', 'fond', 'fund', 'opg', ''];
/** Behind a name that the seller only supposes. */
export const iThink: EachLanguage = [
  'i think|i believe|maybe',
  'je crois',
  'vermutlich',
  'credo',
  'creo',
  'denk ik',
  '',
];

/** Between a thing and the maker whose it is: "wallet by Ondrasse". */
export const whose: EachLanguage = ['by|from|of', 'de|par', 'von', 'd[ai]', 'de', 'van', ''];
/** Between a piece and a name that may be its maker's: only where the name has a capital. */
export const byWhom: EachLanguage = ['by', 'par', 'von', '', '', 'door', ''];
/** Before what is not accepted, and behind it. */
export const notBefore: EachLanguage = ['not|never|no', 'pas|non', 'nicht', 'non|mai', 'no|nunca', 'niet|nooit', ''];
export const notBehind: EachLanguage = ['not', 'pas', 'nicht', '', '', 'niet', 'ません|不可|ない'];
