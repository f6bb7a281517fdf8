import type { Role } from '../said/label';
import { areOf, arePeople, filledOf, isOf, type Sort } from './sorts';

/** What is known of a table beside its cells. */
export interface Hints {
  /** Whether the words above it speak of workshops. */
  ofPlants: boolean;
  /** Whether they name a part of the piece. */
  ofPart: boolean;
  /** Whether some of its columns are prices by year. */
  ofPrices: boolean;
}

/** What the rows of a table may tell: by which columns they do, and which may stand beside them. The surest sort comes first. */
interface Frame {
  needs: readonly [Role, Sort][];
  may: readonly [Role, Sort][];
  /** Whether its columns, as they are taken, are enough to tell it from a table of anything else. */
  holds?: (taken: readonly (Role | null)[], hints: Hints, headed: boolean) => boolean;
}

const time: [Role, Sort] = ['period', 'period'];
const form: [Role, Sort] = ['format', 'format'];
const place: [Role, Sort] = ['where', 'where'];

const frames: readonly Frame[] = [
  // Workshops: short letters beside towns may be of anything, until a time, a head or the words above speak for them.
  {
    needs: [
      ['code', 'code'],
      ['place', 'place'],
    ],
    may: [time],
    holds: (taken, { ofPlants }, headed) => taken.includes('period') || ofPlants || headed,
  },
  // How codes were built in a time, in words, by a code beside its date, or by both.
  { needs: [time, form], may: [['example', 'dated'], ['example', 'example'], ['reads', 'reads'], place] },
  { needs: [time, ['example', 'dated']], may: [form, place] },
  {
    needs: [
      ['reads', 'reads'],
      ['example', 'example'],
    ],
    may: [time, form, place],
  },
  {
    needs: [
      ['size', 'size'],
      ['model', 'name'],
    ],
    may: [time, place],
  },
  { needs: [['model', 'name']], may: [['size', 'size'], time, place], holds: (_, { ofPrices }) => ofPrices },
  { needs: [['where', 'onPiece'], time], may: [['model', 'name']] },
  { needs: [time, ['is', 'words']], may: [], holds: (_, { ofPart }) => ofPart },
];

/** Roles that stand beside those of any frame. */
const besides: ReadonlySet<Role> = new Set(['note', 'from', 'until', 'width', 'height', 'depth', 'price', 'maker']);
/** What may be told in two columns: a town and its country, the signs of a code and what they write. */
const inTwo: ReadonlySet<Role> = new Set(['place', 'format']);
const ofTime: readonly Role[] = ['period', 'from', 'until'];

const areDistinct = (texts: readonly string[]): boolean => new Set(texts).size === texts.length;

/** The texts of columns, and of what sorts each is: every cell is asked once for each. */
class Columns {
  private readonly known = new Map<string, boolean>();
  constructor(readonly texts: readonly string[][]) {}

  are(sort: Sort, at: number): boolean {
    const key = `${sort} ${at}`;
    const told = this.known.get(key) ?? areOf(sort, this.texts[at]!);
    this.known.set(key, told);
    return told;
  }
}

/** The columns that tell a role, of those that are free; null where it stays open which. */
function columnsOf(role: Role, sort: Sort, columns: Columns, free: readonly number[]): number[] | null {
  const { texts } = columns;
  const fitting = free.filter((at) => columns.are(sort, at) && !(role === 'place' && arePeople(texts[at]!)));
  if (role === 'model') {
    // What a row is of opens it, and no two rows are of the same.
    const [first] = fitting;
    return first !== undefined && areDistinct(filledOf(texts[first]!)) ? [first] : null;
  }
  // Bare years beside a thing tell that something was then, and not from when to when.
  if (role === 'period' && fitting.some((at) => columns.are('year', at))) return null;
  if (fitting.length === 1) return fitting;
  const inBoth = fitting.length === 2 && inTwo.has(role);
  return inBoth && (role !== 'place' || fitting.some((at) => columns.are('country', at))) ? fitting : null;
}

/** The columns of a table as one frame takes them; null where it does not. */
function takenBy(
  frame: Frame,
  columns: Columns,
  named: readonly (Role | null)[],
  closed: ReadonlySet<number>,
  hints: Hints,
): (Role | null)[] | null {
  const own = new Set<Role>([...frame.needs, ...frame.may].map(([role]) => role));
  if (named.some((role) => role !== null && !own.has(role) && !besides.has(role))) return null;
  const taken = [...named];
  const isTold = (role: Role) =>
    taken.includes(role) || (role === 'period' && ofTime.some((one) => taken.includes(one)));
  const take = ([role, sort]: readonly [Role, Sort]): boolean => {
    if (isTold(role)) return true;
    const free = columns.texts.flatMap((_, at) => (taken[at] === null && !closed.has(at) ? [at] : []));
    const told = columnsOf(role, sort, columns, free);
    for (const at of told ?? []) taken[at] = role;
    return told !== null;
  };
  if (!frame.needs.every(take)) return null;
  for (const one of frame.may) take(one);
  const headed = frame.needs.some(([role]) => named.includes(role));
  return (frame.holds?.(taken, hints, headed) ?? true) ? taken : null;
}

/** A table of more columns is no list of things that are told by their cells. */
const widest = 24;

const counted = (taken: readonly (Role | null)[]): number => taken.filter((role) => role !== null).length;

/**
 * The roles of a table's columns, inferred from all of its cells together: of what rows may tell, that which explains most of
 * the columns. `named` are the roles that heads tell, which stand; `closed` are columns that tell something else. Null where
 * nothing fits, and where two things explain as much.
 */
export function rolesByCells(
  columns: readonly string[][],
  named: readonly (Role | null)[],
  closed: ReadonlySet<number>,
  hints: Hints,
): (Role | null)[] | null {
  if (columns.length > widest) return null;
  const asked = new Columns(columns);
  const all = frames.flatMap((frame) => {
    const taken = takenBy(frame, asked, named, closed, hints);
    return taken ? [taken] : [];
  });
  const most = Math.max(0, ...all.map(counted));
  const [best, ...others] = new Map(
    all.filter((taken) => counted(taken) === most).map((taken) => [JSON.stringify(taken), taken]),
  ).values();
  return best && others.length === 0 ? best : null;
}

/** Sorts that words which head a column hardly ever are. */
const strict: readonly Sort[] = ['code', 'period', 'year', 'size', 'dated', 'example', 'reads', 'where', 'format'];
/** Those of them that no head is, where its column is of them: "Place" heads places, and "Letters" forms. */
const strictest: readonly Sort[] = ['code', 'size', 'dated', 'example', 'reads'];

const sortsBelow = (rows: readonly (readonly string[])[], of: readonly Sort[]): Sort[][] =>
  Array.from({ length: Math.max(0, ...rows.map((row) => row.length)) }, (_, at) => {
    const texts = rows.map((row) => row[at] ?? '');
    return filledOf(texts).length > 1 ? of.filter((sort) => areOf(sort, texts)) : [];
  });

/** Whether a row is of the same sort as all below it, in any column: what looks like a head of it is a code or a town. */
export const isLikeBelow = (row: readonly string[], below: readonly (readonly string[])[]): boolean =>
  sortsBelow(below, strictest).some((sorts, at) => sorts.some((sort) => isOf(sort, row[at] ?? '')));

/** How many rows at the head of a table are unlike all below them: they head it, whatever their words are. */
export function rowsOfHeads(rows: readonly (readonly string[])[]): number {
  if (rows.some(({ length }) => length > widest)) return 0;
  for (const count of [1, 2]) {
    const below = rows.slice(count);
    if (below.length < 2) return 0;
    const sorted = sortsBelow(below, strict);
    const isHead = (row: readonly string[]) =>
      sorted.every((sorts, at) => !sorts.some((sort) => isOf(sort, row[at] ?? '')));
    if (sorted.some((sorts) => sorts.length > 0) && rows.slice(0, count).every(isHead)) return count;
  }
  return 0;
}
