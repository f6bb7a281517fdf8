import { useEffect, useRef, useState } from 'preact/hooks';
import { statusSchema, type WatchRecord, type WatchStatus } from '../../watch';
import { strings } from '../../words';
import { priceWords } from '../claim-words';
import { dayWords } from '../day-words';
import { CaseView } from '../parts/CaseView';
import { Head } from '../parts/Head';

interface Props {
  record: WatchRecord;
  startOpen: boolean;
  onStatus: (status: WatchStatus) => void;
  onNote: (note: string) => Promise<boolean>;
  onRemove: () => void;
}

/** One saved case: what it is and how it stands at once; the whole case when opened. */
export function WatchRowCard({ record, startOpen, onStatus, onNote, onRemove }: Props) {
  const [open, setOpen] = useState(startOpen);
  const card = useRef<HTMLElement>(null);
  useEffect(() => {
    if (!startOpen) return;
    setOpen(true);
    card.current?.scrollIntoView();
  }, [startOpen]);
  const { case: kase, pictures, title } = record;
  const face = pictures.find(({ lineId }) => lineId === null);
  const price = kase.listing.price[0];
  const pictureOfLine = (photoId: string, lineId: string) =>
    pictures.find((kept) => kept.photoId === photoId && kept.lineId === lineId)?.picture ?? null;
  return (
    <article class="watch-row" ref={card} data-case={record.id}>
      <header>
        {face && <img src={face.picture} alt="" />}
        <h2>{title}</h2>
        <p class="muted">
          {[price && priceWords(price.value), strings.watch.saved(dayWords(record.savedAt))]
            .filter(Boolean)
            .join(' · ')}
        </p>
        <Head kase={kase} most={1} />
      </header>
      <div class="row">
        <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? strings.watch.close : strings.watch.open}
        </button>
        <label class="row">
          <span>{strings.watch.status}</span>
          <select value={record.status} onChange={(event) => onStatus(statusSchema.parse(event.currentTarget.value))}>
            {statusSchema.options.map((status) => (
              <option key={status} value={status}>
                {strings.watch.statuses[status]}
              </option>
            ))}
          </select>
        </label>
        <a href={kase.listing.url} target="_blank" rel="noreferrer noopener">
          {strings.watch.page}
        </a>
        <a href={`#dossier=${encodeURIComponent(record.id)}`}>{strings.dossier.open}</a>
        <button type="button" onClick={onRemove}>
          {strings.watch.remove}
        </button>
      </div>
      <Note id={record.id} note={record.note} onNote={onNote} />
      {open && <CaseView kase={kase} pictureOfLine={pictureOfLine} />}
    </article>
  );
}

function Note({ id, note, onNote }: { id: string; note: string; onNote: Props['onNote'] }) {
  const [text, setText] = useState(note);
  const [saved, setSaved] = useState(false);
  return (
    <details class="quiet" open={note !== ''}>
      <summary>{strings.watch.note}</summary>
      <textarea
        rows={3}
        maxLength={20_000}
        aria-label={strings.watch.note}
        id={`note-${id}`}
        value={text}
        onInput={(event) => {
          setText(event.currentTarget.value);
          setSaved(false);
        }}
      />
      <div class="row">
        <button type="button" disabled={text === note} onClick={async () => setSaved(await onNote(text))}>
          {strings.watch.saveNote}
        </button>
        <span role="status" class="hint">
          {saved ? strings.watch.noteSaved : ''}
        </span>
      </div>
    </details>
  );
}
