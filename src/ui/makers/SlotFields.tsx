import type { FieldPath } from '../../maker';
import { strings } from '../strings';
import type { Editing } from './editing';
import { ChoiceField, NumberField, TextField, TickField } from './fields';

const words = strings.makers.slot;
type Choices = readonly (readonly [string | number, string])[];
const halves: Choices = [
  [2, words.both],
  ['tens', words.tens],
  ['units', words.units],
];

/** The few settings of one slot, by what it means. */
export function SlotFields({ edit, path, slot }: { edit: Editing; path: FieldPath; slot: Record<string, unknown> }) {
  const field = (name: string): FieldPath => [...path, name];
  if ('literal' in slot) return <TextField edit={edit} path={field('literal')} label={words.characters} required />;
  if ('separator' in slot) {
    return (
      <>
        <TextField edit={edit} path={field('separator')} label={words.anyOf} required />
        <TickField edit={edit} path={field('optional')} label={words.optional} />
      </>
    );
  }
  if ('plant' in slot) return <NumberField edit={edit} path={field('plant')} label={words.length} />;
  if ('year' in slot) return <YearFields edit={edit} path={path} slot={slot} />;
  if ('month' in slot) {
    const choices: Choices = [...halves, ['1-9OND', '1–9 O N D'], ['1-9', '1–9'], ['letter', words.letter]];
    return <ChoiceField edit={edit} path={field('month')} label={words.written} choices={choices} />;
  }
  if ('week' in slot) return <ChoiceField edit={edit} path={field('week')} label={words.written} choices={halves} />;
  if ('day' in slot) return <ChoiceField edit={edit} path={field('day')} label={words.written} choices={halves} />;
  if ('serial' in slot) {
    if (typeof slot.serial === 'number') return <NumberField edit={edit} path={field('serial')} label={words.length} />;
    return (
      <>
        <NumberField edit={edit} path={[...path, 'serial', 'min']} label={words.least} />
        <NumberField edit={edit} path={[...path, 'serial', 'max']} label={words.most} />
        {Array.isArray(slot.table) && <p class="muted hint">{words.table(slot.table.length)}</p>}
      </>
    );
  }
  if ('check' in slot) {
    const choices = ['luhn', 'mod10', 'mod11', 'mod97', 'iso6346', 'vin'].map((name) => [name, name] as const);
    return <ChoiceField edit={edit} path={field('check')} label={words.rule} choices={choices} />;
  }
  if ('any' in slot) {
    const choices = [
      ['digit', words.digit],
      ['letter', words.letter],
      ['either', words.either],
    ] as const;
    return (
      <>
        <NumberField edit={edit} path={field('any')} label={words.length} />
        <ChoiceField edit={edit} path={field('of')} label={words.kind} choices={choices} none={words.either} />
      </>
    );
  }
  return null;
}

function YearFields({ edit, path, slot }: { edit: Editing; path: FieldPath; slot: Record<string, unknown> }) {
  const choices: Choices = [
    [4, words.fourDigits],
    [2, words.twoDigits],
    [1, words.oneDigit],
    ...halves.slice(1),
    ['cycle', words.letter],
  ];
  return (
    <>
      <ChoiceField edit={edit} path={[...path, 'year']} label={words.written} choices={choices} />
      {slot.year === 'cycle' && (
        <>
          <TextField edit={edit} path={[...path, 'letters']} label={words.letters} required />
          <NumberField edit={edit} path={[...path, 'first']} label={words.firstYear} />
        </>
      )}
    </>
  );
}
