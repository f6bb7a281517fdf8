import { useId } from 'preact/hooks';
import type { FieldPath } from '../../maker';
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
  const problems = edit.problems(path);
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

/** A list of texts, one a line. */
export function LinesField({ edit, path, label, hint }: Props) {
  const id = useId();
  const lines = edit.list(path).map(String);
  return (
    <div class="field field-wide">
      <label for={id}>{label}</label>
      <textarea
        id={id}
        rows={Math.max(2, lines.length)}
        value={lines.join('\n')}
        placeholder={hint}
        aria-describedby={`${id}-wrong`}
        onChange={({ currentTarget }) =>
          edit.set(
            path,
            currentTarget.value
              .split('\n')
              .map((line) => line.trim())
              .filter((line) => line !== ''),
          )
        }
      />
      <div id={`${id}-wrong`}>
        <FieldProblems edit={edit} path={path} />
        {lines.map((_, index) => (
          <FieldProblems key={index} edit={edit} path={[...path, index]} />
        ))}
      </div>
    </div>
  );
}

export function NumberField({ edit, path, label }: Props) {
  const id = useId();
  const value = edit.at(path);
  return (
    <div class="field field-narrow">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="number"
        step="any"
        value={typeof value === 'number' ? value : ''}
        aria-describedby={`${id}-wrong`}
        onInput={({ currentTarget }) =>
          edit.set(path, currentTarget.value === '' ? undefined : Number(currentTarget.value), true)
        }
      />
      <FieldProblems edit={edit} path={path} id={`${id}-wrong`} />
    </div>
  );
}

/** One of a few values; `none` names the empty choice where the field may be left out. */
export function ChoiceField<T extends string | number>({
  edit,
  path,
  label,
  choices,
  none,
}: Props & { choices: readonly (readonly [T, string])[]; none?: string }) {
  const id = useId();
  const value = edit.at(path);
  const chosen = choices.findIndex(([choice]) => choice === value);
  return (
    <div class="field field-narrow">
      <label for={id}>{label}</label>
      <select
        id={id}
        value={String(chosen)}
        onChange={({ currentTarget }) => edit.set(path, choices[Number(currentTarget.value)]?.[0])}
      >
        {(none !== undefined || chosen < 0) && <option value="-1">{none ?? '–'}</option>}
        {choices.map(([choice, words], index) => (
          <option key={choice} value={String(index)}>
            {words}
          </option>
        ))}
      </select>
      <FieldProblems edit={edit} path={path} />
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

/** First and last date of a period; an empty last one means "still". */
export function PeriodField({
  edit,
  path,
  label,
  words,
}: Props & { words: { from: string; to: string; hint: string } }) {
  const id = useId();
  const value = edit.at(path);
  const [first = '', last = null] = Array.isArray(value) ? value : [];
  const problems = [path, [...path, 0], [...path, 1]];
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
          onInput={({ currentTarget }) => edit.set(path, [currentTarget.value, last], true)}
        />
        <span aria-hidden="true">–</span>
        <input
          type="text"
          aria-label={`${label}, ${words.to}`}
          placeholder={words.to}
          value={String(last ?? '')}
          aria-describedby={`${id}-wrong`}
          onInput={({ currentTarget }) =>
            edit.set(path, [first, currentTarget.value === '' ? null : currentTarget.value], true)
          }
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
