/** A label's words for comparing: small letters, no decoration, colon or brackets. */
export const plainLabel = (text: string): string =>
  text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/^[\s•·*\-–—■◆●【[(]+|[\s:：.*・】\])?]+$/g, '')
    .replace(/[’‘]/g, "'")
    .replace(/\s+/g, ' ');

const split = /^([^:：\t\n]{1,50}?)\s*(?:[:：]\s*|\t+)(\S.{0,400})$/;
const bracket = /^【([^】]{1,20})】\s*(\S.{0,400})$/;

/** A line such as "Brand: Ondrasse" or "【素材】牛革" as name and value; null for any other line. */
export function splitLabelled(line: string): { name: string; value: string } | null {
  const match = line.length > 460 ? null : (bracket.exec(line) ?? split.exec(line));
  if (!match || /^(https?|[\d\s.,]+)$/i.test(match[1] ?? '')) return null;
  return { name: match[1] as string, value: (match[2] as string).trim() };
}
