import { foldWords, type Label, labelOf, partWords, rightBehind, tableWords, wordsOf } from '../text';

/*
 * Sellers answer in one breath what they are asked: "Innen? Wildleder", "Q: date code? A: HJ1929". A question that only
 * names a field of the piece is its label, and the marks before question and answer are no words. Common practice, no
 * source.
 */

/** Fields that no answer of a word or two makes a statement of somebody else about. */
const ofPiece = new Set<Label | null>(['condition', 'material', 'serial', 'colour', 'measures']);
const folded = (words: string) => foldWords(words).text.trim();
const asked = new Set(
  [...Object.values(tableWords('piece-label')), ...Object.values(partWords), wordsOf('code-noun', 'code-label')]
    .flat()
    .map(folded),
);
const stops = /[\n.!?。！？:：|•;]/;
/** No label is longer. */
const longest = 32;
const markBefore = /(?<![^\s。.!?！？])(?:[QFDPV]|質問)\d{0,2}\s?[.:：．]\s?$/iu;
const markBehind = /^\s{0,3}(?:[AR]|答え?|回答)\d{0,2}\s?[.:：．]\s?/iu;

/** "Leather? I don't know": what the question names is no field. */
const stated = new Set(
  [...Object.values(tableWords('material')), wordsOf('leather', 'leather-like')].flat().map(folded),
);
const isLabel = (words: string): boolean =>
  !stated.has(folded(words)) && (ofPiece.has(labelOf(words)) || asked.has(folded(words)));

const blank = (length: number) => ' '.repeat(length);

/** "[Interior] Olive twill", "【内装】綿": a field of the piece in brackets at the head of its line. */
const bracketed = /(?<=^|\n)[[【]([^\]】\n]{2,32})[\]】]/gu;

/** The text with such questions as labels and without such marks; every place in it stays what it was. */
export function asLabelled(listed: string): string {
  const text = listed.replace(bracketed, (found, name: string) => (isLabel(name) ? ` ${name}:` : found));
  let said = '';
  let done = 0;
  for (const { index } of text.matchAll(/[?？]/g)) {
    let opens = index;
    while (opens > done && index - opens <= longest && !stops.test(text[opens - 1] as string)) opens -= 1;
    const words = text.slice(opens, index);
    const ahead = text.slice(Math.max(done, opens - 8), opens);
    const before = markBefore.exec(ahead)?.[0].length ?? 0;
    const behind = markBehind.exec(rightBehind(text, index + 1))?.[0].length ?? 0;
    const label =
      /\S/.test(text.slice(index + 1, index + 8)) && isLabel(words.replace(/^\s?¿?/, '').replace(/は?\s?$/, ''));
    if (!label && behind === 0) continue;
    said += text.slice(done, opens - before) + blank(before) + words + (label ? ':' : text[index]) + blank(behind);
    done = index + 1 + behind;
  }
  return said + text.slice(done);
}
