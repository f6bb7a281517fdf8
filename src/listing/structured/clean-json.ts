import { decodeEntities } from './entities';

/** Names that could reach an object's prototype; dropped wherever data becomes an object. */
export const dangerousKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

/**
 * Takes off what surrounds JSON in a script: byte order mark, HTML comments, CDATA in any style, an assignment
 * (`window.x = {…};`), and entities that stand in for the quotes. One pass each, so linear in the length.
 */
export function cleanJson(text: string): string {
  let cleaned = text.replace(/^[\uFEFF\s]+/, '');
  if (!cleaned.includes('"') && cleaned.includes('&quot;')) cleaned = decodeEntities(cleaned);
  for (let round = 0; round < 4; round += 1) {
    const before = cleaned;
    cleaned = cleaned
      .replace(/^\s*(\/\/|\/\*)?\s*<!\[CDATA\[\s*(\*\/)?/, '')
      .replace(/(\/\/|\/\*)?[^\S\n]*\]\](>|&gt;)\s*(\*\/)?\s*$/, '')
      .replace(/^\s*(\/\/)?\s*<!--/, '')
      .replace(/(\/\/)?[^\S\n]*-->\s*$/, '');
    // A whole comment before the data: it ends at the first "-->", and the data begins after it.
    const end = cleaned.indexOf('-->');
    const begin = cleaned.search(/[[{]/);
    if (end >= 0 && (begin < 0 || end < begin)) cleaned = cleaned.slice(end + 3);
    if (cleaned === before) break;
  }
  const assigned = /^\s*(?:(?:var|let|const)\s+)?[A-Za-z_$][\w$.]{0,120}\s*=\s*(?=[[{])/.exec(cleaned);
  return (assigned ? cleaned.slice(assigned[0].length) : cleaned).trim();
}
