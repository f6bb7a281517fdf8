import { plainLabel } from './label-words';
import labels from './labels.json' with { type: 'json' };

export type Label = keyof typeof labels;

const byWords = new Map<string, Label>();
for (const [label, words] of Object.entries(labels))
  for (const one of words) byWords.set(plainLabel(one), label as Label);

/** Which field a page's label names, in any of the seven languages; null when it names none. */
export function labelOf(words: string): Label | null {
  if (words.length > 60) return null;
  return byWords.get(plainLabel(words)) ?? null;
}
