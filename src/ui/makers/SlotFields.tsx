import { kindOfSlot, type SlotChoice, type SlotField, type SlotWord } from '../../code';
import type { FieldPath } from '../../maker';
import { strings } from '../../words';
import type { Editing } from './editing';
import { ChoiceField, NumberField, TextField, TickField } from './fields';
import { NumbersField } from './list-fields';
import { SerialFields } from './SerialFields';

const words = strings.makers.slot;
const wordOf = (label: SlotWord) => words[label];
const labelled = ([value, label]: SlotChoice) => [value, typeof label === 'string' ? wordOf(label) : label.as] as const;

interface Props {
  edit: Editing;
  path: FieldPath;
  slot: Record<string, unknown>;
}

/** The settings of one slot, as its kind lists them. */
export function SlotFields({ edit, path, slot }: Props) {
  const kind = kindOfSlot(slot);
  if (!kind) return null;
  return (
    <>
      {kind.fields
        .filter(({ when }) => when?.(slot) ?? true)
        .map((field) => (
          <Setting key={`${field.as} ${field.name}`} edit={edit} path={path} slot={slot} field={field} />
        ))}
    </>
  );
}

function Setting({ edit, path, slot, field }: Props & { field: SlotField<object> }) {
  const own = { edit, path: [...path, field.name], label: wordOf(field.label) };
  switch (field.as) {
    case 'text':
      return (
        <>
          <TextField {...own} {...(field.example ? { hint: field.example } : {})} required={field.required ?? false} />
          {field.skipped && <p class="hint">{skippedWords(slot[field.name])}</p>}
        </>
      );
    case 'number':
      return <NumberField {...own} />;
    case 'tick':
      return <TickField {...own} />;
    case 'numbers':
      return <NumbersField {...own} hint={field.example} />;
    case 'rules':
      return <ChoiceField {...own} choices={Object.entries(words.rules)} />;
    case 'serial':
      return <SerialFields edit={edit} path={path} />;
    case 'choice': {
      const { choices, none, remake } = field;
      const offered = (typeof choices === 'function' ? choices(slot) : choices).map(labelled);
      return (
        <ChoiceField
          {...own}
          choices={offered}
          {...(none ? { none: wordOf(none) } : {})}
          {...(remake
            ? {
                onChoice: (value: unknown) =>
                  (typeof value === 'string' || typeof value === 'number') && edit.set(path, remake(value, slot)),
              }
            : {})}
        />
      );
    }
  }
}

/** Which letters of the alphabet a cycle passes over, because that is how people know it. */
export function skippedWords(letters: unknown): string {
  if (typeof letters !== 'string' || !/[A-Z]/.test(letters)) return '';
  const skipped = [...'ABCDEFGHIJKLMNOPQRSTUVWXYZ'].filter((letter) => !letters.includes(letter));
  return words.skipped(skipped.join(' '));
}
