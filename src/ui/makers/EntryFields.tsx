import type { FieldPath } from '../../maker';
import { standingKinds } from '../../maker';
import { strings } from '../../words';
import { kindsOf } from './choices';
import { Entries } from './Entries';
import type { Editing } from './editing';
import { ChoiceField, PeriodsField, TextField } from './fields';
import { LinesField } from './list-fields';

const words = strings.makers;

/** What any entry may say of itself: where it is from, how surely it holds, whether it still stands, and its exceptions. */
export function EntryFields({ edit, path }: { edit: Editing; path: FieldPath }) {
  const standing = [...path, 'standing'];
  const said = ['strength', 'standing', 'exceptions'].some((field) => edit.at([...path, field]) !== undefined);
  return (
    <>
      <div class="fields">
        <LinesField edit={edit} path={[...path, 'sources']} label={words.sources} />
        <TextField edit={edit} path={[...path, 'note']} label={words.note} />
      </div>
      <details open={said || edit.problemsWithin(standing).length > 0}>
        <summary>{words.more}</summary>
        <div class="fields">
          <ChoiceField
            edit={edit}
            path={[...path, 'strength']}
            label={words.strength}
            choices={kindsOf(['hard', 'soft'], words)}
            none={words.usual}
          />
          <ChoiceField
            edit={edit}
            path={[...standing, 'is']}
            label={words.standing}
            choices={kindsOf(standingKinds, words.standings)}
            none={words.stands}
            onChoice={(is) => edit.set(standing, is && { ...(edit.at(standing) as object | undefined), is })}
          />
          {edit.at(standing) !== undefined && (
            <>
              <TextField edit={edit} path={[...standing, 'why']} label={words.why} />
              <LinesField edit={edit} path={[...standing, 'sources']} label={words.sources} />
            </>
          )}
        </div>
        <Exceptions edit={edit} path={[...path, 'exceptions']} />
      </details>
    </>
  );
}

const Exceptions = ({ edit, path }: { edit: Editing; path: FieldPath }) => (
  <Entries
    edit={edit}
    list={path}
    title={words.exceptions}
    add={words.addException}
    fresh={() => ({ what: '' })}
    nameOf={(_, index) => words.exception(index + 1)}
    level={4}
    whole
  >
    {(place) => (
      <div class="fields">
        <TextField edit={edit} path={[...place, 'what']} label={words.otherwise} required />
        <LinesField edit={edit} path={[...place, 'models']} label={words.exceptionModels} />
        <PeriodsField edit={edit} path={[...place, 'used']} label={words.used} optional />
      </div>
    )}
  </Entries>
);

/** Of which pieces an entry is: of some models, of some years, or of all. */
export const OfPieces = ({ edit, path }: { edit: Editing; path: FieldPath }) => (
  <>
    <LinesField edit={edit} path={[...path, 'models']} label={words.onlyModels} />
    <PeriodsField edit={edit} path={[...path, 'used']} label={words.used} optional />
  </>
);
