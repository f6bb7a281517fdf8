import { useState } from 'preact/hooks';
import { type FieldPath, freshSlots } from '../../maker';
import { strings } from '../../words';
import type { Editing } from './editing';
import { FieldProblems, ProblemList } from './fields';
import { placeOf } from './go-to-field';
import { SlotFields } from './SlotFields';
import { type SlotValue, slotWords } from './slot-words';

const words = strings.makers;

/** The slots of one layout in a row: clicked in from a list, chosen to be set, moved and taken away. */
export function Layout({ edit, path, title = words.layout }: { edit: Editing; path: FieldPath; title?: string }) {
  const [chosen, setChosen] = useState<number | null>(null);
  const slots = edit.list(path) as SlotValue[];
  const slot = chosen === null ? undefined : slots[chosen];
  return (
    <div class="layout-editor" {...placeOf(path)}>
      <p class="field-label">{title}</p>
      <ol class="slots">
        {slots.map((one, index) => (
          <li key={index}>
            <button
              {...placeOf([...path, index])}
              type="button"
              class="small"
              aria-pressed={index === chosen}
              onClick={() => setChosen(index === chosen ? null : index)}
            >
              {slotWords(one)}
            </button>
            {index === chosen ? (
              <FieldProblems edit={edit} path={[...path, index]} />
            ) : (
              <ProblemList problems={edit.problemsWithin([...path, index])} />
            )}
          </li>
        ))}
      </ol>
      <FieldProblems edit={edit} path={path} />
      {slot && chosen !== null && (
        <div class="entry slot-settings">
          <SlotFields edit={edit} path={[...path, chosen]} slot={slot} />
          <div class="row">
            <button
              type="button"
              class="small"
              disabled={chosen === 0}
              onClick={() => {
                edit.move(path, chosen, chosen - 1);
                setChosen(chosen - 1);
              }}
            >
              {words.earlier}
            </button>
            <button
              type="button"
              class="small"
              disabled={chosen === slots.length - 1}
              onClick={() => {
                edit.move(path, chosen, chosen + 1);
                setChosen(chosen + 1);
              }}
            >
              {words.later}
            </button>
            <button
              type="button"
              class="small"
              onClick={() => {
                edit.remove(path, chosen);
                setChosen(null);
              }}
            >
              {words.remove(slotWords(slot))}
            </button>
          </div>
        </div>
      )}
      <fieldset class="row add-slots">
        <legend class="muted">{words.addSlot}</legend>
        {freshSlots.map(({ kind, slot: fresh }) => (
          <button
            key={kind}
            type="button"
            class="small"
            onClick={() => {
              edit.insert(path, fresh);
              setChosen(slots.length);
            }}
          >
            {words.slot.names[kind]}
          </button>
        ))}
      </fieldset>
    </div>
  );
}
