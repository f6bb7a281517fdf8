import type { PageNote } from '../extract-types';
import { attributeText, select, textContent } from '../page/dom';
import type { Slices } from '../page/slices';
import { cleanJson, dangerousKeys } from './clean-json';
import { addValue, type Item, newItem, shortName } from './item';
import { type JsonValue, readTolerantJson } from './tolerant-json';

/** Broken scripts beyond this length are not repaired: what a page controls must not cost the reader seconds. */
const repairLimit = 1_000_000;
const maxDepth = 64;
const maxNodes = 50_000;
const mostTypes = 20;
/** Most characters of one script, which is parsed in one go, and of all scripts together. */
const mostInOne = 8_000_000;
const mostInAll = 16_000_000;

export interface JsonLdRead {
  /** Every thing described, roots and what they hold, in order of appearance. */
  items: Item[];
  notes: PageNote[];
}

interface ParsedScript {
  roots: JsonValue[];
  repaired: boolean;
}

/** Parses one script's text; null when nothing can be had of it. Never throws. */
export function parseJsonLd(text: string): ParsedScript | null {
  try {
    return { roots: [JSON.parse(text) as JsonValue], repaired: false };
  } catch {
    if (text.length > repairLimit) return null;
  }
  const cleaned = cleanJson(text);
  try {
    return { roots: [JSON.parse(cleaned) as JsonValue], repaired: cleaned.length !== text.trim().length };
  } catch {
    const roots = readTolerantJson(cleaned, maxDepth).filter((root) => typeof root === 'object' && root !== null);
    return roots.length > 0 ? { roots, repaired: true } : null;
  }
}

/** Reads every JSON-LD script under the roots, each apart, so that a broken one does not cost the others. */
export async function readJsonLd(roots: readonly ParentNode[], slices: Slices): Promise<JsonLdRead> {
  const read: JsonLdRead = { items: [], notes: [] };
  const scripts = roots.flatMap((root) => select(root, 'script[type*="ld+json" i]'));
  const budget = { nodes: maxNodes, characters: mostInAll };
  for (const [index, script] of scripts.entries()) {
    if (!/^\s*application\/ld\+json\b/i.test(attributeText(script, 'type'))) continue;
    await slices.rest();
    const where = `json-ld ${index + 1}`;
    const text = textContent(script);
    if (text.trim() === '') continue;
    // Half a script is no data: one beyond the limit is left whole.
    budget.characters -= text.length;
    if (text.length > mostInOne || budget.characters < 0) {
      read.notes.push({ code: 'data-cut', where, count: 0 });
      continue;
    }
    const parsed = parseJsonLd(text);
    if (parsed) {
      const cut = await gatherItems(parsed, where, read.items, budget, slices);
      if (cut) read.notes.push({ code: 'data-cut', where, count: cut === 'depth' ? maxDepth : 0 });
    } else
      read.notes.push(
        text.length > repairLimit
          ? { code: 'data-too-long-to-repair', where, count: Math.round(text.length / 1000) }
          : { code: 'data-unreadable', where, count: 0 },
      );
  }
  return read;
}

interface Waiting {
  value: JsonValue;
  depth: number;
  where: string;
  /** Whose property the value is, null at a root. */
  holder: { item: Item; property: string } | null;
}

/** Turns parsed values into items with a stack, never by recursion. Returns what the budget left out. */
async function gatherItems(
  script: ParsedScript,
  where: string,
  items: Item[],
  budget: { nodes: number },
  slices: Slices,
): Promise<'depth' | 'nodes' | null> {
  const stack: Waiting[] = script.roots.map((value) => ({ value, depth: 0, where, holder: null })).reverse();
  let cut: 'depth' | 'nodes' | null = null;
  for (let waiting = stack.pop(); waiting; waiting = stack.pop()) {
    budget.nodes -= 1;
    if (budget.nodes < 0) return 'nodes';
    if ((budget.nodes & 255) === 0 && slices.due) await slices.rest();
    const { value, depth, holder } = waiting;
    if (value === null) continue;
    if (typeof value !== 'object') {
      if (holder) addValue(holder.item, holder.property, value);
      continue;
    }
    if (depth >= maxDepth) {
      cut = 'depth';
      continue;
    }
    if (Array.isArray(value)) {
      pushAll(stack, value, waiting);
      continue;
    }
    openObject(value, waiting, stack, items, script.repaired);
  }
  return cut;
}

function pushAll(stack: Waiting[], values: JsonValue[], from: Waiting): void {
  for (let index = values.length - 1; index >= 0; index -= 1)
    stack.push({ ...from, value: values[index] as JsonValue, depth: from.depth + 1 });
}

function openObject(
  value: { [key: string]: JsonValue },
  from: Waiting,
  stack: Waiting[],
  items: Item[],
  repaired: boolean,
): void {
  const keys = Object.keys(value).filter((key) => !dangerousKeys.has(key));
  const own = (name: string): JsonValue | undefined => {
    const key = keys.find((one) => one.toLowerCase() === name);
    return key === undefined ? undefined : value[key];
  };
  const literal = own('@value');
  if (literal !== undefined) {
    stack.push({ ...from, value: literal, depth: from.depth + 1 });
    return;
  }
  const listed = own('@list') ?? own('@set');
  if (listed !== undefined) {
    stack.push({ ...from, value: listed, depth: from.depth + 1 });
    return;
  }
  const item = newItem('json-ld', from.where);
  if (repaired) item.caveats.push('repaired');
  const id = own('@id') ?? own('id');
  if (typeof id === 'string' && id.trim() !== '') item.id = id.trim();
  const types = own('@type') ?? own('type');
  item.types = (Array.isArray(types) ? types : [types])
    .slice(0, mostTypes)
    .filter((type): type is string => typeof type === 'string')
    .map(shortName);
  items.push(item);
  if (from.holder) addValue(from.holder.item, from.holder.property, item);
  for (const key of [...keys].reverse()) {
    if (/^@(type|id|context|language|index)$/i.test(key)) continue;
    const child = value[key] as JsonValue;
    const next = { value: child, depth: from.depth + 1, where: from.where };
    if (key.toLowerCase() === '@graph' || key.toLowerCase() === '@included') stack.push({ ...next, holder: null });
    else {
      const name = shortName(key);
      if (/^[A-Z]/.test(name) && !item.caveats.includes('unusual-names')) item.caveats.push('unusual-names');
      stack.push({ ...next, where: `${from.where} > ${name.slice(0, 40)}`, holder: { item, property: name } });
    }
  }
}
