import type { Block } from './blocks';
import { type Inline, partOf } from './inline';

/** Lines that are broken within a sentence, as in text taken from a PDF, are one; no place in the text moves. */
export const unbroken = (text: string): string =>
  text.replace(/(?<=[\p{L}\d,]\s?)\n(?=\p{Ll}|\p{Lu}\p{Ll}{2,20}\s\d{4}\b)/gu, ' ');

/** The words of a paragraph as its lines. */
export const linesOf = (words: Inline): Inline[] => partedBy(words, '\n');

const longestList = 600;

/** A code and what joins it to what it stands for: "T: ", "W = ". */
const codeHead = /\p{Lu}{1,3}\d?\s?(?:[:：=＝→]|\s[–—-]\s)/u;
/** What parts entries of a list in one line, each of which begins with a code. */
const beforeCode = new RegExp(String.raw`(?:\s?[;.,/|·•、]\s?|\s(?:and|und|et|y|e|en)\s)(?=${codeHead.source})`, 'gu');
const opensWithCode = new RegExp(`^${codeHead.source}`, 'u');

/**
 * The words of a paragraph as what its semicolons part, or as entries that each begin with a code ("T: Taunton. W: Wells"),
 * where it is short enough for a list.
 */
export function piecesOfList(words: Inline): Inline[] {
  if (words.text.length > longestList) return [];
  if (words.text.includes('; ')) return partedBy(words, '; ');
  const labelled = labelledSentences(words);
  if (labelled.length > 1) return labelled;
  // "…, E = Spain. Before 1968 there was nothing": what follows is no entry.
  if (/(?:\p{L}{4}|\d{4}|\))\.\s(?!\p{Lu}{1,3}\d?\s?[:：=＝→])\p{Lu}/u.test(words.text)) return [];
  if (!opensWithCode.test(words.text)) return [];
  const cuts = [...words.text.matchAll(beforeCode)];
  const starts = [0, ...cuts.map(({ 0: joint, index }) => index + joint.length)];
  const ends = [...cuts.map(({ index }) => index), words.text.length];
  return starts.map((start, at) => partOf(words, start, ends[at]!));
}

const sentenceEnd = /(?<=\p{L}{3}|\d{4}|\))\.\s(?=\p{Lu})/gu;
/** "Where: back of the pocket. Lining: suede to 1969.": sentences that each begin with a label. */
function labelledSentences(words: Inline): Inline[] {
  const cuts = [...words.text.matchAll(sentenceEnd)].map(({ index }) => index);
  const starts = [0, ...cuts.map((at) => at + 2)];
  const pieces = starts.map((start, at) => partOf(words, start, cuts[at] ?? words.text.length));
  return pieces.every(({ text }) => /^\p{Lu}[^:.;]{2,30}[:：]\s/u.test(text)) ? pieces : [];
}

function partedBy(words: Inline, mark: string): Inline[] {
  let start = 0;
  return words.text.split(mark).map((text) => {
    const from = start;
    start += text.length + mark.length;
    return partOf(words, from, from + text.length);
  });
}

/** Footnotes by their mark: "* Disputed: …", and entries of a list of references by their number. */
export function notesOf(blocks: readonly Block[]): Map<string, string> {
  const notes = new Map<string, string>();
  for (const block of blocks) {
    if (block.kind === 'paragraph') {
      for (const line of block.words.text.split('\n')) {
        const match = /^([*†‡]{1,3}|\[?(?:\d{1,2}|[a-z])\]|[a-z]\))\s?(\S.{0,300})/.exec(line);
        if (match && !notes.has(match[1]!)) notes.set(match[1]!.replace(/[[\])]/g, ''), match[2]!);
      }
    }
    if (block.kind === 'list' && block.items.every(({ selector }) => /#[a-z_-]{0,20}\d/i.test(selector)))
      for (const [at, { text }] of block.items.entries())
        if (!notes.has(String(at + 1))) notes.set(String(at + 1), text.slice(0, 300));
  }
  return notes;
}
