import type { EachLanguage } from './each-language';

/** Units in words, beside their signs. Feet are measured in English alone; other languages name the feet of a bag. */
export const unitWords: Record<'mm' | 'cm' | 'in' | 'ft' | 'm', EachLanguage> = {
  mm: [
    'millimet(?:er|re)s?',
    'millim[eè]tres?',
    'millimeter',
    'millimetri',
    'milímetros',
    'millimeter',
    'ミリ(?:メートル)?',
  ],
  cm: [
    'centimet(?:er|re)s?',
    'centim[eè]tres?',
    'zentimeter|centimeter',
    'centimetri',
    'cent[ií]metros?',
    'centimeters?',
    'センチ(?:メートル)?',
  ],
  in: ['inch(?:es)?', 'pouces?', 'zoll', 'pollic[ei]', 'pulgadas?', 'duim|inch', 'インチ'],
  ft: ['ft|feet|foot', '', '', '', '', '', ''],
  m: ['met(?:er|re)s?', 'm[eè]tres?', 'meter', 'metri', 'metros', 'meter', 'メートル'],
};

/** A heading that makes three bare numbers a size, or what is measured. */
export const sizeHeading: EachLanguage = [
  'dimensions?|measures|measuring|meas\\.?|size|bag|handbag',
  'dimensions|dim\\.?|mesure|taille|sac',
  'ma(?:ß|ss)e|abm(?:essungen|\\.)|grosse|große|misst|tasche|handtasche',
  'misure|dimensioni|misura|mis\\.?|borsa',
  'medidas|med\\.?|mide|bolso',
  'afmetingen|afm\\.?|maten|meet|tas|handtas',
  'サイズ|寸法|採寸',
];

/** Right before a length that is not exact. */
export const aboutLength: EachLanguage = [
  'approx\\.?|approximately|about|roughly',
  'environ|env\\.?',
  'ca\\.?|etwa|ungefähr',
  'circa|ca\\.?',
  'aprox\\.?',
  'ongeveer',
  '約|およそ',
];

/** Between the two ends of a length. */
export const lengthToLength: EachLanguage = ['to|till|until', 'à', 'bis', 'al?', 'hasta', 'tot', 'から'];

/** Between two sides of one size, beside a cross; "approx" before the second. */
export const sideBySide: EachLanguage = [
  'by|and|approx',
  'par|et|sur',
  'auf|und|ca',
  'per|e|su',
  'por|y',
  'bij|en',
  '约|約',
];

/** Between two sides alone, as a cross is: Japanese writes the cross. */
export const asCross: EachLanguage = ['by', 'par|sur', 'auf|mal', 'per', 'por', 'bij|op', ''];

/** Beside the handles that a height is measured with. */
export const inclusive: EachLanguage = [
  'including|inclusive of|included',
  'y compris|compris(?:es)?|incluses?',
  'samt|einschlie(?:ß|ss)lich|inklusive|inkl|mitgemessen',
  'compres[ie]|inclus[ie]|inclusi',
  'incluid[ao]s|incluyendo|inclusive',
  'inclusief|inbegrepen|meegerekend',
  '含め|込み|含む',
];

/** A length of handles and straps themselves. */
export const hangingLength: EachLanguage = [
  'drop|length',
  'longueur|tombant',
  'lange|hohe\\s(?:der|des)',
  'lunghezza|caduta',
  'largo|caida',
  'lengte',
  '長さ',
];

/** Who tells how tall they are. */
export const bodyHeight: EachLanguage = [
  "i am|i'm|my height",
  'je (?:mesure|fais)|ma taille',
  'ich bin|bin ich|meine gro(?:ß|ss)e',
  'sono alt[ao]|sono',
  'mido|yo mido',
  'ik ben|ben ik',
  '身長',
];

/** Behind a whole number: "9 and a half", "9 einhalb", "neuf et demi" in digits. */
export const andHalf: EachLanguage = [
  'and\\sa\\shalf',
  'et\\sdemie?',
  'ein\\s?halb|und\\sein\\shalb(?:er|es)?',
  'e\\smezz[oa]',
  'y\\smedi[oa]',
  '(?:en\\s)?een\\shalf|en\\seen\\shalve',
  '半',
];
/** The same of a quarter. */
export const andQuarter: EachLanguage = [
  'and\\sa\\squarter',
  'et\\squart',
  'und\\sein\\sviertel|einviertel',
  'e\\sun\\squarto',
  'y\\scuarto',
  'en\\seen\\skwart',
  '',
];

/** What of a piece stands up when it is open, and makes it taller. */
export const opensUp: EachLanguage = [
  'flap|lid|top|frame',
  'rabat|couvercle',
  'klappe|uberschlag|deckel|bugel',
  'patta|coperchio',
  'solapa|tapa',
  'klep|deksel|overslag',
  '(?:フラップ|蓋|かぶせ)(?:を|が)?',
];
/** And that it is. */
export const opened: EachLanguage = [
  'open(?:ed)?|up|raised|lifted',
  'ouvert|releve|leve',
  'offener|geoffneter|aufgeklappter|offen|aufgeklappt',
  'aperta|aperto|alzata',
  'abierta|levantada',
  'open|geopend|omhoog',
  '開け|開い|上げ',
];
