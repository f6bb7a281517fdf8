import { useEffect, useState } from 'preact/hooks';
import { mostNoteCharacters, type SavedNote } from '../../watch';
import { strings } from '../../words';

interface Props {
  note: string;
  /** Saves words that began as the second text; null when that failed. */
  onNote: (note: string, begunWith: string) => Promise<SavedNote | null>;
}

/** The buyer's own note. What another window saved meanwhile shows here only while nothing was typed. */
export function NoteField({ note, onNote }: Props) {
  const [text, setText] = useState(note);
  const [begunWith, setBegunWith] = useState(note);
  const [said, setSaid] = useState('');
  const untouched = text === begunWith;
  useEffect(() => {
    if (!untouched) return;
    setText(note);
    setBegunWith(note);
  }, [note, untouched]);
  const save = async () => {
    const saved = await onNote(text, begunWith);
    if (!saved) return;
    setBegunWith(text);
    setSaid(saved.bothNotes ? strings.watch.bothNotesSaved : strings.watch.noteSaved);
  };
  return (
    <div class="case-note">
      <label>
        <span>{strings.watch.note}</span>
        <textarea
          rows={3}
          maxLength={mostNoteCharacters}
          value={text}
          onInput={(event) => {
            setText(event.currentTarget.value);
            setSaid('');
          }}
        />
      </label>
      <div class="row">
        <button type="button" disabled={untouched} onClick={save}>
          {strings.watch.saveNote}
        </button>
        <span role="status" class="hint">
          {said}
        </span>
      </div>
    </div>
  );
}
