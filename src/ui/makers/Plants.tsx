import { strings } from '../../words';
import { Entries, textOf } from './Entries';
import { EntryFields } from './EntryFields';
import type { Editing } from './editing';
import { PeriodsField, TextField, TickField } from './fields';

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
      {(path) => (
        <>
          <div class="fields">
            <TextField edit={edit} path={[...path, 'code']} label={words.code} required />
            <TextField edit={edit} path={[...path, 'place']} label={words.country} required />
            <TextField edit={edit} path={[...path, 'town']} label={words.town} />
            {/* A plant closes and opens again: its code was not stamped in between. */}
            <PeriodsField edit={edit} path={[...path, 'used']} label={words.used} />
            <TextField edit={edit} path={[...path, 'name']} label={words.name} />
          </div>
          <EntryFields edit={edit} path={path} />
        </>
      )}
    </Entries>
    <TickField edit={edit} path={['plantsComplete']} label={words.plantsComplete} />
  </>
);
