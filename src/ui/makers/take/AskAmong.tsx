import { strings } from '../../../words';

const words = strings.take;

interface Props {
  /** Makers that the page seems to be of. */
  names: readonly string[];
  /** The one that it is of alone; null for each of them. */
  only: string | null;
  onChange: (only: string | null) => void;
}

/** Asks whether a page that is sure of none of its makers is of one alone. */
export function AskAmong({ names, only, onChange }: Props) {
  return (
    <fieldset class="field take-ask">
      <legend>{words.askMaker.title}</legend>
      <p class="hint">{words.askAmong.about}</p>
      <div class="row">
        {[null, ...names].map((name) => (
          <label key={name ?? ''}>
            <input type="radio" name="take-among" checked={only === name} onChange={() => onChange(name)} />{' '}
            {name === null ? words.askAmong.each : words.askAmong.only(name)}
          </label>
        ))}
      </div>
    </fieldset>
  );
}
