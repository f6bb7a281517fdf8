import type { Measure } from '../listing/types';
import { listOf, type PhraseTable } from './phrases';

export type Dimension = Measure['dimension'];

/** Whole words for dimensions in the seven languages. */
export const dimensionWords: PhraseTable<Dimension> = {
  width: listOf(
    'width, wide, length, long, across, breite, breit, länge, lang, largeur, de large, large, longueur, de long',
    'larghezza, larga, largo, lunghezza, lunga, lungo, ancho, anchura, ancha, longitud, base, breedte, breed',
    'lengte, 幅, 横, ヨコ, よこ, 横幅, 長さ',
  ),
  height: listOf(
    'height, high, tall, höhe, hoch, hauteur, de haut, haut, altezza, alta, alto, altura, hoogte, hoog, 高さ, 縦, タテ',
    'たて',
  ),
  depth: listOf(
    'depth, deep, gusset, tiefe, tief, profondeur, de profondeur, profond, épaisseur, profondità, profonda',
    'profondo, profundidad, fondo, profundo, diepte, diep, 奥行, 奥行き, マチ, まち, 厚み',
  ),
  strap: listOf(
    'strap, straps, strap drop, strap length, shoulder strap, cross body strap, schulterriemen, riemen',
    'trageriemen, umhängeriemen, gurt, schultergurt, riemenlänge, bandoulière, tracolla, lunghezza tracolla',
    'bandolera, correa, asa larga, schouderband, schouderriem, hengsel lang, ショルダー, ストラップ, 肩紐, 肩ひも',
  ),
  handle: listOf(
    'handle, handles, handle drop, drop, handle length, henkel, griff, henkellänge, henkelhöhe, anse, anses',
    'poignée, poignées, manico, manici, asa, asas, handvat, handvatten, hengsel, hengsels, 持ち手, 持手, ハンドル',
  ),
  unknown: [],
};

/** Single letters before or after a number ("H 12", "L30", "12H"). What L, B, P, A and T mean depends on the language. */
export const dimensionLetters: Record<string, Dimension> = {
  w: 'width',
  h: 'height',
  d: 'depth',
  l: 'width',
  b: 'width',
  p: 'depth',
  t: 'depth',
  a: 'height',
  f: 'depth',
  an: 'width',
  al: 'height',
};

/** Letters that count in a language; others are read when the run has at least two of them. */
export const lettersOf: Record<string, string> = {
  en: 'w h d l',
  de: 'b h t l',
  fr: 'l h p',
  it: 'l h a p b',
  es: 'l a h p f an al',
  nl: 'b h d l',
  ja: 'w h d',
};

/** What a lone measurement belongs to when it is not the bag: flaws, things that fit inside, other objects. */
export const otherThings = listOf(
  'scratch*, scuff*, stain*, mark, marks, tear, crack*, hole, laptop*, notebook, tablet, screen, fits, heel*',
  'wrist, waist, model is, tall model, dust bag, box, kratzer, fleck*, riss, loch, passt, absatz, karton',
  'staubbeutel, rayure*, tache*, trou, talon*, ordinateur, boîte, graffi*, macchi*, buco, tacco, scatola',
  'rasguño*, mancha*, agujero, tacón, caja, kras*, vlek*, gat, hak, doos, stofzak, 傷, キズ, シミ, 汚れ, 穴, 箱',
);
