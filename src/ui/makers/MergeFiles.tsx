import { useState } from 'preact/hooks';
import { type Choice, type MakerFile, mergeMakerFiles } from '../../maker';
import { strings } from '../strings';

const words = strings.makers;

interface Props {
  mine: MakerFile;
  theirs: MakerFile;
  onMerged: (merged: MakerFile) => void;
  onApart: () => void;
}

/** Two files of one maker: every difference, with a choice for each. */
export function MergeFiles({ mine, theirs, onMerged, onApart }: Props) {
  const [choices, setChoices] = useState<Record<string, Choice>>({});
  const { merged, conflicts } = mergeMakerFiles(mine, theirs, choices);
  return (
    <section class="notice notice-strong" aria-labelledby="merge-title">
      <h2 id="merge-title">{words.mergeTitle(mine.maker)}</h2>
      <p>{words.mergeAbout(conflicts.length)}</p>
      {conflicts.map(({ id, entry, fields, mine: own, theirs: other }) => (
        <fieldset class="conflict" key={id}>
          <legend>
            {entry} <span class="muted">({fields.join(', ')})</span>
          </legend>
          {(
            [
              ['mine', own],
              ['theirs', other],
            ] as const
          ).map(([choice, value]) => (
            <label class="tick" key={choice}>
              <input
                type="radio"
                name={id}
                checked={(choices[id] ?? 'mine') === choice}
                onChange={() => setChoices({ ...choices, [id]: choice })}
              />
              <span>
                {words[choice]}: <span class="muted">{partWords(value, fields)}</span>
              </span>
            </label>
          ))}
        </fieldset>
      ))}
      <div class="row">
        <button type="button" class="main" onClick={() => onMerged(merged)}>
          {words.merge}
        </button>
        <button type="button" onClick={onApart}>
          {words.keepBoth}
        </button>
      </div>
    </section>
  );
}

/** What differs of an entry, short: the fields named, or the whole when it is no group. */
function partWords(value: unknown, fields: string[]): string {
  if (value === null || value === undefined) return words.nothing;
  if (typeof value !== 'object') return String(value);
  const parts = fields.map((field) => Reflect.get(value, field)).filter((part) => part !== undefined);
  return JSON.stringify(parts.length === 1 ? parts[0] : parts.length > 0 ? parts : value).slice(0, 300);
}
