import * as z from 'zod';
import { type SlotKindName, slotKinds } from '../code';
import type { Problem } from '../problem';
import { currentFormat, inCurrentFormat } from './format';
import { parseMakerFile, readMakerFileText } from './parse';
import { pathWords } from './plain';
import type { MakerFile } from './schema';

/** A place in a draft: `['codeSystems', 0, 'layout', 2]`. */
export type FieldPath = readonly (string | number)[];

/**
 * A maker file while it is written: it may be incomplete or wrong. The steps back and forth are part of it, so a
 * draft that is stored as JSON and read back can still be undone: nothing is lost when the page is loaded again.
 */
export const draftSchema = z.strictObject({
  value: z.record(z.string(), z.unknown()),
  past: z.array(z.strictObject({ value: z.record(z.string(), z.unknown()), what: z.string() })),
  future: z.array(z.strictObject({ value: z.record(z.string(), z.unknown()), what: z.string() })),
  /** Path of the last change when it was typing, so that a word is one step and not one for each letter. */
  typing: z.string().nullable(),
});
export type Draft = z.infer<typeof draftSchema>;

/** Steps kept: far more than anyone goes back, and a bound on what is stored. */
const mostSteps = 200;

export const newDraft = (maker = ''): Draft => draftOf({ format: currentFormat, maker });

/**
 * A draft as it was stored, in the format of today with all its steps: a file that was begun in an earlier format goes on
 * where it was left.
 */
export const currentDraft = ({ value, past, future, typing }: Draft): Draft => ({
  value: inCurrentFormat(value),
  past: past.map((one) => ({ ...one, value: inCurrentFormat(one.value) })),
  future: future.map((one) => ({ ...one, value: inCurrentFormat(one.value) })),
  typing,
});

/** A draft of a value that is at least a group of fields; what is wrong with it is told by `inspectDraft`. */
export const draftOf = (value: Record<string, unknown>): Draft => ({ value, past: [], future: [], typing: null });

function step(draft: Draft, value: unknown, what: string, typing: string | null = null): Draft {
  if (value === draft.value) return draft;
  const next = value as Draft['value'];
  if (typing !== null && typing === draft.typing) return { ...draft, value: next, future: [] };
  const past = [...draft.past, { value: draft.value, what }].slice(-mostSteps);
  return { value: next, past, future: [], typing };
}

/** A copy of `inside` with the value at `path` made anew by `make`; groups and lists on the way are created. */
function rebuilt(inside: unknown, path: FieldPath, make: (old: unknown) => unknown): unknown {
  const [key, ...rest] = path;
  if (key === undefined) return make(inside);
  if (key === '__proto__') return inside;
  if (typeof key === 'number') {
    const list = Array.isArray(inside) ? [...inside] : [];
    list[key] = rebuilt(list[key], rest, make);
    return list;
  }
  const group = typeof inside === 'object' && inside !== null && !Array.isArray(inside) ? inside : {};
  const old = Object.hasOwn(group, key) ? Reflect.get(group, key) : undefined;
  const value = rebuilt(old, rest, make);
  const { [key]: _, ...others } = group as Record<string, unknown>;
  return value === undefined ? others : { ...group, [key]: value };
}

/**
 * Sets a field; `undefined` takes it away. With `typing`, changes of the same field in a row are one step. `what` says
 * what a change of more than one field does, where its path would not.
 */
export function setField(
  draft: Draft,
  path: FieldPath,
  value: unknown,
  { typing = false, what }: { typing?: boolean; what?: string | undefined } = {},
): Draft {
  const words = pathWords(path);
  return step(
    draft,
    rebuilt(draft.value, path, () => value),
    what ?? `change ${words}`,
    typing ? words : null,
  );
}

/** Puts an entry into a list, at its end when no place is given. */
export function insertEntry(draft: Draft, list: FieldPath, entry: unknown, at?: number): Draft {
  const insert = (old: unknown) => {
    const entries = Array.isArray(old) ? old : [];
    return [...entries.slice(0, at ?? entries.length), entry, ...entries.slice(at ?? entries.length)];
  };
  return step(draft, rebuilt(draft.value, list, insert), `add to ${pathWords(list)}`);
}

/** Takes an entry out; with `whole` the list goes with its last one. */
export function removeEntry(draft: Draft, list: FieldPath, at: number, whole = false): Draft {
  const remove = (old: unknown) => {
    if (!Array.isArray(old)) return old;
    const left = old.filter((_, place) => place !== at);
    return whole && left.length === 0 ? undefined : left;
  };
  return step(draft, rebuilt(draft.value, list, remove), `remove ${pathWords([...list, at])}`);
}

/** Moves an entry of a list; `to` is its place afterwards. */
export function moveEntry(draft: Draft, list: FieldPath, from: number, to: number): Draft {
  const move = (old: unknown) => {
    if (!Array.isArray(old) || !(from in old) || to < 0 || to >= old.length) return old;
    const others = old.filter((_, place) => place !== from);
    return [...others.slice(0, to), old[from], ...others.slice(to)];
  };
  return step(draft, rebuilt(draft.value, list, move), `move ${pathWords([...list, from])}`);
}

/** One step back; the same draft when there is none. */
export function undoStep(draft: Draft): Draft {
  const last = draft.past.at(-1);
  if (!last) return draft;
  const future = [{ value: draft.value, what: last.what }, ...draft.future];
  return { value: last.value, past: draft.past.slice(0, -1), future, typing: null };
}

/** One step forth again; the same draft when there is none. */
export function redoStep(draft: Draft): Draft {
  const [next, ...future] = draft.future;
  if (!next) return draft;
  return { value: next.value, past: [...draft.past, { value: draft.value, what: next.what }], future, typing: null };
}

export interface Inspection {
  /** The finished file when nothing is wrong. */
  file: MakerFile | null;
  problems: Problem[];
  /** Problems by the path of their field, as `pathWords` writes it. */
  byField: Map<string, Problem[]>;
}

/** What is wrong with a draft, each problem at its field in plain words. */
export function inspectDraft(draft: Draft): Inspection {
  const result = parseMakerFile(draft.value);
  const problems = result.ok ? [] : result.problems;
  const byField = new Map<string, Problem[]>();
  for (const problem of problems) byField.set(problem.where, [...(byField.get(problem.where) ?? []), problem]);
  return { file: result.ok ? result.file : null, problems, byField };
}

/** Opens a dropped file. One that is JSON but not yet a maker file opens too, so that it can be corrected. */
export function openText(text: string): { draft: Draft; problems: Problem[] } | { draft: null; problems: Problem[] } {
  const result = readMakerFileText(text);
  if (result.ok) return { draft: draftOf(result.file), problems: [] };
  const beyond = ['maker-file-too-large', 'maker-file-not-json', 'maker-file-newer'];
  if (result.problems.some(({ code }) => beyond.includes(code))) return { draft: null, problems: result.problems };
  const value: unknown = JSON.parse(text.replace(/^\uFEFF/, ''));
  const isGroup = typeof value === 'object' && value !== null && !Array.isArray(value);
  const draft = isGroup ? draftOf(inCurrentFormat(value as Record<string, unknown>)) : null;
  // What is wrong is told where the draft has it, which is of today's format.
  return { draft, problems: draft && draft.value !== value ? inspectDraft(draft).problems : result.problems };
}

/** The draft as the text of a maker file, finished or not. */
export const exportText = (draft: Draft): string => `${JSON.stringify(draft.value, null, 2)}\n`;

/** A slot of each kind as it is when it has just been clicked into a layout. */
export const freshSlots: { kind: SlotKindName; slot: object }[] = slotKinds.map(({ kind, fresh }) => ({
  kind,
  slot: fresh,
}));
