import { type EntryList, fieldsApart, lists, sameValue } from './entries';
import { plainName } from './name';
import type { MakerFile } from './schema';

/** Two files say different things of the same entry; `mine` or `theirs` is null when only the other has the field. */
export interface Conflict {
  id: string;
  /** Where the entry stands: in one of the lists, or a field of the price habits or of the file itself. */
  group: EntryList | 'trade' | 'file';
  /** Fields of the entry that differ; of what is no list's, the field itself. */
  fields: string[];
  mine: unknown;
  theirs: unknown;
}

type Named = Omit<Conflict, 'mine' | 'theirs'>;

export type Choice = 'mine' | 'theirs';

export interface Merge {
  merged: MakerFile;
  conflicts: Conflict[];
}

const union = (mine: readonly string[], theirs: readonly string[]): string[] => {
  const known = new Set(mine.map(plainName));
  return [...mine, ...theirs.filter((name) => !known.has(plainName(name)))];
};

/**
 * Joins two files of one maker. What only one of them knows is taken; where they differ, `choices` decides by the
 * conflict's id, and without a choice mine stays. Every difference is listed, chosen or not. Neither file is changed.
 * The list of plants is complete when the file that says so of its own knows every plant of both.
 */
export function mergeMakerFiles(mine: MakerFile, theirs: MakerFile, choices: Record<string, Choice> = {}): Merge {
  const conflicts: Conflict[] = [];
  const decide = <T>({ id, ...what }: Named, own: T, other: T): T => {
    conflicts.push({ id, ...what, mine: own ?? null, theirs: other ?? null });
    return choices[id] === 'theirs' ? other : own;
  };
  const merged: MakerFile = {
    ...mine,
    aliases: union(mine.aliases, [
      ...(plainName(mine.maker) === plainName(theirs.maker) ? [] : [theirs.maker]),
      ...theirs.aliases,
    ]),
    sources: union(mine.sources, theirs.sources),
  };
  for (const { list, key } of lists) {
    const entries: object[] = [...mine[list]];
    for (const other of theirs[list]) {
      const at = entries.findIndex((own) => key(own as never) === key(other as never));
      const own = entries[at];
      if (!own) entries.push(other);
      else if (!sameValue(own, other)) {
        const id = `${list} ${key(other as never)}`;
        entries[at] = decide({ id, group: list, fields: fieldsApart(own, other) }, own, other);
      }
    }
    Object.assign(merged, { [list]: entries });
  }
  const authors = union(mine.authors ?? [], theirs.authors ?? []);
  if (authors.length > 0) merged.authors = authors;
  for (const field of ['stamped', 'invented', 'licence', 'note'] as const) {
    const [own, other] = [mine[field], theirs[field]];
    if (own === undefined && other !== undefined) Object.assign(merged, { [field]: other });
    else if (own !== undefined && other !== undefined && !sameValue(own, other)) {
      Object.assign(merged, {
        [field]: decide<unknown>({ id: field, group: 'file', fields: [field] }, own, other),
      });
    }
  }
  delete merged.plantsComplete;
  if ([mine, theirs].some((file) => file.plantsComplete && file.plants.length === merged.plants.length))
    merged.plantsComplete = true;
  merged.trade = { ...theirs.trade, ...mine.trade };
  for (const field of Object.keys(theirs.trade) as (keyof MakerFile['trade'])[]) {
    const [own, other] = [mine.trade[field], theirs.trade[field]];
    if (own === undefined || sameValue(own, other)) continue;
    Object.assign(merged.trade, {
      [field]: decide<unknown>({ id: `trade ${field}`, group: 'trade', fields: [field] }, own, other),
    });
  }
  return { merged, conflicts };
}
