import type { EachLanguage } from './each-language';

/** "Made in", as it ends right before a country's name. Written words, accents and all. */
export const madeIn: EachLanguage = [
  '(?:made|crafted|handmade|hand-made|handcrafted|hand-crafted|manufactured|produced|sewn|stitched)(?: by hand| entirely| exclusively| wholly)? in(?: the)?|product of(?: the)?|country of (?:origin|manufacture)\\s{0,4}:?(?: the)?|origin\\s{0,4}:',
  "(?:fabriquée?s?|faite?s?|confectionnée?s?|produite?s?)(?: (?:à la )?main)? (?:en|au|aux|à)|pays (?:d['’]origine|de fabrication)\\s{0,4}:?",
  '(?:hergestellt|gefertigt|handgefertigt|produziert|genäht|gemacht) in(?: de[rn])?|herkunftsland\\s{0,4}:?',
  "(?:fatt[aoei]|prodott[aoei]|fabbricat[aoei]|realizzat[aoei])(?: a mano)? (?:in|nel|nei|negli|ad?)|paese d['’]origine\\s{0,4}:?",
  '(?:hech[ao]s?|fabricad[ao]s?|confeccionad[ao]s?|elaborad[ao]s?|se (?:fabric(?:ó|aron)|hi(?:zo|cieron)|elabor(?:ó|aron)|confeccion(?:ó|aron)))(?: a mano)? en(?: los?)?|país de (?:origen|fabricación)\\s{0,4}:?',
  '(?:gemaakt|vervaardigd|geproduceerd|handgemaakt) in(?: de)?|land van (?:herkomst|oorsprong)\\s{0,4}:?',
  '原産国\\s{0,4}[::]?|生産国\\s{0,4}[::]?',
];

/** What leads a year of making with the country in brackets behind it: "Herst. 2017 (Rumänien)". */
export const madeThen: EachLanguage = [
  'made|mfd\\.?|manufactured|produced|handmade',
  'fabriquée?s?|fab\\.|confectionnée?s?|produite?s?',
  'hergestellt|herst\\.|gefertigt|produziert|prod\\.',
  'prodott[aoei]|prod\\.|fabbricat[aoei]|fabbr\\.',
  'fabricad[ao]s?|fab\\.|hech[ao]s?',
  'gemaakt|vervaardigd|geproduceerd',
  '製造|生産',
];

/** Right behind a country's adjective ("Italian-made", "italienische Fertigung"), and in Japanese behind its name. */
export const madeBehind: EachLanguage = [
  'made|crafted|manufactured|built|make|manufacture',
  '',
  'Fertigung|Herstellung|Produktion',
  '',
  '',
  'makelij|fabricaat',
  '製|で作|で製造',
];

/** Right before it: "de fabrication italienne". */
export const madeBeforeAdjective: EachLanguage = [
  '',
  'de fabrication',
  '',
  'di (?:produzione|fabbricazione|manifattura)',
  'de fabricación',
  '',
  '',
];

/** "In Spanien hergestellt", "in België gemaakt": between a word for "in" and these, a country. */
export const madeBehindName: EachLanguage = [
  'made|manufactured|produced',
  '(?:fabriquée?s?|confectionnée?s?|produite?s?)',
  '(?:hand)?(?:hergestellt|gefertigt|gemacht|produziert|genäht|angefertigt)',
  '(?:fu |è stat[ao] )?(?:fatt[aoei]|prodott[aoei]|fabbricat[aoei]|realizzat[aoei]|cucit[aoei])',
  '(?:se hizo|hech[ao]s?|fabricad[ao]s?|confeccionad[ao]s?|elaborad[ao]s?)',
  '(?:hand)?(?:gemaakt|vervaardigd|geproduceerd|genaaid)',
  '',
];
/** Right before the country there. */
export const inCountry: EachLanguage = ['in', 'en|au|aux', 'in(?: de[rn])?', 'in|nel|negli', 'en', 'in(?: de)?', ''];
