import type { ComponentChildren } from 'preact';
import type { FieldPath } from '../../maker';
import { strings } from '../../words';
import type { Editing } from './editing';
import { FieldProblems } from './fields';
import { placeOf } from './go-to-field';

interface Props {
  edit: Editing;
  list: FieldPath;
  title: string;
  /** What a new entry is called on its button. */
  add: string;
  fresh: () => unknown;
  /** A short name of an entry, for its own buttons. */
  nameOf: (entry: unknown, index: number) => string;
  /** Level of the heading: 4 inside an entry of another list. */
  level?: 3 | 4;
  /** The list is taken out of the file with its last entry: most files say nothing of it. */
  whole?: boolean;
  children: (path: FieldPath, entry: unknown, index: number) => ComponentChildren;
}

/** A list of a maker file: its entries one below the other, each with a button that takes it away. */
export function Entries({ edit, list, title, add, fresh, nameOf, level = 3, whole = false, children }: Props) {
  const entries = edit.list(list);
  const id = `entries-${list.join('-')}`;
  const Heading = `h${level}` as const;
  // Inside an entry it is no landmark: each entry has one of the same name.
  const inside = level === 4;
  const Part = inside ? 'div' : 'section';
  return (
    <Part class="entries" role={inside ? 'group' : undefined} aria-labelledby={id} {...placeOf(list)}>
      <Heading id={id}>
        {title} <span class="muted">({entries.length})</span>
      </Heading>
      <FieldProblems edit={edit} path={list} />
      {entries.map((entry, index) => (
        <div class="entry" key={index} id={`${id}-${index}`} {...placeOf([...list, index])}>
          <FieldProblems edit={edit} path={[...list, index]} />
          {children([...list, index], entry, index)}
          <button type="button" class="small" onClick={() => edit.remove(list, index, whole)}>
            {strings.makers.remove(nameOf(entry, index))}
          </button>
        </div>
      ))}
      <button type="button" class="small" onClick={() => edit.insert(list, fresh())}>
        {add}
      </button>
    </Part>
  );
}

/** A text field of an entry, for naming it. */
export const textOf = (entry: unknown, field: string, otherwise: string): string => {
  const value = typeof entry === 'object' && entry !== null ? Reflect.get(entry, field) : undefined;
  return typeof value === 'string' && value !== '' ? value : otherwise;
};
