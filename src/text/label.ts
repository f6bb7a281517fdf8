import { foldWords } from './fold';
import { plainLabel } from './label-words';
import { tableWords } from './lexicon';

const labels = tableWords('label');
export type Label = keyof typeof labels;

/** With and without accents: "État", "ETAT". */
const key = (words: string) => foldWords(plainLabel(words)).text;
const byWords = new Map<string, Label>();
for (const [label, words] of Object.entries(labels)) for (const one of words) byWords.set(key(one), label as Label);

/** Which field a page's label names, in any of the seven languages; null when it names none. */
export function labelOf(words: string): Label | null {
  if (words.length > 60) return null;
  return byWords.get(key(words)) ?? null;
}
