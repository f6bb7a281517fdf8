import type { Change, Conflict, Entry, MakerFile, Run, Size } from '../../maker';
import { strings } from '../../words';
import { entryTitle } from './conflict-title';
import { periodText } from './period-text';
import { type SlotValue, slotWords, wholeSlotWords } from './slot-words';

const words = strings.makers;
type Period = readonly [string, string | null];
type Stamped = NonNullable<MakerFile['stamped']>;
type Exception = NonNullable<Entry['exceptions']>[number];

/** What a field is called in the editor, where its name in the file is not the catalogue's. */
const labels: Record<string, () => string> = {
  reversed: () => words.rightToLeft,
  layouts: () => words.layout,
  models: () => words.onlyModels,
  part: () => words.part,
  systems: () => words.carrierSystems,
  texts: () => words.texts,
  words: () => words.partWords,
  model: () => words.ofModel,
};
const labelOf = (field: string): string => {
  const label = labels[field]?.() ?? Reflect.get(words, field);
  return typeof label === 'string' ? label.replace(/, (one a line|je Zeile eine[rs]?( Person)?)$/, '') : field;
};

/** One field of an entry as two sides have it; no label where the title says which it is. */
interface FieldWords {
  label: string | null;
  mine: string;
  theirs: string;
}

export interface ConflictWords {
  title: string;
  /** Each field that differs. */
  parts: FieldWords[];
}

/** A difference of two files as the editor's fields would show both sides of it. */
export const conflictWords = ({ group, fields, mine, theirs }: Conflict): ConflictWords => ({
  title: titleOf(group, mine ?? theirs, fields),
  parts: fieldsWords(group, fields, mine, theirs),
});

/** What an entry is called; of what is no list's, what its field is. */
export function titleOf(group: Change['group'], entry: unknown, [field = '']: readonly string[]): string {
  if (group === 'trade') return `${words.trade}: ${labelOf(field)}`;
  if (group === 'file') return labelOf(field);
  if (group === 'aliases' || group === 'sources' || group === 'authors') return `${labelOf(group)}: ${entry}`;
  return entryTitle(group, entry);
}

/** Fields as the editor would show both sides of them. */
export function fieldsWords(
  group: Change['group'],
  fields: readonly string[],
  mine: unknown,
  theirs: unknown,
): FieldWords[] {
  if (group === 'trade' || group === 'file') {
    const [field = ''] = fields;
    return [{ label: null, ...bothWords(field, mine, theirs) }];
  }
  const fieldOf = (side: unknown, field: string) => Reflect.get(Object(side ?? {}), field);
  return fields.map((field) => ({
    label: labelOf(field),
    ...bothWords(field, fieldOf(mine, field), fieldOf(theirs, field)),
  }));
}

function bothWords(field: string, mine: unknown, theirs: unknown): { mine: string; theirs: string } {
  if (field === 'layout' || field === 'layouts') {
    const [own, other] = [layoutWords(field, mine, slotWords), layoutWords(field, theirs, slotWords)];
    if (own !== other) return { mine: own, theirs: other };
    // The slots are the same: what differs is a setting of one of them.
    return { mine: layoutWords(field, mine, wholeSlotWords), theirs: layoutWords(field, theirs, wholeSlotWords) };
  }
  const [own, other] = [listOf(field, mine), listOf(field, theirs)];
  if (own && other && (own.length > 1 || other.length > 1)) return apart(own, other);
  return { mine: own?.join('') || words.nothing, theirs: other?.join('') || words.nothing };
}

/** Entries of a list that only one side has, and how many both have: long lists mostly differ in little. */
function apart(own: readonly string[], other: readonly string[]): { mine: string; theirs: string } {
  const both = own.filter((one) => other.includes(one)).length;
  const [mine, theirs] = [own.filter((one) => !other.includes(one)), other.filter((one) => !own.includes(one))];
  if (both === 0 || mine.length + theirs.length === 0) return { mine: own.join('; '), theirs: other.join('; ') };
  const side = (only: readonly string[]) =>
    only.length === 0 ? words.onlyShared(both) : words.besideShared(only.join('; '), both);
  return { mine: side(mine), theirs: side(theirs) };
}

function layoutWords(field: string, value: unknown, slot: (slot: SlotValue) => string): string {
  if (!Array.isArray(value)) return words.nothing;
  const all: SlotValue[][] = field === 'layouts' ? value : [value];
  return all.map((slots) => slots.map(slot).join(', ')).join('; ');
}

/** A field's value, entry by entry; null when it is not there. A value that is no list is one entry. */
function listOf(field: string, value: unknown): string[] | null {
  if (value === undefined || value === null) return null;
  if (field === 'used' || field === 'made') {
    const periods = (Array.isArray((value as unknown[])[0]) ? value : [value]) as Period[];
    return periods.map(periodText);
  }
  return (Array.isArray(value) ? value : [value]).map((one) => oneWords(field, one));
}

function oneWords(field: string, value: unknown): string {
  switch (field) {
    case 'strength':
      return value === 'hard' ? words.hard : words.soft;
    case 'part':
    case 'parts':
      return Reflect.get(strings.parts, String(value)) ?? String(value);
    case 'examples': {
      const { code, reads, note } = value as { code: string; reads: string; note?: string };
      return `${code}: ${reads}${note ? ` (${note})` : ''}`;
    }
    case 'runs':
      return runWords(value as Run);
    case 'standing': {
      const { is, why } = value as NonNullable<Entry['standing']>;
      return why ? `${words.standings[is]} (${why})` : words.standings[is];
    }
    case 'exceptions':
      return (value as Exception).what;
    case 'pictures':
      return Reflect.get(value as object, 'shows');
    case 'condition':
      return Reflect.get(strings.claims.says.conditions, String(value)) ?? String(value);
    case 'kind':
      return kindWords(String(value));
    case 'stamped': {
      const { from, to, sources } = value as Stamped;
      return sources ? `${periodText([from, to])} (${sources.join('; ')})` : periodText([from, to]);
    }
    default:
      return value === true ? words.yes : value === false ? words.no : String(value);
  }
}

const kindWords = (kind: string): string =>
  Reflect.get({ ...words.carrierKinds, ...words.markKinds, ...words.runKinds }, kind) ?? kind;

function runWords({ made, size, kind, name, with: whom, pieces }: Run): string {
  const said = [
    ...(made ? (listOf('made', made) ?? []) : []),
    ...(size ? [sizeWords(size)] : []),
    ...(kind ? [kindWords(kind)] : []),
    ...[name, whom].flatMap((one) => one ?? []),
    ...(pieces === undefined ? [] : [words.piecesMade(pieces)]),
  ];
  return said.length === 0 ? words.nothing : said.join(', ');
}

function sizeWords({ unit, tolerance, ...sides }: Size): string {
  const named = (['width', 'height', 'depth'] as const).flatMap((side) =>
    sides[side] === undefined ? [] : [words.sides[side](sides[side])],
  );
  return words.sizeWithin(named.join(', '), unit, tolerance);
}
