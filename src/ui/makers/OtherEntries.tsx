import { partSchema } from '../../claim/types';
import { strings } from '../strings';
import { Entries, textOf } from './Entries';
import type { Editing } from './editing';
import { ChoiceField, NumberField, PeriodField, TextField, TickField } from './fields';

const words = strings.makers;
const parts = partSchema.options.map((part) => [part, part.replaceAll('-', ' ')] as const);
const strengths = [
  ['hard', words.hard],
  ['soft', words.soft],
] as const;
const units = ['cm', 'mm', 'in'].map((unit) => [unit, unit] as const);
const habits = ['never', 'rarely', 'often'].map((habit) => [habit, habit] as const);

export const Plants = ({ edit }: { edit: Editing }) => (
  <Entries
    edit={edit}
    list={['plants']}
    title={words.plants}
    add={words.addPlant}
    fresh={() => ({ code: '', place: '', used: ['1990', null] })}
    nameOf={(entry, index) => textOf(entry, 'code', `${index + 1}`)}
  >
    {(path) => (
      <div class="fields">
        <TextField edit={edit} path={[...path, 'code']} label={words.code} required />
        <TextField edit={edit} path={[...path, 'place']} label={words.country} required />
        <PeriodField edit={edit} path={[...path, 'used']} label={words.used} words={words.period} />
        <TextField edit={edit} path={[...path, 'name']} label={words.name} />
        <TextField edit={edit} path={[...path, 'source']} label={words.source} />
      </div>
    )}
  </Entries>
);

export const ConstructionFacts = ({ edit }: { edit: Editing }) => (
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
        <ChoiceField edit={edit} path={[...path, 'part']} label={words.part} choices={parts} />
        <TextField edit={edit} path={[...path, 'is']} label={words.is} required />
        <PeriodField edit={edit} path={[...path, 'used']} label={words.used} words={words.period} />
        <ChoiceField edit={edit} path={[...path, 'strength']} label={words.strength} choices={strengths} />
        <TextField edit={edit} path={[...path, 'source']} label={words.source} required />
      </div>
    )}
  </Entries>
);

export const Models = ({ edit }: { edit: Editing }) => (
  <Entries
    edit={edit}
    list={['models']}
    title={words.models}
    add={words.addModel}
    fresh={() => ({ name: '', size: { width: 30, unit: 'cm', tolerance: 1 } })}
    nameOf={(entry, index) => textOf(entry, 'name', `${index + 1}`)}
  >
    {(path, entry) => (
      <div class="fields">
        <TextField edit={edit} path={[...path, 'name']} label={words.name} required />
        {Reflect.get(entry as object, 'size') !== undefined && (
          <>
            <NumberField edit={edit} path={[...path, 'size', 'width']} label={words.width} />
            <NumberField edit={edit} path={[...path, 'size', 'height']} label={words.height} />
            <NumberField edit={edit} path={[...path, 'size', 'depth']} label={words.depth} />
            <ChoiceField edit={edit} path={[...path, 'size', 'unit']} label={words.unit} choices={units} />
            <NumberField edit={edit} path={[...path, 'size', 'tolerance']} label={words.tolerance} />
          </>
        )}
      </div>
    )}
  </Entries>
);

export const Trade = ({ edit }: { edit: Editing }) => (
  <section class="entries" aria-labelledby="trade-title">
    <h3 id="trade-title">{words.trade}</h3>
    <div class="fields">
      <ChoiceField
        edit={edit}
        path={['trade', 'discounts']}
        label={words.discounts}
        choices={habits}
        none={words.unknown}
      />
      <TickField edit={edit} path={['trade', 'sampleSales']} label={words.sampleSales} />
      <TickField edit={edit} path={['trade', 'seconds']} label={words.seconds} />
      <TickField edit={edit} path={['trade', 'outlets']} label={words.outlets} />
      <TextField edit={edit} path={['trade', 'source']} label={words.source} />
    </div>
    <Entries
      edit={edit}
      list={['trade', 'newPriceFloor']}
      title={words.priceFloor}
      add={words.addPrice}
      fresh={() => ({ amount: 100, currency: 'EUR', year: 2020 })}
      nameOf={(_, index) => `${index + 1}`}
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
