/**
 * How long a text is for a field of a page: HTML counts UTF-16 code units for `maxlength`.
 * https://html.spec.whatwg.org/multipage/form-control-infrastructure.html#attr-fe-maxlength
 */
export const lengthOf = (text: string): number => text.length;

/** A part of a message that goes on its own; `tooLong` where one question alone is over the limit. */
export interface MessagePart {
  text: string;
  tooLong: boolean;
}

/** What is never cut: a numbered question with its lines, or a paragraph, and what stood between it and the one before. */
interface Block {
  gap: string;
  text: string;
}

const numbered = /^\d{1,3}\. /;

function blocksOf(text: string): Block[] {
  const blocks: Block[] = [];
  let gap = '';
  for (const line of text.trim().split('\n')) {
    const last = blocks.at(-1);
    if (line.trim() === '') gap = '\n\n';
    else if (last && gap === '' && !numbered.test(line)) last.text += `\n${line}`;
    else {
      blocks.push({ gap: gap || '\n', text: line });
      gap = '';
    }
  }
  return blocks;
}

const headed = (at: number, of: number) => `(${at}/${of}) `;

/**
 * A message in as many parts as a field that takes `most` characters needs, each numbered, none cut inside a question.
 * What fits is one part as it is. A question that is over the limit by itself stands alone and says so.
 */
export function splitMessage(text: string, most: number): MessagePart[] {
  if (lengthOf(text) <= most) return [{ text, tooLong: false }];
  const blocks = blocksOf(text);
  const parts: string[] = [];
  // No part's number is longer than that of the last of as many parts as there are blocks.
  const room = most - lengthOf(headed(blocks.length, blocks.length));
  for (const block of blocks) {
    const last = parts.at(-1);
    const joined = last === undefined ? null : last + block.gap + block.text;
    if (joined !== null && lengthOf(joined) <= room) parts[parts.length - 1] = joined;
    else parts.push(block.text);
  }
  return parts.map((part, at) => {
    const said = headed(at + 1, parts.length) + part;
    return { text: said, tooLong: lengthOf(said) > most };
  });
}
