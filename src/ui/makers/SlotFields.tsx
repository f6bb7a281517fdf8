import type { FieldPath } from '../../maker';
import { strings } from '../strings';
import type { Editing } from './editing';
import { ChoiceField, NumberField, TextField, TickField } from './fields';
import { NumbersField } from './list-fields';
import { SerialFields } from './SerialFields';

const words = strings.makers.slot;
type Choices = readonly (readonly [string | number, string])[];
const halves: Choices = [
  [2, words.both],
  ['tens', words.tens],
  ['units', words.units],
];
const years: Choices = [
  [4, words.fourDigits],
  [2, words.twoDigits],
  [1, words.oneDigit],
  ...halves.slice(1),
  ['cycle', words.letter],
];
const months: Choices = [...halves, ['1-9OND', '1–9 O N D'], ['1-9', '1–9'], ['letter', words.letter]];
/** Letters as a maker is likely to have used them: without I, O and Q, which are taken for figures. */
const cycle = 'ABCDEFGHJKLMNPRSTUVWXYZ';

interface Props {
  edit: Editing;
  path: FieldPath;
  slot: Record<string, unknown>;
}

/** The settings of one slot, by what it means. */
export function SlotFields({ edit, path, slot }: Props) {
  const field = (name: string): FieldPath => [...path, name];
  const optional = <TickField edit={edit} path={field('optional')} label={words.optional} />;
  const reversed = <TickField edit={edit} path={field('reversed')} label={words.reversed} />;
  const written = (name: string, choices: Choices) => (
    <ChoiceField edit={edit} path={field(name)} label={words.written} choices={choices} />
  );
  if ('literal' in slot) {
    return (
      <>
        <TextField edit={edit} path={field('literal')} label={words.characters} required />
        {optional}
      </>
    );
  }
  if ('separator' in slot) {
    return (
      <>
        <TextField edit={edit} path={field('separator')} label={words.anyOf} required />
        {optional}
      </>
    );
  }
  if ('plant' in slot) return <NumberField edit={edit} path={field('plant')} label={words.length} />;
  if ('year' in slot) return <YearFields edit={edit} path={path} slot={slot} />;
  if ('month' in slot) return <MonthFields edit={edit} path={path} slot={slot} />;
  if ('week' in slot) {
    return (
      <>
        {written('week', halves)}
        <ChoiceField
          edit={edit}
          path={field('count')}
          label={words.weekCount}
          choices={[['first-full-sunday', words.fromSunday]]}
          none={words.iso}
        />
        {reversed}
      </>
    );
  }
  if ('quarter' in slot) return <QuarterFields edit={edit} path={path} slot={slot} />;
  if ('day' in slot) {
    return (
      <>
        {written('day', halves)}
        {reversed}
      </>
    );
  }
  if ('dayOfYear' in slot) return reversed;
  if ('serial' in slot) return <SerialFields edit={edit} path={path} />;
  if ('check' in slot) return <CheckFields edit={edit} path={path} slot={slot} />;
  if ('any' in slot) {
    return (
      <>
        <NumberField edit={edit} path={field('any')} label={words.length} />
        <ChoiceField
          edit={edit}
          path={field('of')}
          label={words.kind}
          choices={[
            ['digit', words.digit],
            ['letter', words.letters],
            ['either', words.either],
          ]}
          none={words.either}
        />
        <TextField edit={edit} path={field('from')} label={words.only} />
      </>
    );
  }
  return null;
}

/** Another way to write the year needs other fields: the slot is made anew, so that none is left that does not fit. */
function YearFields({ edit, path, slot }: Props) {
  const reversed = slot.reversed === undefined ? {} : { reversed: slot.reversed };
  return (
    <>
      <ChoiceField
        edit={edit}
        path={[...path, 'year']}
        label={words.written}
        choices={years}
        onChoice={(year) =>
          edit.set(path, year === 'cycle' ? { year, letters: cycle, first: 1990 } : { year, ...reversed })
        }
      />
      {slot.year === 'cycle' ? (
        <>
          <TextField edit={edit} path={[...path, 'letters']} label={words.lettersUsed} required />
          <p class="hint">{skippedWords(slot.letters)}</p>
          <NumberField edit={edit} path={[...path, 'first']} label={words.firstYear} />
          <TickField edit={edit} path={[...path, 'enclosed']} label={words.enclosed} />
        </>
      ) : (
        <TickField edit={edit} path={[...path, 'reversed']} label={words.reversed} />
      )}
    </>
  );
}

/** Which letters of the alphabet a cycle passes over, because that is how people know it. */
export function skippedWords(letters: unknown): string {
  if (typeof letters !== 'string' || !/[A-Z]/.test(letters)) return '';
  const skipped = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].filter((letter) => !letters.includes(letter));
  return words.skipped(skipped.join(' '));
}

function MonthFields({ edit, path, slot }: Props) {
  return (
    <>
      <ChoiceField
        edit={edit}
        path={[...path, 'month']}
        label={words.written}
        choices={months}
        onChoice={(month) => edit.set(path, { month })}
      />
      {slot.month === 'letter' && (
        <TextField edit={edit} path={[...path, 'letters']} label={words.monthLetters} hint="ABCDEFGHIJKL" />
      )}
      {halves.some(([half]) => half === slot.month) && (
        <TickField edit={edit} path={[...path, 'reversed']} label={words.reversed} />
      )}
    </>
  );
}

function QuarterFields({ edit, path, slot }: Props) {
  const isLetter = typeof slot.quarter === 'string';
  const choices: Choices = [
    [1, words.quarterDigit],
    [isLetter ? String(slot.quarter) : 'ABCD', words.letter],
  ];
  return (
    <>
      <ChoiceField edit={edit} path={[...path, 'quarter']} label={words.written} choices={choices} />
      {isLetter && <TextField edit={edit} path={[...path, 'quarter']} label={words.quarterLetters} required />}
    </>
  );
}

function CheckFields({ edit, path, slot }: Props) {
  const takesWeights = slot.check === 'mod10' || slot.check === 'mod11';
  return (
    <>
      <ChoiceField edit={edit} path={[...path, 'check']} label={words.rule} choices={Object.entries(words.rules)} />
      <ChoiceField
        edit={edit}
        path={[...path, 'over']}
        label={words.over}
        choices={[['all', words.overAll]]}
        none={words.overBefore}
      />
      {(takesWeights || slot.weights !== undefined) && (
        <NumbersField edit={edit} path={[...path, 'weights']} label={words.weights} hint="1, 3" />
      )}
    </>
  );
}
