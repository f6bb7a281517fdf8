import { withoutEnd } from './ends';

/** A label's words for comparing: small letters, no decoration, colon or brackets. */
export const plainLabel = (text: string): string =>
  withoutEnd(text.normalize('NFKC'), /[\s:：.*・】\])?]/)
    .toLowerCase()
    .replace(/^[\s•·*\-–—■◆●【[(]+/, '')
    .replace(/[’‘]/g, "'")
    .replace(/\s+/g, ' ');

const bracket = /^【([^】]{1,20})】\s*(\S.{0,400})$/;
const maxLine = 460;
const maxName = 50;
const maxValue = 401;

/** A line such as "Brand: Ondrasse" or "【素材】牛革" as name and value; null for any other line. */
export function splitLabelled(line: string): { name: string; value: string } | null {
  if (line.length > maxLine) return null;
  const match = bracket.exec(line);
  const pair = match ? { name: match[1] as string, value: match[2] as string } : splitAtColon(line);
  if (!pair || /^(https?|[\d\s.,]+)$/i.test(pair.name)) return null;
  return { name: pair.name, value: pair.value.trim() };
}

/** Name and value around the first colon, or around blanks that end in a tab. */
function splitAtColon(line: string): { name: string; value: string } | null {
  const at = line.search(/[:：\t\n]/);
  const name = at < 0 ? '' : line.slice(0, at).trimEnd();
  if (name === '' || name.length > maxName || line[at] === '\n') return null;
  const rest = line.slice(at);
  const behind = rest.trimStart();
  const value = /^[:：]/.test(behind) ? behind.slice(1).trimStart() : behind;
  const divided = value !== behind || rest[rest.length - behind.length - 1] === '\t';
  return divided && value !== '' && value.length <= maxValue && !value.includes('\n') ? { name, value } : null;
}

/** So many words, or so many Japanese characters, with an end of a sentence are no value of a field. */
const fewestOfProse = 9;
const fewestJapanese = 24;
const sentenceWithin = /[\p{L}\d)]{3}[.!?]\s+\p{L}/u;

/**
 * Whether what stands behind a label is running text: "Story: my aunt carried it to work. …", "EN: …". Told by its
 * shape: several sentences, or one long one. Common practice, no source.
 */
export function isRunningText(value: string): boolean {
  const words = value.split(/\s+/).length;
  if (/[。！？]/.test(value) && value.length >= fewestJapanese) return true;
  return (words >= fewestOfProse && /[.!?…]["')”»]?$/.test(value)) || (words >= 6 && sentenceWithin.test(value));
}
