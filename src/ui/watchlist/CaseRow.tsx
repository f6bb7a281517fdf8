import { useEffect, useState } from 'preact/hooks';
import { type ReadableRow, type WatchStatus, webLink } from '../../watch';
import { strings } from '../../words';
import { priceWords } from '../claim-words';
import { dayWords } from '../day-words';
import { Kind } from '../parts/Kind';
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
      <p class="case-counts">
        <Counts counts={row.counts} />
      </p>
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

/** What speaks against a case and what is open. What agrees is not counted: it would read as passed. */
export const Counts = ({ counts: { contradictions, doubts, gaps } }: { counts: ReadableRow['counts'] }) => (
  <>
    {contradictions > 0 && <Kind kind="contradiction" number={contradictions} />}
    {doubts > 0 && <Kind kind="doubt" number={doubts} />}
    {gaps > 0 && <Kind kind="gap" number={gaps} />}
  </>
);
