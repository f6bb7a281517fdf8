import type { WordTable } from './words';

/** Words for surfaces that are leather, and for those that are not. Own list in six languages. */
export const leatherWords: WordTable = {
  en: [
    'genuine leather',
    'real leather',
    'full grain leather',
    'full-grain leather',
    'calfskin',
    'cowhide',
    'lambskin',
    'all leather',
    '100% leather',
  ],
  fr: ['cuir véritable', 'cuir pleine fleur', 'cuir de veau', 'tout cuir', '100% cuir'],
  de: ['echtleder', 'echtes leder', 'vollleder', 'kalbsleder', 'rindsleder', '100% leder'],
  it: ['vera pelle', 'pelle pieno fiore', 'pelle di vitello', '100% pelle'],
  es: ['cuero auténtico', 'piel auténtica', 'piel de becerro', 'cuero genuino', '100% cuero'],
  nl: ['echt leer', 'volnerfleer', 'kalfsleer', 'rundleer', '100% leer'],
};
export const notLeatherWords: WordTable = {
  en: [
    'faux leather',
    'pu leather',
    'vegan leather',
    'imitation leather',
    'leatherette',
    'polyurethane',
    'synthetic leather',
    'bonded leather',
  ],
  fr: ['simili cuir', 'similicuir', 'skaï', 'cuir synthétique', 'cuir vegan', 'imitation cuir', 'polyuréthane'],
  de: ['kunstleder', 'lederimitat', 'veganes leder', 'polyurethan'],
  it: ['similpelle', 'ecopelle', 'finta pelle', 'pelle sintetica', 'poliuretano'],
  es: ['cuero sintético', 'polipiel', 'símil piel', 'cuero vegano', 'poliuretano'],
  nl: ['kunstleer', 'imitatieleer', 'veganistisch leer', 'polyurethaan'],
};
/**
 * What cannot be said of one part at once. Solid brass is often plated with gold and called gold in tone, so only what
 * leaves no room stands here: solid gold or silver that is plated or only toned, and solid metal that is zinc.
 */
export const metalPairs: { solid: WordTable; other: WordTable }[] = [
  {
    solid: {
      en: ['solid gold'],
      fr: ['or massif'],
      de: ['massivgold', 'massives gold'],
      it: ['oro massiccio'],
      es: ['oro macizo'],
      nl: ['massief goud'],
    },
    other: {
      en: ['gold plated', 'gold-plated', 'gold tone', 'gold-tone', 'zinc alloy'],
      fr: ['plaqué or', 'métal doré', 'doré à l’or fin'],
      de: ['vergoldet', 'goldfarben', 'goldfarbene', 'zinklegierung'],
      it: ['placcato oro', 'placcata oro', 'color oro'],
      es: ['chapado en oro', 'chapada en oro', 'baño de oro', 'tono dorado'],
      nl: ['verguld', 'goudkleurig', 'goudkleurige'],
    },
  },
  {
    solid: {
      en: ['solid silver', 'sterling silver hardware'],
      fr: ['argent massif'],
      de: ['massives silber', 'massivsilber'],
      it: ['argento massiccio'],
      es: ['plata maciza'],
      nl: ['massief zilver'],
    },
    other: {
      en: ['silver plated', 'silver-plated', 'silver tone', 'silver-tone', 'zinc alloy'],
      fr: ['plaqué argent', 'métal argenté'],
      de: ['versilbert', 'silberfarben', 'silberfarbene', 'zinklegierung'],
      it: ['placcato argento', 'color argento'],
      es: ['chapado en plata', 'tono plateado'],
      nl: ['verzilverd', 'zilverkleurig'],
    },
  },
  {
    solid: {
      en: ['solid brass'],
      fr: ['laiton massif'],
      de: ['massives messing', 'messing massiv'],
      it: ['ottone massiccio'],
      es: ['latón macizo'],
      nl: ['massief messing'],
    },
    other: {
      en: ['zinc alloy', 'brass plated', 'brass-plated', 'brass tone', 'brass-tone'],
      fr: ['alliage de zinc'],
      de: ['zinklegierung', 'vermessingt'],
      it: ['lega di zinco'],
      es: ['aleación de zinc'],
      nl: ['zinklegering'],
    },
  },
];
/** Words that say that what darkens, dulls or yellows with use has not. */
export const freshWords: WordTable = {
  en: [
    'pale handles',
    'pale handle',
    'handles are still pale',
    'untouched vachetta',
    'no patina',
    'honey-pale',
    'bright yellow hardware',
    'shiny yellow hardware',
    'bright gold hardware',
    'vivid red trim',
    'bright red trim',
    'bright yellow stitching',
    'vivid yellow stitching',
    'bright yellow thread',
    'snow white handles',
  ],
  fr: ['anses claires', 'sans patine', 'aucune patine', 'métal jaune vif', 'tranche rouge vif', 'coutures jaune vif'],
  de: [
    'helle henkel',
    'ohne patina',
    'keine patina',
    'leuchtend gelbe beschläge',
    'leuchtend rote kante',
    'leuchtend gelbe naht',
  ],
  it: [
    'manici chiari',
    'senza patina',
    'nessuna patina',
    'metallo giallo brillante',
    'bordo rosso vivo',
    'cuciture giallo vivo',
  ],
  es: ['asas claras', 'sin pátina', 'herrajes amarillo brillante', 'ribete rojo vivo', 'costuras amarillo vivo'],
  nl: ['lichte hengsels', 'geen patina', 'zonder patina', 'felgeel beslag', 'felrode rand', 'felgele stiksels'],
};
/** Words that say why something old may be fresh. */
export const keptWords: WordTable = {
  en: ['stored', 'never used', 'unused', 'replaced', 'restored', 'new handles', 'dead stock', 'deadstock'],
  fr: ['jamais utilisé', 'remplacé', 'remplacée', 'restauré', 'neuf jamais porté', 'stocké'],
  de: ['unbenutzt', 'ersetzt', 'erneuert', 'restauriert', 'gelagert', 'nie benutzt'],
  it: ['mai usata', 'mai usato', 'sostituito', 'sostituiti', 'restaurata', 'conservata'],
  es: ['sin usar', 'nunca usado', 'reemplazado', 'restaurado', 'guardado'],
  nl: ['ongebruikt', 'vervangen', 'gerestaureerd', 'opgeslagen', 'nooit gebruikt'],
};
