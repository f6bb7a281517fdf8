import { nodesOf, parseFile, type SyntaxNode } from '../unit/layout/source-files';
import type { Change } from './changes';

/** A change that waits in the program: it happens while its number is the one that is on. */
export type Switched = Change & { id: number };

/** A piece of a file that has changes: what stands there, and what stands there while one of them is on. */
interface Place {
  start: number;
  end: number;
  statement: boolean;
  changes: { id: number; text: string }[];
}

/**
 * A file that holds all its changes at once, each behind a number: `on$(7)` tells that the place of change 7 is reached,
 * and whether that change is on. So many changes cost one reading of the program.
 */
export function withSwitches(path: string, code: string, changes: readonly Switched[]): string {
  if (changes.length === 0) return code;
  const chains = chainsOf(parseFile({ path, code }).program);
  const places = new Map<string, Place>();
  for (const { id, start, end, text, operator } of changes) {
    const statement = operator === 'statement' || /^if \((true \|\||false &&)/.test(text);
    const chain = statement ? undefined : chains.find(({ links }) => links.has(`${start}-${end}`));
    const at = chain ?? { start, end };
    const key = `${at.start}-${at.end}-${statement}`;
    const place = places.get(key) ?? { start: at.start, end: at.end, statement, changes: [] };
    const whole = code.slice(at.start, start) + text + code.slice(end, at.end);
    places.set(key, { ...place, changes: [...place.changes, { id, text: whole }] });
  }
  // What encloses comes first.
  const sorted = [...places.values()].sort(
    (a, b) => a.start - b.start || b.end - a.end || Number(b.statement) - Number(a.statement),
  );
  return written(code, 0, code.length, sorted);
}

function written(code: string, from: number, to: number, places: readonly Place[]): string {
  let text = '';
  let at = from;
  for (let next = 0; next < places.length; ) {
    const place = places[next] as Place;
    let behind = next + 1;
    while (behind < places.length && (places[behind] as Place).start < place.end) behind += 1;
    const stands = written(code, place.start, place.end, places.slice(next + 1, behind));
    text += code.slice(at, place.start) + switched(place, stands);
    at = place.end;
    next = behind;
  }
  return text + code.slice(at, to);
}

function switched({ statement, changes }: Place, stands: string): string {
  if (statement) return `{${changes.map(({ id, text }) => `if(on$(${id})){${text}}else `).join('')}{${stands}}}`;
  return `(${changes.map(({ id, text }) => `on$(${id})?(${text}):`).join('')}(${stands}))`;
}

/** Optional chains, `a?.b.c()`, with the places of their links: brackets around a link would end the chain there. */
function chainsOf(program: SyntaxNode): { start: number; end: number; links: Set<string> }[] {
  return [...nodesOf(program)].flatMap(({ type, start, end, expression }) => {
    if (type !== 'ChainExpression') return [];
    const links = new Set<string>();
    for (let link = expression as SyntaxNode | undefined; link; link = next(link))
      links.add(`${link.start}-${link.end}`);
    return [{ start, end, links }];
  });
}

function next({ type, object, callee, expression }: SyntaxNode): SyntaxNode | undefined {
  if (type === 'MemberExpression') return object as SyntaxNode;
  if (type === 'CallExpression') return callee as SyntaxNode;
  return type === 'TSNonNullExpression' ? (expression as SyntaxNode) : undefined;
}
