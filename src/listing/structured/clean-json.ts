import { decodeEntities } from './entities';

/** Names that could reach an object's prototype; dropped wherever data becomes an object. */
export const dangerousKeys: ReadonlySet<string> = new Set(['__proto__', 'constructor', 'prototype']);

const sectionStart = /^(?:\/\/|\/\*)?\s*<!\[CDATA\[\s*(?:\*\/)?/;
const commentStart = /^(?:\/\/)?\s*<!--/;
const assignment = /^(?:(?:var|let|const)\s+)?[A-Za-z_$][\w$.]{0,120}\s*=\s*(?=[[{])/;

/**
 * Takes off what surrounds JSON in a script: byte order mark, HTML comments, CDATA in any style, an assignment
 * (`window.x = {…};`), and entities that stand in for the quotes. Each pattern is tried at one place, at the start or
 * at the end of the text, and never from every character on, so that the work is linear in the length.
 */
export function cleanJson(text: string): string {
  let cleaned = text.replace(/^[\uFEFF\s]+/, '').trimEnd();
  if (!cleaned.includes('"') && cleaned.includes('&quot;')) cleaned = decodeEntities(cleaned);
  for (let round = 0; round < 4; round += 1) {
    cleaned = withoutSectionEnd(cleaned.replace(sectionStart, '').trimStart());
    cleaned = withoutCommentEnd(cleaned.replace(commentStart, '').trimStart());
    // A whole comment before the data: it ends at the first "-->", and the data begins after it.
    const end = cleaned.indexOf('-->');
    const begin = cleaned.search(/[[{]/);
    if (end >= 0 && (begin < 0 || end < begin)) cleaned = cleaned.slice(end + 3).trimStart();
  }
  const assigned = assignment.exec(cleaned);
  return (assigned ? cleaned.slice(assigned[0].length) : cleaned).trim();
}

/** Without one "]]>" that ends the text, with the script comment around it. */
function withoutSectionEnd(text: string): string {
  const inner = text.endsWith('*/') ? text.slice(0, -2).trimEnd() : text;
  const mark = [']]>', ']]&gt;'].find((one) => inner.endsWith(one));
  return mark ? withoutCommentSign(inner.slice(0, -mark.length).trimEnd(), ['//', '/*']) : text;
}

function withoutCommentEnd(text: string): string {
  return text.endsWith('-->') ? withoutCommentSign(text.slice(0, -3).trimEnd(), ['//']) : text;
}

function withoutCommentSign(text: string, signs: readonly string[]): string {
  const sign = signs.find((one) => text.endsWith(one));
  return sign ? text.slice(0, -sign.length).trimEnd() : text;
}
