import { type EntryList, fieldsApart, lists, sameValue } from './entries';
import { plainName } from './name';
import type { MakerFile } from './schema';

/** Lists of names and sources, each of which is an entry by itself. */
const nameLists = ['aliases', 'sources', 'authors'] as const;
const fileFields = ['maker', 'licence', 'stamped', 'invented', 'plantsComplete', 'note'] as const;

/** What differs in one entry between the file as it was used last and as it is now. */
export interface Change {
  id: string;
  /** Where the entry stands: in one of the lists, or a field of the price habits or of the file itself. */
  group: EntryList | (typeof nameLists)[number] | 'trade' | 'file';
  kind: 'added' | 'changed' | 'removed';
  /** Fields that differ; of what is no list's, the field itself. */
  fields: string[];
  /** What the file said and what it says now; null where it has none. */
  before: unknown;
  after: unknown;
  /** What the buyer's own file says, as far as it was not what the file said before; null where the buyer took it out. */
  own?: unknown;
  /** The buyer changed the very same: whose stays is the buyer's choice. */
  conflict: boolean;
  /** What the own file says once the change is used; null where it goes. The buyer's other changes are kept on top. */
  result: unknown;
}

/** One list or group of fields, as it was used last, as it is now, and in the buyer's own file. */
interface Sides<T> {
  base: T;
  own: T;
  now: T;
}

/**
 * What changed from the file that was used last (`base`) to the one of now, entry by entry, against the buyer's own file.
 * What the own file says already is no change. No file is altered.
 */
export function changesOf({ base, own, now }: Sides<MakerFile>): Change[] {
  const sides = <T>(of: (file: MakerFile) => T): Sides<T> => ({ base: of(base), own: of(own), now: of(now) });
  return [
    ...fileFields.flatMap((field) =>
      fieldChange(
        'file',
        field,
        sides((file) => file[field]),
      ),
    ),
    ...nameLists.flatMap((list) =>
      listChanges(
        list,
        plainName,
        sides((file) => file[list] ?? []),
      ),
    ),
    ...lists.flatMap(({ list, key }) =>
      listChanges(
        list,
        key as (entry: unknown) => string,
        sides((file): unknown[] => file[list]),
      ),
    ),
    ...tradeFields(base, own, now).flatMap((field) =>
      fieldChange(
        'trade',
        field,
        sides(({ trade }) => Reflect.get(trade, field)),
      ),
    ),
  ];
}

const tradeFields = (...files: MakerFile[]): string[] => [...new Set(files.flatMap(({ trade }) => Object.keys(trade)))];

const kindOf = (before: unknown, after: unknown): Change['kind'] =>
  (before ?? null) === null ? 'added' : (after ?? null) === null ? 'removed' : 'changed';

function fieldChange(group: 'trade' | 'file', field: string, { base, own, now }: Sides<unknown>): Change[] {
  if (sameValue(base, now) || sameValue(own, now)) return [];
  const changed = !sameValue(own, base);
  return [
    {
      id: `${group} ${field}`,
      group,
      kind: kindOf(base, now),
      fields: [field],
      before: base ?? null,
      after: now ?? null,
      ...(changed && { own: own ?? null }),
      conflict: changed,
      result: now ?? null,
    },
  ];
}

function listChanges<T>(group: Change['group'], key: (entry: T) => string, { base, own, now }: Sides<T[]>): Change[] {
  const kept = pairsOf(base, own, key);
  const ownOf = new Map(kept.flatMap(([b, o]) => (b === null ? [] : [[b, o] as const])));
  const added = kept.flatMap(([b, o]) => (b === null && o !== null ? [o] : []));
  const ids = new Map<string, number>();
  return pairsOf(base, now, key).flatMap(([before, after]) => {
    const name = `${group} ${key((after ?? before) as T)}`;
    const count = ids.get(name) ?? 0;
    ids.set(name, count + 1);
    if (before !== null && after !== null && sameValue(before, after)) return [];
    // What the buyer added under the same key is the buyer's word on this entry.
    const mine = before === null ? takeByKey(added, key, after as T) : (ownOf.get(before) ?? null);
    if (sameValue(mine, after)) return [];
    const changed = !sameValue(mine, before);
    return [
      {
        id: count === 0 ? name : `${name} ${count + 1}`,
        group,
        kind: kindOf(before, after),
        fields: fieldsOf(before, after),
        before,
        after,
        ...(changed && { own: mine }),
        ...joined(before, mine, after),
      },
    ];
  });
}

const isGroup = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null;
const fieldsOf = (before: unknown, after: unknown): string[] =>
  isGroup(before) || isGroup(after) ? fieldsApart(isGroup(before) ? before : {}, isGroup(after) ? after : {}) : [];

/** An entry with the file's changes under the buyer's own, field by field; the same field changed by both is a conflict. */
function joined(before: unknown, mine: unknown, after: unknown): Pick<Change, 'conflict' | 'result'> {
  if (sameValue(mine, before)) return { conflict: false, result: after };
  if (!isGroup(before) || !isGroup(mine) || !isGroup(after)) return { conflict: true, result: after };
  const result = { ...mine };
  let conflict = false;
  for (const field of fieldsApart(before, after)) {
    if (!sameValue(before[field], mine[field]) && !sameValue(mine[field], after[field])) conflict = true;
    if (after[field] === undefined) delete result[field];
    else result[field] = after[field];
  }
  return { conflict, result };
}

function takeByKey<T>(entries: T[], key: (entry: T) => string, like: T): T | null {
  const at = entries.findIndex((entry) => key(entry) === key(like));
  return at < 0 ? null : (entries.splice(at, 1)[0] ?? null);
}

/** The entries of two lists side by side: of one key those that are equal first, then the others in their order. */
function pairsOf<T>(left: readonly T[], right: readonly T[], key: (entry: T) => string): [T | null, T | null][] {
  const waiting = new Map<string, T[]>();
  for (const entry of right) waiting.set(key(entry), [...(waiting.get(key(entry)) ?? []), entry]);
  const equal = left.map((entry) => {
    const like = waiting.get(key(entry)) ?? [];
    const found = like.findIndex((one) => sameValue(one, entry));
    return found < 0 ? null : (like.splice(found, 1)[0] as T);
  });
  const pairs = left.map((entry, at): [T | null, T | null] => [
    entry,
    equal[at] ?? waiting.get(key(entry))?.shift() ?? null,
  ]);
  return [...pairs, ...[...waiting.values()].flat().map((entry): [null, T] => [null, entry])];
}

/** The own file with some of the changes used. A list of workshops is complete no more when it lacks one of the file's. */
export function withChanges(own: MakerFile, now: MakerFile, used: readonly Change[]): MakerFile {
  const file: Record<string, unknown> = { ...own, trade: { ...own.trade } };
  for (const change of used) {
    const { group, fields, result } = change;
    if (group === 'trade' || group === 'file') {
      const [field = ''] = fields;
      const room = (group === 'trade' ? file.trade : file) as Record<string, unknown>;
      if (result === null) delete room[field];
      else room[field] = result;
    } else {
      const entries = replaced((file[group] as unknown[] | undefined) ?? [], change);
      if (group === 'authors' && entries.length === 0) delete file.authors;
      else file[group] = entries;
    }
  }
  const merged = file as MakerFile;
  const known = new Set(merged.plants.map(({ code, place }) => `${code} ${place}`));
  if (!now.plants.every(({ code, place }) => known.has(`${code} ${place}`))) delete merged.plantsComplete;
  return merged;
}

function replaced(entries: readonly unknown[], { before, own, result }: Change): unknown[] {
  const mine = own === undefined ? before : own;
  const at = mine === null ? -1 : entries.findIndex((entry) => sameValue(entry, mine));
  if (at < 0) return result === null ? [...entries] : [...entries, result];
  return [...entries.slice(0, at), ...(result === null ? [] : [result]), ...entries.slice(at + 1)];
}

/**
 * The file that a later one is held against: the one of now, but for the changes that were left for later, which are told
 * again then.
 */
export function levelledWith(base: MakerFile, now: MakerFile, left: ReadonlySet<string>): MakerFile {
  return withChanges(
    base,
    now,
    changesOf({ base, own: base, now }).filter(({ id }) => !left.has(id)),
  );
}

/** Whether a file is still on the maker that it was on: under the same name, or one that it names as another of its own. */
export const isSameMaker = (before: MakerFile, now: MakerFile): boolean =>
  [now.maker, ...now.aliases].map(plainName).includes(plainName(before.maker));
