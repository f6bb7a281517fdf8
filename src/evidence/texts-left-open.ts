import type { LeftOpen } from '../code/types';

/** Most texts that are told of one code: three characters left open, two ways each. */
const mostTexts = 8;

/** Every text that a code may be, as far as characters of it are left open; the best first. */
export function textsLeftOpen(code: string, open: readonly LeftOpen[]): string[] {
  let texts = [code];
  for (const left of open) {
    if (left.kind !== 'alike') continue;
    texts = texts.flatMap((text) => {
      const characters = [...text];
      return left.may.map((character) => characters.with(left.place, character).join(''));
    });
  }
  return texts.slice(0, mostTexts);
}
