import labels from './labels.json' with { type: 'json' };

export type Label = keyof typeof labels;

const plain = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/^[\s•·*\-–—■◆●【[(]+|[\s:：.*・】\])?]+$/g, '')
    .replace(/[’‘]/g, "'")
    .replace(/\s+/g, ' ');

const byWords = new Map<string, Label>();
for (const [label, words] of Object.entries(labels)) for (const one of words) byWords.set(plain(one), label as Label);

/** Which field a page's label names, in any of the seven languages; null when it names none. */
export function labelOf(words: string): Label | null {
  if (words.length > 60) return null;
  return byWords.get(plain(words)) ?? null;
}

const split = /^([^:：\t\n]{1,50}?)\s*(?:[:：]\s*|\t+)(\S.{0,400})$/;
const bracket = /^【([^】]{1,20})】\s*(\S.{0,400})$/;

/** A line such as "Brand: Ondrasse" or "【素材】牛革" as label and value; null for any other line. */
export function splitLabelled(line: string): { label: Label; name: string; value: string } | null {
  const match = bracket.exec(line) ?? split.exec(line);
  const name = match?.[1] ?? '';
  const label = match ? labelOf(name) : null;
  return match && label ? { label, name, value: (match[2] as string).trim() } : null;
}
