import type { Block } from './blocks';
import { wordsOfRows } from './grid';
import type { Inline } from './inline';

/** A page's own words for a legend and for makers: enough of them, so that the work keeps to the page's length. */
export const longestLook = 60_000;

const textsOf = (block: Block): Inline[] => {
  if (block.kind === 'heading' || block.kind === 'paragraph') return [block.words];
  if (block.kind === 'list') return block.items;
  if (block.kind === 'definitions') return block.pairs.flatMap(({ term, words }) => [term, words]);
  return wordsOfRows(block.rows);
};

/** The words of blocks, as far as they are looked at. */
export function textOfBlocks(blocks: readonly Block[]): string {
  const texts: string[] = [];
  let length = 0;
  for (const block of blocks) {
    if (length > longestLook) break;
    for (const { text } of textsOf(block)) texts.push(text.slice(0, longestLook));
    length += texts.at(-1)?.length ?? 0;
  }
  return texts.join('\n').slice(0, longestLook);
}
