import { foldText, type Said, sourceRange } from './fold';
import { listOf } from './phrases';

const cues = listOf(
  'Date code, Datecode, Code, Stamp, Serial number, Serial no, Serial, Item code, Item number, Item no, Item ID, Article number, Ref, Ref., Reference, Reference number, Style number, Style no, Model number, Model no, SKU, MPN',
  'Datumscode, Seriennummer, Artikelnummer, Artikel-Nr, Art.-Nr, Artikelnr, Modellnummer, Anzeigennummer, Numéro de série, Référence, Réf, Réf., Code date, N° de série, N° article, Codice, Codice articolo, Numero di serie, Riferimento, Rif',
  'Código, Número de serie, Referencia, Ref. artículo, Datumcode, Serienummer, Artikelnummer, Referentie, 商品番号, 品番, 型番, シリアル, シリアルナンバー, 製造番号, 管理番号, デートコード',
);
const literal = (word: string) => word.replace(/[.+?^${}()|[\]\\/]/g, '\\$&').replaceAll(' ', '[ -]');
const cue = new RegExp(
  `(?<![\\p{L}\\d])(?:${[...new Set(cues)]
    .sort((a, b) => b.length - a.length)
    .map(literal)
    .join(
      '|',
    )})(?![\\p{L}])(?: (?:is|reads|no\\.?|number|ist|est|es))?\\s{0,2}[:.#=-]{0,2}\\s{0,3}([A-Za-z0-9][A-Za-z0-9.\\-/]{1,24}[A-Za-z0-9])(?![\\p{L}\\d])`,
  'giu',
);

/** Item, reference and date codes with the word that announces them; the value is the code as written. */
export function findItemCodes(text: string): Said<string>[] {
  const folded = foldText(text);
  const found: Said<string>[] = [];
  for (const match of folded.text.matchAll(cue)) {
    const code = match[1] as string;
    // A code has digits; "code is illegible" has none.
    if (!/\d/.test(code) || /^\d{1,2}$/.test(code)) continue;
    found.push({ value: code, ...sourceRange(folded, match.index, match.index + match[0].length) });
  }
  return found;
}
