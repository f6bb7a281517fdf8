/** Width of the window that rules are asked for, CSS pixels: a desk's. */
const windowWidth = 1280;

/** Whether a group of rules holds where a buyer looks: on a screen, as wide as a desk's. */
function holdsOnScreen(head: string): boolean {
  if (!/^@media/i.test(head)) return /^@(?:supports|layer)/i.test(head);
  return head.split(',').some((query) => {
    const width = (name: string) =>
      new RegExp(`${name}-width\\s*:\\s*(\\d{1,5})(?:\\.\\d{1,4})?(r?em)?`, 'i').exec(query);
    const pixels = (found: RegExpExecArray | null, none: number) =>
      found ? Number(found[1]) * (found[2] === undefined ? 1 : 16) : none;
    const fits =
      pixels(width('min'), 0) <= windowWidth && windowWidth <= pixels(width('max'), Number.POSITIVE_INFINITY);
    return fits && !/\b(?:print|speech|not)\b|prefers-|orientation|hover|pointer/i.test(query);
  });
}

/** A rule of a style sheet, without its braces. */
export interface StyleRule {
  selector: string;
  body: string;
}

/** The rules of a sheet that hold on a screen; those for print, for small windows and within an animation are left out. */
export function rulesOnScreen(sheet: string): StyleRule[] {
  const rules: StyleRule[] = [];
  const open: ('rule' | 'holds' | 'not')[] = [];
  let head = '';
  for (const [token] of withoutComments(sheet).matchAll(/[{}]|[^{}]+/g)) {
    if (token === '{') {
      open.push(head.startsWith('@') ? (holdsOnScreen(head) ? 'holds' : 'not') : 'rule');
    } else if (token === '}') {
      open.pop();
      head = '';
    } else if (open.at(-1) !== 'rule') head = token.slice(token.lastIndexOf(';') + 1).trim();
    else if (!open.includes('not')) rules.push({ selector: head, body: token });
  }
  return rules;
}

function withoutComments(sheet: string): string {
  const [first = '', ...parts] = sheet.split('/*');
  return first + parts.map((part) => (part.includes('*/') ? part.slice(part.indexOf('*/') + 2) : '')).join(' ');
}
