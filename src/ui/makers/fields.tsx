import { useId, useState } from 'preact/hooks';
import type { FieldPath } from '../../maker';
import type { Problem } from '../../problem';
import { sentence } from '../parts/ProblemNote';
import { strings } from '../strings';
import type { Editing } from './editing';

interface Props {
  edit: Editing;
  path: FieldPath;
  label: string;
  hint?: string;
}

/** What is wrong with a field, right under it and tied to it for screen readers. */
export function FieldProblems({ edit, path, id }: { edit: Editing; path: FieldPath; id?: string }) {
  return <ProblemList problems={edit.problems(path)} id={id} />;
}

/** Problems one below the other, in the words of the field that they stand at. */
export function ProblemList({ problems, id }: { problems: readonly Problem[]; id?: string | undefined }) {
  if (problems.length === 0) return null;
  return (
    <ul class="field-problems" id={id}>
      {problems.map(({ what, expected, remedy }) => (
        <li key={what}>
          {sentence(expected === undefined ? what : strings.makers.expected(what, expected))} {remedy}
        </li>
      ))}
    </ul>
  );
}

/** One line of text; an empty field is taken out of the file unless it is `required`. */
export function TextField({ edit, path, label, hint, required = false }: Props & { required?: boolean }) {
  const id = useId();
  const value = edit.at(path);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        value={typeof value === 'string' ? value : ''}
        placeholder={hint}
        aria-invalid={edit.problems(path).length > 0}
        aria-describedby={`${id}-wrong`}
        onInput={({ currentTarget }) =>
          edit.set(path, currentTarget.value === '' && !required ? undefined : currentTarget.value, true)
        }
      />
      <FieldProblems edit={edit} path={path} id={`${id}-wrong`} />
    </div>
  );
}

/**
 * A list typed as text. What is typed goes into the file at once; the text itself stays as it is typed (an empty last
 * line is the place of the next entry) until the list changes otherwise.
 */
function useTypedList(edit: Editing, path: FieldPath, joined: string, read: (text: string) => unknown[]) {
  const listed = edit.list(path);
  const [typed, setTyped] = useState<string | null>(null);
  const same = typed !== null && JSON.stringify(read(typed)) === JSON.stringify(listed);
  return {
    text: same ? typed : listed.map(String).join(joined),
    listed,
    onInput: ({ currentTarget: { value } }: { currentTarget: { value: string } }) => {
      setTyped(value);
      const next = read(value);
      edit.set(path, next.length === 0 ? undefined : next, true);
    },
  };
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
export function LinesField({ edit, path, label, hint }: Props) {
  const id = useId();
  const { text, listed, onInput } = useTypedList(edit, path, '\n', readLines);
  return (
    <div class="field field-wide">
      <label for={id}>{label}</label>
      <textarea
        id={id}
        rows={Math.max(2, text.split('\n').length)}
        value={text}
        placeholder={hint}
        aria-invalid={edit.problemsWithin(path).length > 0}
        aria-describedby={`${id}-wrong`}
        onInput={onInput}
      />
      <ListProblems edit={edit} path={path} listed={listed} id={id} />
    </div>
  );
}

/** A list of whole numbers in one line. */
export function NumbersField({ edit, path, label, hint }: Props) {
  const id = useId();
  const { text, listed, onInput } = useTypedList(edit, path, ', ', readNumbers);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        value={text}
        placeholder={hint}
        aria-invalid={edit.problemsWithin(path).length > 0}
        aria-describedby={`${id}-wrong`}
        onInput={onInput}
      />
      <ListProblems edit={edit} path={path} listed={listed} id={id} />
    </div>
  );
}

const ListProblems = ({ edit, path, listed, id }: Pick<Props, 'edit' | 'path'> & { listed: unknown[]; id: string }) => (
  <div id={`${id}-wrong`}>
    <FieldProblems edit={edit} path={path} />
    {listed.map((_, index) => (
      <FieldProblems key={index} edit={edit} path={[...path, index]} />
    ))}
  </div>
);

interface NumberProps extends Props {
  /** What an empty field stands for. */
  empty?: null;
  /** The number, where it does not stand at `path` as such. */
  value?: unknown;
  onNumber?: (value: number | null | undefined) => void;
}

export function NumberField({ edit, path, label, hint, empty, value = edit.at(path), onNumber }: NumberProps) {
  const id = useId();
  const set = onNumber ?? ((number) => edit.set(path, number, true));
  return (
    <div class="field field-narrow">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="number"
        step="any"
        value={typeof value === 'number' ? value : ''}
        placeholder={hint}
        aria-invalid={edit.problems(path).length > 0}
        aria-describedby={`${id}-wrong`}
        onInput={({ currentTarget }) => set(currentTarget.value === '' ? empty : Number(currentTarget.value))}
      />
      <FieldProblems edit={edit} path={path} id={`${id}-wrong`} />
    </div>
  );
}

/** One of a few values; `none` names the empty choice where the field may be left out. */
export function ChoiceField<T extends string | number | boolean>({
  edit,
  path,
  label,
  choices,
  none,
  onChoice = (choice) => edit.set(path, choice),
}: Props & { choices: readonly (readonly [T, string])[]; none?: string; onChoice?: (choice: T | undefined) => void }) {
  const id = useId();
  const value = edit.at(path);
  const chosen = choices.findIndex(([choice]) => choice === value);
  return (
    <div class="field field-narrow">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={String(chosen)}
        aria-describedby={`${id}-wrong`}
        onChange={({ currentTarget }) => onChoice(choices[Number(currentTarget.value)]?.[0])}
      >
        {(none !== undefined || chosen < 0) && <option value="-1">{none ?? '–'}</option>}
        {choices.map(([choice, words], index) => (
          <option key={String(choice)} value={String(index)}>
            {words}
          </option>
        ))}
      </select>
      <FieldProblems edit={edit} path={path} id={`${id}-wrong`} />
    </div>
  );
}

export function TickField({ edit, path, label }: Props) {
  return (
    <label class="tick">
      <input
        type="checkbox"
        checked={edit.at(path) === true}
        onChange={({ currentTarget }) => edit.set(path, currentTarget.checked ? true : undefined)}
      />
      <span>{label}</span>
    </label>
  );
}

/** First and last date of a period; an empty last one means "still", and an `optional` one may be empty altogether. */
export function PeriodField({
  edit,
  path,
  label,
  words,
  optional = false,
}: Props & { words: { from: string; to: string; hint: string }; optional?: boolean }) {
  const id = useId();
  const value = edit.at(path);
  const [first = '', last = null] = Array.isArray(value) ? value : [];
  const problems = [path, [...path, 0], [...path, 1]];
  const set = (from: string, to: string | null) =>
    edit.set(path, optional && from === '' && to === null ? undefined : [from, to], true);
  return (
    <fieldset class="field period">
      <legend>{label}</legend>
      <div class="row">
        <input
          type="text"
          aria-label={`${label}, ${words.from}`}
          placeholder={words.hint}
          value={String(first ?? '')}
          aria-describedby={`${id}-wrong`}
          onInput={({ currentTarget }) => set(currentTarget.value, last)}
        />
        <span aria-hidden="true">–</span>
        <input
          type="text"
          aria-label={`${label}, ${words.to}`}
          placeholder={words.to}
          value={String(last ?? '')}
          aria-describedby={`${id}-wrong`}
          onInput={({ currentTarget }) => set(first, currentTarget.value === '' ? null : currentTarget.value)}
        />
      </div>
      <div id={`${id}-wrong`}>
        {problems.map((place) => (
          <FieldProblems key={place.length + String(place.at(-1))} edit={edit} path={place} />
        ))}
      </div>
    </fieldset>
  );
}
