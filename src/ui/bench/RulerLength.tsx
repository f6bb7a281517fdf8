import { useState } from 'preact/hooks';
import type { HandMark } from '../../photo';
import { strings } from '../../words';
import { type KnownObject, knownObjects } from './known-objects';

/** The length that a ruler's points span: typed, or of an object whose size is published. */
export function RulerLength({ mark, onChange }: { mark: HandMark; onChange: (mark: HandMark) => void }) {
  const words = strings.bench;
  const [typed, setTyped] = useState(mark.mm === null ? '' : String(mark.mm));
  const set = (text: string) => {
    setTyped(text);
    const mm = Number(text.replace(',', '.'));
    if (text.trim() === '' || !(mm > 0) || mm > 10_000) return;
    if (mm !== mark.mm) onChange({ ...mark, mm });
  };
  const known = (Object.keys(knownObjects) as KnownObject[]).find((name) => String(knownObjects[name]) === typed);
  return (
    <div class="row">
      <label class="field">
        <span>{words.length}</span>
        <input
          type="text"
          inputMode="decimal"
          value={typed}
          onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          onChange={({ currentTarget }) => set(currentTarget.value)}
        />
      </label>
      <label class="field">
        <span>{words.known}</span>
        <select
          value={known ?? ''}
          onChange={({ currentTarget }) => {
            const name = currentTarget.value as KnownObject | '';
            if (name !== '') set(String(knownObjects[name]));
          }}
        >
          <option value="">{words.knownNone}</option>
          {(Object.keys(knownObjects) as KnownObject[]).map((name) => (
            <option key={name} value={name}>
              {words.objects[name]}
            </option>
          ))}
        </select>
      </label>
    </div>
  );
}
