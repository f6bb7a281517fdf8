import {
  type Draft,
  type FieldPath,
  type Inspection,
  insertEntry,
  moveEntry,
  pathWords,
  removeEntry,
  setField,
} from '../../maker';
import type { Problem } from '../../problem';

/** What every field of the editor is handed: values of the draft, its problems by field, and the ways to change it. */
export interface Editing {
  at(path: FieldPath): unknown;
  /** A list of the draft; empty when it is not there yet. */
  list(path: FieldPath): unknown[];
  problems(path: FieldPath): Problem[];
  /** Problems of the field and of all that is inside it. */
  problemsWithin(path: FieldPath): Problem[];
  set(path: FieldPath, value: unknown, typing?: boolean): void;
  /** Sets a field and names the step, for changes that a person knows by another name than the field's. */
  change(what: string, path: FieldPath, value: unknown): void;
  insert(list: FieldPath, entry: unknown): void;
  /** Takes an entry out; `whole`: with its last one the list goes too. */
  remove(list: FieldPath, at: number, whole?: boolean): void;
  move(list: FieldPath, from: number, to: number): void;
}

export function editingOf(draft: Draft, inspection: Inspection, change: (draft: Draft) => void): Editing {
  const at = (path: FieldPath) =>
    path.reduce<unknown>(
      (inside, key) =>
        typeof inside === 'object' && inside !== null && Object.hasOwn(inside, key)
          ? Reflect.get(inside, key)
          : undefined,
      draft.value,
    );
  return {
    at,
    list: (path) => {
      const value = at(path);
      return Array.isArray(value) ? value : [];
    },
    problems: (path) => inspection.byField.get(pathWords(path)) ?? [],
    problemsWithin: (path) => {
      const words = pathWords(path);
      const inside = (where: string) =>
        where === words || where.startsWith(`${words}.`) || where.startsWith(`${words}[`);
      return inspection.problems.filter(({ where }) => inside(where));
    },
    change: (what, path, value) => change(setField(draft, path, value, { what })),
    set: (path, value, typing = false) => change(setField(draft, path, value, { typing })),
    insert: (list, entry) => change(insertEntry(draft, list, entry)),
    remove: (list, place, whole = false) => change(removeEntry(draft, list, place, whole)),
    move: (list, from, to) => change(moveEntry(draft, list, from, to)),
  };
}
