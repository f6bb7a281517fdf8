const postal = /^(?:[A-Z]{1,2}-)?\d{4,5} (\p{Lu}[\p{L}' .-]{1,40})$/u;
const province = /^(\p{Lu}[\p{L}' -]{1,40}) \([A-Z]{2}\)$/u;
const afterDate = /\d{4}\s*[·•|]\s*(\p{Lu}[\p{L}' -]{1,30}(?:, \p{Lu}[\p{L}' -]{1,30})?)$/u;

/**
 * A place on a line of its own: "50667 Köln", "Milano (MI)", or behind the date of posting ("… 2026 · Leeds, West
 * Yorkshire"). Null for any other line. Common practice of classified pages, no source.
 */
export function placeLine(line: string): string | null {
  if (line.length > 80) return null;
  return postal.exec(line)?.[1] ?? province.exec(line)?.[1] ?? afterDate.exec(line)?.[1] ?? null;
}
