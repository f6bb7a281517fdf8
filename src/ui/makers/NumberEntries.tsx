import { conditionSchema } from '../../listing/types';
import { type FieldPath, numberKinds } from '../../maker';
import { strings } from '../../words';
import { kindsOf } from './choices';
import { Entries, textOf } from './Entries';
import { EntryFields, OfPieces } from './EntryFields';
import type { Editing } from './editing';
import { ChoiceField, FieldProblems, NumberField, TextField } from './fields';
import { partChoices } from './part-choices';

const words = strings.makers;

/** What models cost, by condition and year. */
export const Prices = ({ edit }: { edit: Editing }) => (
  <Entries
    edit={edit}
    list={['prices']}
    title={words.prices}
    add={words.addPrice}
    fresh={() => ({ condition: 'new', least: 100, currency: 'EUR', year: 2020 })}
    nameOf={(_, index) => words.price(index + 1)}
    whole
  >
    {(path) => (
      <>
        <div class="fields">
          <TextField edit={edit} path={[...path, 'model']} label={words.ofModel} />
          <ChoiceField
            edit={edit}
            path={[...path, 'condition']}
            label={words.condition}
            choices={kindsOf(conditionSchema.options, strings.claims.says.conditions)}
          />
          <NumberField edit={edit} path={[...path, 'least']} label={words.least} />
          <NumberField edit={edit} path={[...path, 'most']} label={words.most} />
          <TextField edit={edit} path={[...path, 'currency']} label={words.currency} required />
          <NumberField edit={edit} path={[...path, 'year']} label={words.year} />
        </div>
        <EntryFields edit={edit} path={path} />
      </>
    )}
  </Entries>
);

const axes = ['lightness', 'greenRed', 'blueYellow'] as const;
/** A colour that any piece may have, to be narrowed. */
const anyColour = { lightness: [0, 100], greenRed: [-128, 128], blueYellow: [-128, 128] };

/** Numbers by which pieces can be told: stitches, their distance, the repeat of a pattern, a colour. */
export const Numbers = ({ edit }: { edit: Editing }) => (
  <Entries
    edit={edit}
    list={['numbers']}
    title={words.numbers}
    add={words.addNumber}
    fresh={() => ({ of: 'stitches', part: 'tab', least: 5, most: 5 })}
    nameOf={(_, index) => words.number(index + 1)}
    whole
  >
    {(path, entry) => (
      <>
        <div class="fields">
          <ChoiceField
            edit={edit}
            path={[...path, 'of']}
            label={words.numberOf}
            choices={kindsOf(numberKinds, words.numberKinds)}
            onChoice={(of) => of && edit.set(path, madeAnew(entry, of))}
          />
          <ChoiceField edit={edit} path={[...path, 'part']} label={words.part} choices={partChoices(edit)} />
          {textOf(entry, 'of', '') === 'colour' ? (
            axes.map((axis) => <Range key={axis} edit={edit} path={[...path, axis]} label={words[axis]} />)
          ) : (
            <>
              <NumberField edit={edit} path={[...path, 'least']} label={words.least} />
              <NumberField edit={edit} path={[...path, 'most']} label={words.most} />
            </>
          )}
          <OfPieces edit={edit} path={path} />
        </div>
        <EntryFields edit={edit} path={path} />
      </>
    )}
  </Entries>
);

/** An entry of another kind: what the two have in common stays, what only one of them has does not. */
function madeAnew(entry: unknown, of: (typeof numberKinds)[number]): object {
  const { lightness, greenRed, blueYellow, least = 0, most = 0, ...rest } = entry as Record<string, unknown>;
  if (of === 'colour') return { ...rest, ...anyColour, ...(lightness ? { lightness, greenRed, blueYellow } : {}), of };
  return { ...rest, of, least, most };
}

const Range = ({ edit, path, label }: { edit: Editing; path: FieldPath; label: string }) => (
  <>
    <NumberField edit={edit} path={[...path, 0]} label={words.leastOf(label)} />
    <NumberField edit={edit} path={[...path, 1]} label={words.mostOf(label)} />
    <FieldProblems edit={edit} path={path} />
  </>
);
