import { partSchema } from '../../claim/types';
import type { FieldPath } from '../../maker';
import { strings } from '../../words';
import { Entries, textOf } from './Entries';
import type { Editing } from './editing';
import { ChoiceField, FieldProblems, NumberField, PeriodField, TextField } from './fields';
import { placeOf } from './go-to-field';
import { LinesField } from './list-fields';

const words = strings.makers;
const units = ['cm', 'mm', 'in'].map((unit) => [unit, unit] as const);

export const Models = ({ edit }: { edit: Editing }) => (
  <Entries
    edit={edit}
    list={['models']}
    title={words.models}
    add={words.addModel}
    fresh={() => ({ name: '', size: { width: 30, unit: 'cm', tolerance: 1 } })}
    nameOf={(entry, index) => textOf(entry, 'name', `${index + 1}`)}
  >
    {(path) => (
      <>
        <div class="fields">
          <TextField edit={edit} path={[...path, 'name']} label={words.name} required />
          <LinesField edit={edit} path={[...path, 'aliases']} label={words.aliases} />
          <PeriodField edit={edit} path={[...path, 'made']} label={words.made} words={words.period} optional />
          <TextField edit={edit} path={[...path, 'source']} label={words.source} />
          <TextField edit={edit} path={[...path, 'note']} label={words.note} />
        </div>
        <Size edit={edit} path={[...path, 'size']} />
        <Parts edit={edit} path={[...path, 'parts']} />
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
  return (
    <fieldset class="group" {...placeOf(path)}>
      <legend>{words.parts}</legend>
      <FieldProblems edit={edit} path={path} />
      <div class="part-ticks">
        {partSchema.options.map((part) => (
          <label class="tick" key={part}>
            <input
              type="checkbox"
              checked={chosen.includes(part)}
              onChange={({ currentTarget: { checked } }) => {
                const next = partSchema.options.filter((one) => (one === part ? checked : chosen.includes(one)));
                edit.set(path, next.length === 0 ? undefined : next);
              }}
            />
            <span>{strings.parts[part]}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
