import { useState } from 'preact/hooks';
import { type Choice, type Conflict, type MakerFile, mergeMakerFiles } from '../../maker';
import { strings } from '../../words';
import { FieldSaid } from './FieldSaid';
import { conflictWords } from './merge-words';

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
      {conflicts.map((conflict) => (
        <ConflictChoice
          key={conflict.id}
          conflict={conflict}
          chosen={choices[conflict.id] ?? 'mine'}
          onChoose={(choice) => setChoices({ ...choices, [conflict.id]: choice })}
        />
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

/** One difference: what each file says, in the words of the editor's fields. */
function ConflictChoice({
  conflict,
  chosen,
  onChoose,
}: {
  conflict: Conflict;
  chosen: Choice;
  onChoose: (choice: Choice) => void;
}) {
  const { title, parts } = conflictWords(conflict);
  return (
    <fieldset class="conflict">
      <legend>{title}</legend>
      {(['mine', 'theirs'] as const).map((choice) => (
        <label class="tick" key={choice}>
          <input type="radio" name={conflict.id} checked={chosen === choice} onChange={() => onChoose(choice)} />
          <span>
            {words[choice]}:{' '}
            {parts.map((part) => (
              <FieldSaid key={part.label} label={part.label} said={part[choice]} />
            ))}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
