import { useId } from 'preact/hooks';
import { strings } from '../../../words';

const words = strings.take.askMaker;
const longestName = 80;

interface Props {
  /** Whether the page names anybody. */
  names: boolean;
  /** What the field holds: the likeliest name at first. */
  likely: string;
  /** Names of the page that come into question as well. */
  others: readonly string[];
  onChange: (name: string) => void;
}

/** Asks once of which maker a page tells, where it does not say so plainly: the file is named so. */
export function AskMaker({ names, likely, others, onChange }: Props) {
  const id = useId();
  return (
    <div class="field take-ask">
      <h3>{words.title}</h3>
      <label for={id}>{words.label}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        maxLength={longestName}
        value={likely}
        onInput={({ currentTarget: { value } }) => onChange(value)}
      />
      <p class="hint">{hintOf(names, likely)}</p>
      {others.length > 0 && (
        <div class="row">
          <span class="hint">{words.others}</span>
          {others.map((name) => (
            <button key={name} type="button" class="small" onClick={() => onChange(name)}>
              {name}
            </button>
          ))}
        </div>
      )}
    </div>
  );
}

function hintOf(names: boolean, filled: string): string {
  if (filled.trim() !== '') return words.check;
  return names ? words.emptied : words.none;
}
