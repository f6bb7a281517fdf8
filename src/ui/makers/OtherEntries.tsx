import { strings } from '../../words';
import { ConstructionAxis } from './ConstructionAxis';
import { kindsOf, yesNo } from './choices';
import { Entries, textOf } from './Entries';
import { EntryFields } from './EntryFields';
import type { Editing } from './editing';
import { ChoiceField, PeriodField, TextField } from './fields';
import { placeOf } from './go-to-field';
import { LinesField } from './list-fields';
import { partChoices } from './part-choices';

const words = strings.makers;

export const ConstructionFacts = ({ edit }: { edit: Editing }) => (
  <>
    <Entries
      edit={edit}
      list={['construction']}
      title={words.construction}
      add={words.addFact}
      fresh={() => ({ part: 'lining', is: '', used: ['1990', null], strength: 'soft' })}
      nameOf={(entry) => `${textOf(entry, 'part', '')}: ${textOf(entry, 'is', '')}`}
    >
      {(path) => (
        <>
          <div class="fields">
            <ChoiceField edit={edit} path={[...path, 'part']} label={words.part} choices={partChoices(edit)} />
            <TextField edit={edit} path={[...path, 'is']} label={words.is} required />
            <PeriodField edit={edit} path={[...path, 'used']} label={words.used} words={words.period} />
            <LinesField edit={edit} path={[...path, 'also']} label={words.also} />
            <LinesField edit={edit} path={[...path, 'not']} label={words.not} />
            <LinesField edit={edit} path={[...path, 'models']} label={words.onlyModels} />
          </div>
          <EntryFields edit={edit} path={path} />
        </>
      )}
    </Entries>
    <ConstructionAxis facts={edit.list(['construction'])} />
    <Entries
      edit={edit}
      list={['parts']}
      title={words.ownParts}
      add={words.addOwnPart}
      fresh={() => ({ id: '', words: [] })}
      nameOf={(entry, index) => textOf(entry, 'id', `${index + 1}`)}
      whole
    >
      {(path) => (
        <div class="fields">
          <TextField edit={edit} path={[...path, 'id']} label={words.id} required />
          <LinesField edit={edit} path={[...path, 'words']} label={words.partWords} />
        </div>
      )}
    </Entries>
  </>
);

export const Trade = ({ edit }: { edit: Editing }) => (
  <section class="entries" aria-labelledby="trade-title" {...placeOf(['trade'])}>
    <h3 id="trade-title">{words.trade}</h3>
    <div class="fields">
      <ChoiceField
        edit={edit}
        path={['trade', 'discounts']}
        label={words.discounts}
        choices={kindsOf(['never', 'rarely', 'often'], words.habits)}
        none={words.unknown}
      />
      {(['sampleSales', 'seconds', 'outlets'] as const).map((habit) => (
        <ChoiceField
          key={habit}
          edit={edit}
          path={['trade', habit]}
          label={words[habit]}
          choices={yesNo()}
          none={words.unknown}
        />
      ))}
    </div>
    <EntryFields edit={edit} path={['trade']} />
  </section>
);
