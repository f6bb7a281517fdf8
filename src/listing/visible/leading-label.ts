import { tableWords } from '../../text/lexicon';

const labels = tableWords('label');

/** Labels that stand before their value without a colon: "Posted on 3 March", "Vendu par …", "Ships from …". */
const leading = [...labels.posted, ...labels.place, ...labels.seller, ...labels.memberSince]
  .filter(
    (words) => words.includes(' ') || /^(posted|listed|publié|geplaatst|eingestellt|pubblicato|publicado)$/.test(words),
  )
  .sort((a, b) => b.length - a.length);

const maxLine = 100;

/** The label at the start of a short line and what follows it; null for other lines. */
export function leadingLabel(line: string): { name: string; value: string } | null {
  if (line.length > maxLine) return null;
  const small = line.toLowerCase().replaceAll('\t', ' ');
  const name = leading.find((words) => small.startsWith(`${words} `));
  if (name === undefined) return null;
  const value = line.slice(name.length + 1).replace(/^(on|the|le|il|el|am|op)\s/i, '');
  return /^[:：]/.test(value) ? null : { name, value };
}
