import type { ClaimDraft } from './passage';

/** What the reader knows of a claim beside what it says: another reading of the same words may change these. */
const notSaid = new Set(['at', 'confidence', 'takenBy']);

/** The same for the same statement, in whatever order its parts were written down. */
function canonical(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(canonical);
  if (typeof value === 'string') return value.normalize('NFC').replace(/\s+/g, ' ').trim();
  if (typeof value !== 'object' || value === null) return value;
  const parts = new Map(Object.entries(value).filter(([, part]) => part !== undefined));
  return [...parts.keys()].sort().map((name) => [name, canonical(parts.get(name))]);
}

/** FNV-1a, 32 bits: short, and the same everywhere. Two statements that share one are told apart by their number. */
function hashOf(text: string): string {
  let hash = 0x811c9dc5;
  for (let index = 0; index < text.length; index += 1)
    hash = Math.imul(hash ^ text.charCodeAt(index), 0x01000193) >>> 0;
  return hash.toString(36).padStart(7, '0');
}

/**
 * Names claims by what they say, with which words, in which field: `made-1k2j3h4`. Where something stands does not
 * count, so that one more date in a title renames no other claim, and no finding that rests on one. The second of two
 * identical ones ends in `-2`.
 */
export function claimNamer(): (draft: ClaimDraft) => string {
  const counts = new Map<string, number>();
  return (draft) => {
    const said = Object.entries(draft).filter(([name]) => !notSaid.has(name));
    const id = `${draft.kind}-${hashOf(JSON.stringify([draft.at.field, canonical(Object.fromEntries(said))]))}`;
    const count = (counts.get(id) ?? 0) + 1;
    counts.set(id, count);
    return count === 1 ? id : `${id}-${count}`;
  };
}
