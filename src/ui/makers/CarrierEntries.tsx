import { besideMarkKinds, carrierKinds } from '../../maker';
import { strings } from '../../words';
import { kindsOf, yesNo } from './choices';
import { Entries, textOf } from './Entries';
import { EntryFields, OfPieces } from './EntryFields';
import type { Editing } from './editing';
import { ChoiceField, TextField } from './fields';
import { LinesField } from './list-fields';

const words = strings.makers;

/** Where the code sits, and on what; by model, period and code system. */
export const Carriers = ({ edit }: { edit: Editing }) => (
  <Entries
    edit={edit}
    list={['carriers']}
    title={words.carriers}
    add={words.addCarrier}
    fresh={() => ({ kind: 'stamp', where: '' })}
    nameOf={(entry, index) => textOf(entry, 'where', `${index + 1}`)}
    whole
  >
    {(path) => (
      <>
        <div class="fields">
          <ChoiceField
            edit={edit}
            path={[...path, 'kind']}
            label={words.carrier}
            choices={kindsOf(carrierKinds, words.carrierKinds)}
          />
          <TextField edit={edit} path={[...path, 'where']} label={words.where} required />
          <LinesField edit={edit} path={[...path, 'systems']} label={words.carrierSystems} />
          <OfPieces edit={edit} path={path} />
          {/* Left out where it can be read, as most can. */}
          <ChoiceField
            edit={edit}
            path={[...path, 'readable']}
            label={words.readable}
            choices={yesNo()}
            none={words.usual}
          />
        </div>
        <EntryFields edit={edit} path={path} />
      </>
    )}
  </Entries>
);

/** Marks that stand beside the code and are none: what each means. */
export const BesideMarks = ({ edit }: { edit: Editing }) => (
  <Entries
    edit={edit}
    list={['marks']}
    title={words.marks}
    add={words.addMark}
    fresh={() => ({ kind: 'other', texts: [], means: '' })}
    nameOf={(entry, index) => textOf(entry, 'means', `${index + 1}`)}
    whole
  >
    {(path) => (
      <>
        <div class="fields">
          <ChoiceField
            edit={edit}
            path={[...path, 'kind']}
            label={words.markKind}
            choices={kindsOf(besideMarkKinds, words.markKinds)}
          />
          <LinesField edit={edit} path={[...path, 'texts']} label={words.texts} />
          <TextField edit={edit} path={[...path, 'means']} label={words.means} required />
          <OfPieces edit={edit} path={path} />
        </div>
        <EntryFields edit={edit} path={path} />
      </>
    )}
  </Entries>
);
