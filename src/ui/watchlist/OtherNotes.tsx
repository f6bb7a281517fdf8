import type { OtherNote } from '../../watch';
import { strings } from '../../words';
import { dayWords } from '../day-words';

/** What else is written about the case: kept beside the buyer's note until the buyer says what becomes of it. */
export const OtherNotes = ({
  notes,
  onSettle,
}: {
  notes: OtherNote[];
  onSettle: (other: OtherNote, take: boolean) => void;
}) =>
  notes.length === 0 ? null : (
    <ul class="other-notes" aria-label={strings.watch.otherNotes}>
      {notes.map((other) => (
        <li key={`${other.at} ${other.note}`}>
          <p class="muted">{strings.watch.otherNoteFrom[other.from](dayWords(other.at))}</p>
          {other.note !== '' && <p class="other-note-text">{other.note}</p>}
          {other.status && <p>{strings.watch.otherStatus(strings.watch.statuses[other.status])}</p>}
          <div class="row">
            <button type="button" class="small" onClick={() => onSettle(other, true)}>
              {other.note === '' ? strings.watch.takeStatus : strings.watch.takeNote}
            </button>
            <button type="button" class="small" onClick={() => onSettle(other, false)}>
              {strings.watch.dropNote}
            </button>
          </div>
        </li>
      ))}
    </ul>
  );
