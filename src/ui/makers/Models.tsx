import { type FieldPath, runKinds } from '../../maker';
import { strings } from '../../words';
import { kindsOf } from './choices';
import { Entries, textOf } from './Entries';
import { EntryFields } from './EntryFields';
import type { Editing } from './editing';
import { ChoiceField, FieldProblems, NumberField, PeriodsField, TextField } from './fields';
import { placeOf } from './go-to-field';
import { LinesField } from './list-fields';
import { partChoices } from './part-choices';

const words = strings.makers;
const units = ['cm', 'mm', 'in'].map((unit) => [unit, unit] as const);

export const Models = ({ edit }: { edit: Editing }) => (
  <Entries
    edit={edit}
    list={['models']}
    title={words.models}
    add={words.addModel}
    fresh={() => ({ name: '', runs: [{ size: { width: 30, unit: 'cm', tolerance: 1 } }] })}
    nameOf={(entry, index) => textOf(entry, 'name', `${index + 1}`)}
  >
    {(path) => (
      <>
        <div class="fields">
          <TextField edit={edit} path={[...path, 'name']} label={words.name} required />
          <LinesField edit={edit} path={[...path, 'aliases']} label={words.aliases} />
        </div>
        <Runs edit={edit} path={[...path, 'runs']} />
        <Parts edit={edit} path={[...path, 'parts']} />
        <EntryFields edit={edit} path={path} />
      </>
    )}
  </Entries>
);

/** The years and sizes of a model, one row each: made in another size, made again, or made with somebody. */
const Runs = ({ edit, path }: { edit: Editing; path: FieldPath }) => (
  <Entries
    edit={edit}
    list={path}
    title={words.runs}
    add={words.addRun}
    fresh={() => ({ made: ['1990', null], size: { width: 30, unit: 'cm', tolerance: 1 } })}
    nameOf={(entry, index) => textOf(entry, 'name', words.run(index + 1))}
    level={4}
    whole
  >
    {(run) => (
      <>
        <div class="fields">
          <PeriodsField edit={edit} path={[...run, 'made']} label={words.made} optional />
        </div>
        <Size edit={edit} path={[...run, 'size']} />
        <div class="fields">
          <ChoiceField
            edit={edit}
            path={[...run, 'kind']}
            label={words.runKind}
            choices={kindsOf(runKinds, words.runKinds)}
            none={words.runUsual}
          />
          <TextField edit={edit} path={[...run, 'name']} label={words.soldAs} />
          <TextField edit={edit} path={[...run, 'with']} label={words.with} />
          <NumberField edit={edit} path={[...run, 'pieces']} label={words.pieces} />
        </div>
        <EntryFields edit={edit} path={run} />
      </>
    )}
  </Entries>
);

function Size({ edit, path }: { edit: Editing; path: FieldPath }) {
  if (edit.at(path) === undefined) {
    return (
      <button
        {...placeOf(path)}
        type="button"
        class="small"
        onClick={() => edit.change(words.steps.addSize, path, { width: 30, unit: 'cm', tolerance: 1 })}
      >
        {words.addSize}
      </button>
    );
  }
  return (
    <fieldset class="group" {...placeOf(path)}>
      <legend>{words.size}</legend>
      <FieldProblems edit={edit} path={path} />
      <div class="fields">
        <NumberField edit={edit} path={[...path, 'width']} label={words.width} />
        <NumberField edit={edit} path={[...path, 'height']} label={words.height} />
        <NumberField edit={edit} path={[...path, 'depth']} label={words.depth} />
        <ChoiceField edit={edit} path={[...path, 'unit']} label={words.unit} choices={units} />
        <NumberField edit={edit} path={[...path, 'tolerance']} label={words.tolerance} />
      </div>
      <button type="button" class="small" onClick={() => edit.change(words.steps.removeSize, path, undefined)}>
        {words.remove(words.theSize)}
      </button>
    </fieldset>
  );
}

/** Which parts a buyer has to see on this model; none ticked means those of any bag. */
function Parts({ edit, path }: { edit: Editing; path: FieldPath }) {
  const chosen = edit.list(path);
  const all = partChoices(edit);
  // What is ticked and no part any more stays shown, so that it can be taken out.
  const gone = chosen.filter((part) => !all.some(([one]) => one === part)).map((part) => [String(part), String(part)]);
  const shown = [...all, ...gone];
  return (
    <fieldset class="group" {...placeOf(path)}>
      <legend>{words.parts}</legend>
      <FieldProblems edit={edit} path={path} />
      {chosen.map((_, index) => (
        <FieldProblems key={index} edit={edit} path={[...path, index]} />
      ))}
      <div class="part-ticks">
        {shown.map(([part, name]) => (
          <label class="tick" key={part}>
            <input
              type="checkbox"
              checked={chosen.includes(part)}
              onChange={({ currentTarget: { checked } }) => {
                const next = shown.map(([one]) => one).filter((one) => (one === part ? checked : chosen.includes(one)));
                edit.set(path, next.length === 0 ? undefined : next);
              }}
            />
            <span>{name}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
