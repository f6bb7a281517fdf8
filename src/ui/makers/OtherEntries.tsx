import { partSchema } from '../../claim/types';
import { strings } from '../../words';
import { ConstructionAxis } from './ConstructionAxis';
import { Entries, textOf } from './Entries';
import type { Editing } from './editing';
import { ChoiceField, NumberField, PeriodField, TextField } from './fields';
import { placeOf } from './go-to-field';
import { LinesField } from './list-fields';

const words = strings.makers;
/** Made when drawn: the language may have changed since. */
const parts = () => partSchema.options.map((part) => [part, strings.parts[part]] as const);
const strengths = () =>
  [
    ['hard', words.hard],
    ['soft', words.soft],
  ] as const;
const habits = () => (['never', 'rarely', 'often'] as const).map((habit) => [habit, words.habits[habit]] as const);
const yesNo = () =>
  [
    [true, words.yes],
    [false, words.no],
  ] as const;

export const ConstructionFacts = ({ edit }: { edit: Editing }) => (
  <>
    <Entries
      edit={edit}
      list={['construction']}
      title={words.construction}
      add={words.addFact}
      fresh={() => ({ part: 'lining', is: '', used: ['1990', null], strength: 'soft', source: '' })}
      nameOf={(entry) => `${textOf(entry, 'part', '')}: ${textOf(entry, 'is', '')}`}
    >
      {(path) => (
        <div class="fields">
          <ChoiceField edit={edit} path={[...path, 'part']} label={words.part} choices={parts()} />
          <TextField edit={edit} path={[...path, 'is']} label={words.is} required />
          <PeriodField edit={edit} path={[...path, 'used']} label={words.used} words={words.period} />
          <ChoiceField edit={edit} path={[...path, 'strength']} label={words.strength} choices={strengths()} />
          <LinesField edit={edit} path={[...path, 'also']} label={words.also} />
          <LinesField edit={edit} path={[...path, 'not']} label={words.not} />
          <LinesField edit={edit} path={[...path, 'models']} label={words.onlyModels} />
          <TextField edit={edit} path={[...path, 'source']} label={words.source} required />
          <TextField edit={edit} path={[...path, 'note']} label={words.note} />
        </div>
      )}
    </Entries>
    <ConstructionAxis facts={edit.list(['construction'])} />
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
        choices={habits()}
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
      <TextField edit={edit} path={['trade', 'source']} label={words.source} />
      <TextField edit={edit} path={['trade', 'note']} label={words.note} />
    </div>
    <Entries
      edit={edit}
      list={['trade', 'newPriceFloor']}
      title={words.priceFloor}
      add={words.addPrice}
      fresh={() => ({ amount: 100, currency: 'EUR', year: 2020 })}
      nameOf={(_, index) => words.price(index + 1)}
      level={4}
    >
      {(path) => (
        <div class="fields">
          <NumberField edit={edit} path={[...path, 'amount']} label={words.amount} />
          <TextField edit={edit} path={[...path, 'currency']} label={words.currency} required />
          <NumberField edit={edit} path={[...path, 'year']} label={words.year} />
        </div>
      )}
    </Entries>
  </section>
);
