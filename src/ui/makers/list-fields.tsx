import { useId, useState } from 'preact/hooks';
import { FieldProblems, type FieldProps } from './fields';
import { placeOf } from './go-to-field';

/**
 * A list typed as text. What is typed goes into the file at once; the text itself stays as it is typed (an empty last
 * line is the place of the next entry) until the list changes otherwise.
 */
function useTypedList({ edit, path, hint }: FieldProps, id: string, joined: string, read: (text: string) => unknown[]) {
  const listed = edit.list(path);
  const [typed, setTyped] = useState<string | null>(null);
  const same = typed !== null && JSON.stringify(read(typed)) === JSON.stringify(listed);
  const field = {
    ...placeOf(path),
    id,
    value: same ? typed : listed.map(String).join(joined),
    placeholder: hint,
    'aria-invalid': edit.problemsWithin(path).length > 0,
    'aria-describedby': `${id}-wrong`,
    onInput: ({ currentTarget: { value } }: { currentTarget: { value: string } }) => {
      setTyped(value);
      const next = read(value);
      edit.set(path, next.length === 0 ? undefined : next, true);
    },
  };
  return { field, listed };
}

const readLines = (text: string) =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
/** Figures apart by commas or spaces; a piece that is no figure stays as text, so that the file's problem names it. */
const readNumbers = (text: string) =>
  text
    .split(/[\s,;]+/)
    .filter((piece) => piece !== '')
    .map((piece) => (/^\d+$/.test(piece) ? Number(piece) : piece));

/** A list of texts, one a line. */
export function LinesField(props: FieldProps) {
  const id = useId();
  const { field, listed } = useTypedList(props, id, '\n', readLines);
  return (
    <div class="field field-wide">
      <label for={id}>{props.label}</label>
      <textarea {...field} rows={Math.max(2, field.value.split('\n').length)} />
      <ListProblems {...props} listed={listed} id={id} />
    </div>
  );
}

/** A list of whole numbers in one line. */
export function NumbersField(props: FieldProps) {
  const id = useId();
  const { field, listed } = useTypedList(props, id, ', ', readNumbers);
  return (
    <div class="field">
      <label for={id}>{props.label}</label>
      <input {...field} type="text" />
      <ListProblems {...props} listed={listed} id={id} />
    </div>
  );
}

const ListProblems = ({
  edit,
  path,
  listed,
  id,
}: Pick<FieldProps, 'edit' | 'path'> & { listed: unknown[]; id: string }) => (
  <div id={`${id}-wrong`}>
    <FieldProblems edit={edit} path={path} />
    {listed.map((_, index) => (
      <FieldProblems key={index} edit={edit} path={[...path, index]} />
    ))}
  </div>
);
