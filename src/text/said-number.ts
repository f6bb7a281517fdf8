import { foldWords, type Said, sourceRange } from './fold';
import { Taken } from './taken';

/** A count as written with any grouping ("1.234", "1,234", "12 345", "1.2k"); null when it is none. */
export function readCount(text: string): number | null {
  const thousands = /^(\d{1,3})(?:[.,](\d))?\s?(?:k|tsd\.?|mila|mil|duizend)$/u.exec(text.trim());
  if (thousands) return Number(thousands[1]) * 1000 + Number(thousands[2] ?? 0) * 100;
  const man = /^(\d{1,3})(?:\.(\d))?万$/u.exec(text.trim());
  if (man) return Number(man[1]) * 10_000 + Number(man[2] ?? 0) * 1000;
  const digits = text.replace(/[.,' ](?=\d{3})/g, '');
  return /^\d{1,9}$/.test(digits) ? Number(digits) : null;
}

/** A count in a pattern: grouped thousands, a short thousand, or plain digits. */
export const countSource =
  "(\\d{1,3}(?:[.,' ]\\d{3}){1,2}(?!\\d)|\\d{1,3}(?:[.,]\\d)?\\s?(?:k|tsd\\.?|万)(?![\\p{L}])|\\d{1,9}(?![\\d.,]\\d))";

/** All matches of patterns whose first group that took part is a count; the whole match is what was said. */
export function findCounts(text: string, patterns: readonly RegExp[]): Said<number>[] {
  const folded = foldWords(text);
  const found: Said<number>[] = [];
  const taken = new Taken(folded.text.length);
  for (const pattern of patterns)
    for (const match of folded.text.matchAll(pattern)) {
      const written = match.slice(1).find((group) => group !== undefined);
      const value = written === undefined ? 0 : readCount(written);
      const [from, to] = [match.index, match.index + match[0].length];
      if (value === null || taken.overlaps(from, to)) continue;
      taken.take(from, to);
      found.push({ value, ...sourceRange(folded, from, to) });
    }
  return found.sort((a, b) => a.start - b.start);
}
