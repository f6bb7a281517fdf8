import type { Block } from './blocks';
import { plainWords } from './inline';
import { bullet, cellsOf, rowsOf, runsOfLines } from './text-rows';
import { typedHeading } from './typed-heading';

/** Below the page's own headings. */
const typedLevel = 6;

/** The blocks of a passage as it was typed: its tables parted by blanks, its lists, and its lines. */
export function blocksOfPassage(text: string, selector: string): Block[] {
  const plain = (line: string) => plainWords(line.trim(), selector);
  return text.split(/\n[^\S\n]{0,200}\n/).flatMap((paragraph) => {
    const all = paragraph.split('\n').filter((line) => line.trim() !== '');
    const heading = typedHeading(all);
    if (heading !== null) return [{ kind: 'heading', level: typedLevel, words: plainWords(heading, selector) }];
    return runsOfLines(all).map(({ kind, lines }): Block => {
      if (kind === 'row') return { kind: 'table', rows: cellsOf(rowsOf(lines), selector), caption: '', selector };
      if (kind === 'item')
        return { kind: 'list', items: lines.map((line) => plain(line.replace(bullet, ''))), above: '', selector };
      const words = plain(lines.map((line) => line.trim()).join('\n'));
      return { kind: 'paragraph', words, quoted: false };
    });
  });
}
