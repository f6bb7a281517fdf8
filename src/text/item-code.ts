import { foldText, type Said, sourceRange } from './fold';
import { wordsOf } from './lexicon';
import { Taken } from './taken';

const cues = wordsOf('code-label');
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

/** A stamp said to read so: "刻印はKV0915です". Years, sizes, counts and prices behind the word are no code. */
const japaneseStamp =
  /(?:刻印|シリアル(?:ナンバー|番号)?|製造番号|デートコード)\s?[はが::]\s?[「『"(]?\s?([A-Za-z0-9][A-Za-z0-9 .\-/]{1,14}[A-Za-z0-9])(?![A-Za-z0-9]|\s?(?:年|月|世紀|番目|個|桁|文字|円|ミリ|センチ))/gu;

/** Item, reference and date codes with the word that announces them; the value is the code as written. */
export function findItemCodes(text: string): Said<string>[] {
  const folded = foldText(text);
  const found: Said<string>[] = [];
  const taken = new Taken(folded.text.length);
  for (const match of [...folded.text.matchAll(cue), ...folded.text.matchAll(japaneseStamp)]) {
    const code = match[1] as string;
    // A code has digits; "code is illegible" has none.
    if (!/\d/.test(code) || /^\d{1,2}$/.test(code) || /^\d[\d.]*\s?(?:mm|cm|m)$/i.test(code)) continue;
    const [from, to] = [match.index, match.index + match[0].length];
    if (taken.overlaps(from, to)) continue;
    taken.take(from, to);
    found.push({ value: code, ...sourceRange(folded, from, to) });
  }
  return found.sort((a, b) => a.start - b.start);
}
