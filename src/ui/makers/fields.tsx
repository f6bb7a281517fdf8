import { useId } from 'preact/hooks';
import type { FieldPath } from '../../maker';
import type { Problem } from '../../problem';
import { strings } from '../../words';
import { saidProblem, sentence } from '../parts/ProblemNote';
import type { Editing } from './editing';
import { placeOf } from './go-to-field';

export interface FieldProps {
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
      {problems.map(saidProblem).map(({ what, expected, remedy }) => (
        <li key={what}>
          {sentence(expected === undefined ? what : strings.makers.expected(what, expected))} {remedy}
        </li>
      ))}
    </ul>
  );
}

/** One line of text; an empty field is taken out of the file unless it is `required`. */
export function TextField({ edit, path, label, hint, required = false }: FieldProps & { required?: boolean }) {
  const id = useId();
  const value = edit.at(path);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        {...placeOf(path)}
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

interface NumberProps extends FieldProps {
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
        {...placeOf(path)}
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
}: FieldProps & {
  choices: readonly (readonly [T, string])[];
  none?: string;
  onChoice?: (choice: T | undefined) => void;
}) {
  const id = useId();
  const value = edit.at(path);
  const chosen = choices.findIndex(([choice]) => choice === value);
  return (
    <div class="field field-narrow">
      <label for={id}>{label}</label>
      <select
        {...placeOf(path)}
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

export function TickField({ edit, path, label }: FieldProps) {
  return (
    <label class="tick">
      <input
        {...placeOf(path)}
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
}: FieldProps & { words: { from: string; to: string; hint: string }; optional?: boolean }) {
  const id = useId();
  const value = edit.at(path);
  const [first = '', last = null] = Array.isArray(value) ? value : [];
  const problems = [path, [...path, 0], [...path, 1]];
  const set = (from: string, to: string | null) =>
    edit.set(path, optional && from === '' && to === null ? undefined : [from, to], true);
  return (
    <fieldset class="field period" {...placeOf(path)}>
      <legend>{label}</legend>
      <div class="row">
        <input
          {...placeOf([...path, 0])}
          type="text"
          aria-label={`${label}, ${words.from}`}
          placeholder={words.hint}
          value={String(first ?? '')}
          aria-describedby={`${id}-wrong`}
          onInput={({ currentTarget }) => set(currentTarget.value, last)}
        />
        <span aria-hidden="true">–</span>
        <input
          {...placeOf([...path, 1])}
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

/** One period or several, with years between in which it was not so. */
export function PeriodsField({ edit, path, label, optional = false }: FieldProps & { optional?: boolean }) {
  const words = strings.makers;
  const used = edit.list(path);
  const several = Array.isArray(used[0]);
  const all: unknown[] = several ? used : [used];
  const put = (what: string, next: unknown[]) => edit.change(what, path, next.length === 1 ? next[0] : next);
  const labelOf = (index: number) => (several ? words.ofPeriods(label, index + 1) : label);
  return (
    <div {...placeOf(path)}>
      {all.map((_, index) => (
        <div key={index}>
          <PeriodField
            edit={edit}
            path={several ? [...path, index] : path}
            label={labelOf(index)}
            words={words.period}
            optional={optional && !several}
          />
          {several && (
            <button
              type="button"
              class="small"
              onClick={() =>
                put(
                  words.steps.removePeriod,
                  all.filter((_, at) => at !== index),
                )
              }
            >
              {words.remove(words.periodName(index + 1))}
            </button>
          )}
        </div>
      ))}
      {used.length > 0 && (
        <button
          type="button"
          class="small after-field"
          onClick={() => put(words.steps.addPeriod, [...all, ['', null]])}
        >
          {words.addPeriod}
        </button>
      )}
    </div>
  );
}
