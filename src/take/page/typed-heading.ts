import { ruler } from './text-rows';

const longest = 60;
const numbered = /^(?:\d{1,2}\.){1,2}\d?\s{1,4}(?=\p{Lu})|^[IVX]{1,4}\.\s{1,4}(?=\p{Lu})/u;

/**
 * What a line that stands by itself in typed text heads what follows with: it is numbered ("2. Workshops"), all in capitals,
 * or drawn under. Null where it is a line like others.
 */
export function typedHeading(lines: readonly string[]): string | null {
  const [first = '', under, ...more] = lines;
  const text = first.trim();
  const isUnderlined = under !== undefined && ruler.test(under) && /^\s{0,40}[=_~-]{3,400}\s{0,40}$/u.test(under);
  if (more.length > 0 || (under !== undefined && !isUnderlined)) return null;
  if (text.length > longest || /[.,;!]$/.test(text) || /\S\s{3,200}\S/.test(text)) return null;
  const bare = text.replace(numbered, '').replace(/\s?[:：]$/, '');
  const isCapitals = bare === bare.toUpperCase() && (bare.match(/\p{Lu}/gu)?.length ?? 0) >= 5;
  return isUnderlined || numbered.test(text) || isCapitals ? bare : null;
}
