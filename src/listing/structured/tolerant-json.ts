import { dangerousKeys } from './clean-json';

/** What JSON can say, after reading; objects have no prototype, so no key can reach one. */
export type JsonValue = string | number | boolean | null | JsonValue[] | { [key: string]: JsonValue };

interface Open {
  value: JsonValue[] | Record<string, JsonValue>;
  key: string | null;
}

const emptyObject = (): Record<string, JsonValue> => Object.create(null) as Record<string, JsonValue>;
const numberLike = /^[-+]?(?:\d+(?:\.\d*)?|\.\d+)(?:e[-+]?\d+)?$/i;
const wordStop = /[\s,:{}[\]"'/;]/;

/**
 * Reads JSON that people wrote by hand or by template: comments, single quotes, bare keys, missing, trailing or doubled
 * commas, raw new lines, bad escapes, inner quotes, several roots, a cut-off end. Never throws, never recurses; each
 * character is looked at a bounded number of times. Levels below `maxDepth` are skipped. Returns the roots.
 */
export function readTolerantJson(text: string, maxDepth: number): JsonValue[] {
  const roots: JsonValue[] = [];
  const open: Open[] = [];
  let at = 0;
  let skipped = 0;

  const place = (value: JsonValue) => {
    if (skipped > 0) return;
    const top = open.at(-1);
    if (!top) roots.push(value);
    else if (Array.isArray(top.value)) top.value.push(value);
    else if (top.key !== null) {
      if (!dangerousKeys.has(top.key)) top.value[top.key] = value;
      top.key = null;
    }
  };
  const begin = (value: Open['value']) => {
    if (open.length >= maxDepth || skipped > 0) {
      if (skipped === 0) place(null);
      skipped += 1;
      return;
    }
    place(value);
    open.push({ value, key: null });
  };
  const end = () => {
    if (skipped > 0) skipped -= 1;
    else open.pop();
  };
  const word = (value: string | number | boolean | null, isText: boolean) => {
    const top = open.at(-1);
    const wantsKey = skipped === 0 && top !== undefined && !Array.isArray(top.value) && top.key === null;
    if (wantsKey) top.key = String(value);
    else if (isText || open.length > 0) place(value);
  };

  while (at < text.length) {
    const character = text[at] as string;
    if (character === '{') begin(emptyObject());
    else if (character === '[') begin([]);
    else if (character === '}' || character === ']') end();
    else if (character === '"' || character === "'" || character === '`') {
      const read = readString(text, at, character, open.length > 0);
      word(read.value, true);
      at = read.next;
      continue;
    } else if (character === '/' && (text[at + 1] === '/' || text[at + 1] === '*')) {
      const stop = text[at + 1] === '/' ? text.indexOf('\n', at) : text.indexOf('*/', at + 2) + 1;
      at = stop <= 0 ? text.length : stop + 1;
      continue;
    } else if (!wordStop.test(character)) {
      let stop = at + 1;
      while (stop < text.length && !wordStop.test(text[stop] as string)) stop += 1;
      const bare = text.slice(at, stop);
      word(bareValue(bare), false);
      at = stop;
      continue;
    }
    at += 1;
  }
  return roots;
}

function bareValue(bare: string): string | number | boolean | null {
  if (bare === 'true') return true;
  if (bare === 'false') return false;
  if (bare === 'null' || bare === 'undefined' || bare === 'NaN') return null;
  return numberLike.test(bare) && Number.isFinite(Number(bare)) ? Number(bare) : bare;
}

const escapes: Record<string, string> = { n: '\n', t: '\t', r: '\r', b: '\b', f: '\f' };

/**
 * Reads a quoted string. A quote ends it only where what follows could follow a value, so that `a 12" record` stays
 * whole; the look ahead is at most the spaces after the quote and 80 characters.
 */
function readString(text: string, start: number, quote: string, inside: boolean): { value: string; next: number } {
  const parts: string[] = [];
  let from = start + 1;
  let at = from;
  while (at < text.length) {
    const character = text[at];
    if (character === '\\') {
      parts.push(text.slice(from, at));
      const code = text[at + 1] ?? '';
      const hex = code === 'u' ? text.slice(at + 2, at + 6) : '';
      if (/^[0-9a-f]{4}$/i.test(hex)) {
        parts.push(String.fromCharCode(Number.parseInt(hex, 16)));
        at += 6;
      } else {
        parts.push(escapes[code] ?? code);
        at += 2;
      }
      from = at;
      continue;
    }
    if (character === quote && (!inside || endsString(text, at + 1))) break;
    at += 1;
  }
  parts.push(text.slice(from, Math.min(at, text.length)));
  return { value: parts.join(''), next: at + 1 };
}

function endsString(text: string, after: number): boolean {
  let at = after;
  let newLine = false;
  while (at < text.length && /\s/.test(text[at] as string)) {
    newLine ||= text[at] === '\n';
    at += 1;
  }
  const next = text[at];
  if (next === undefined || next === ':' || next === '}' || next === ']' || next === '/') return true;
  if (next === ',')
    return /^,\s{0,40}(?:["'{}[\],\d-]|[A-Za-z_$@][\w$@-]{0,40}\s{0,4}:|true|false|null|undefined|NaN|\/|$)/.test(
      text.slice(at, at + 90),
    );
  // A missing comma: the next line begins with a key.
  return (next === '"' || next === "'") && newLine && /^(["'])[^"'\n]{1,80}\1\s{0,4}:/.test(text.slice(at, at + 90));
}
