import { useEffect, useState } from 'preact/hooks';
import { type ReadableRow, type WatchStatus, webLink } from '../../watch';
import { sayHead, strings } from '../../words';
import { priceWords } from '../claim-words';
import { dayWords } from '../day-words';
import { StatusChoice } from './StatusChoice';

interface Props {
  row: ReadableRow;
  readFace: (id: string) => Promise<string | null>;
  onStatus: (status: WatchStatus) => void;
  onRemove: () => void;
}

/** One case of the list, always of the same height: what it is and how it stands. The case itself opens in its place. */
export function CaseRow({ row, readFace, onStatus, onRemove }: Props) {
  const { id, title, price, savedAt, status, hasNote, otherNotes } = row;
  const [face, setFace] = useState<string | null>(null);
  useEffect(() => {
    let current = true;
    readFace(id).then((picture) => current && setFace(picture));
    return () => {
      current = false;
    };
  }, [id, readFace]);
  const link = webLink(row.address);
  const foremost = foremostOf(row);
  const facts = [
    price && priceWords(price),
    strings.watch.saved(dayWords(savedAt)),
    hasNote && strings.watch.hasNote,
    otherNotes > 0 && strings.watch.hasOtherNotes(otherNotes),
  ];
  return (
    <article class="case-row" data-case={id} aria-label={title}>
      <div class="case-face">{face && <img src={face} alt="" />}</div>
      <div class="case-words">
        <h2>
          <a href={`#case=${encodeURIComponent(id)}`} title={title} data-row-target>
            {title}
          </a>
        </h2>
        <p class="muted">{facts.filter(Boolean).join(' · ')}</p>
      </div>
      {foremost && (
        <p class="case-foremost" title={foremost.sentences.join(' ')}>
          <span class="muted">{foremost.name}:</span> {foremost.sentences.join(' ')}
        </p>
      )}
      <div class="case-actions">
        <StatusChoice status={status} title={title} onStatus={onStatus} />
        {link && (
          <a href={link} target="_blank" rel="noreferrer noopener">
            {strings.watch.page}
          </a>
        )}
        <a href={`#dossier=${encodeURIComponent(id)}`}>{strings.dossier.open}</a>
        <button type="button" class="small" onClick={onRemove}>
          {strings.watch.remove}
        </button>
      </div>
    </article>
  );
}

/** The first line of the head that holds something. A finding from a file may lack what its sentence needs: no line then. */
function foremostOf({ head }: ReadableRow) {
  try {
    return sayHead(head, 1).find(({ holds }) => holds);
  } catch {
    return undefined;
  }
}
