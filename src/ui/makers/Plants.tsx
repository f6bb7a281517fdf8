import type { FieldPath } from '../../maker';
import { strings } from '../../words';
import { Entries, textOf } from './Entries';
import type { Editing } from './editing';
import { PeriodField, TextField, TickField } from './fields';
import { placeOf } from './go-to-field';

const words = strings.makers;

export const Plants = ({ edit }: { edit: Editing }) => (
  <>
    <Entries
      edit={edit}
      list={['plants']}
      title={words.plants}
      add={words.addPlant}
      fresh={() => ({ code: '', place: '', used: ['1990', null] })}
      nameOf={(entry, index) => textOf(entry, 'code', `${index + 1}`)}
    >
      {(path, entry) => (
        <div class="fields">
          <TextField edit={edit} path={[...path, 'code']} label={words.code} required />
          <TextField edit={edit} path={[...path, 'place']} label={words.country} required />
          <Periods edit={edit} path={[...path, 'used']} plant={textOf(entry, 'code', '')} />
          <TextField edit={edit} path={[...path, 'name']} label={words.name} />
          <TextField edit={edit} path={[...path, 'source']} label={words.source} />
          <TextField edit={edit} path={[...path, 'note']} label={words.note} />
        </div>
      )}
    </Entries>
    <TickField edit={edit} path={['plantsComplete']} label={words.plantsComplete} />
  </>
);

/** When a plant worked: one period, or several with years between in which its code was not stamped. */
function Periods({ edit, path, plant }: { edit: Editing; path: FieldPath; plant: string }) {
  const used = edit.list(path);
  const several = Array.isArray(used[0]);
  const all: unknown[] = several ? used : [used];
  const put = (what: string, next: unknown[]) => edit.change(what, path, next.length === 1 ? next[0] : next);
  return (
    <div {...placeOf(path)}>
      {all.map((_, index) => (
        <div key={index}>
          <PeriodField
            edit={edit}
            path={several ? [...path, index] : path}
            label={several ? words.usedIn(index + 1) : words.used}
            words={words.period}
          />
          {several && (
            <button
              type="button"
              class="small"
              onClick={() =>
                put(
                  words.steps.removePeriod(plant),
                  all.filter((_, at) => at !== index),
                )
              }
            >
              {words.remove(words.periodName(index + 1))}
            </button>
          )}
        </div>
      ))}
      <button
        type="button"
        class="small after-field"
        onClick={() => put(words.steps.addPeriod(plant), [...all, ['', null]])}
      >
        {words.addPeriod}
      </button>
    </div>
  );
}
