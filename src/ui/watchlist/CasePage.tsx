import { useCallback, useEffect, useErrorBoundary, useMemo, useState } from 'preact/hooks';
import { fail, problem, type Result } from '../../problem';
import { connectReader } from '../../reader';
import { caseOf, type SavedCase, type WatchRecord, type WatchRow, webLink } from '../../watch';
import { strings } from '../../words';
import { priceWords } from '../claim-words';
import { dayWords } from '../day-words';
import { useMessageLimit } from '../message/use-limit';
import type { GivenPhoto } from '../panel/sent-photos';
import { ProblemNote } from '../parts/ProblemNote';
import { readGiven } from '../sent/read-given';
import { useFocusWhen } from '../use-focus-when';
import { DatedOtherwise } from './DatedOtherwise';
import { EarlierLooks } from './EarlierLooks';
import { JudgedLook } from './JudgedLook';
import { NoteField } from './NoteField';
import { OtherNotes } from './OtherNotes';
import { SamePhotos } from './SamePhotos';
import { StatusChoice } from './StatusChoice';
import type { WatchState } from './use-watch-list';

interface Props {
  id: string;
  /** The case's row in the list; the record is read again when it changes. */
  row: WatchRow | null;
  act: WatchState['act'];
  look: WatchState['look'];
  onRemove: (record: WatchRecord) => void;
}

/** One saved case, opened in the place of the list: what the buyer wrote, and everything that was found. */
export function CasePage({ id, row, act, look, onRemove }: Props) {
  const [broken] = useErrorBoundary();
  const [read, setRead] = useState<Result<SavedCase> | null>(null);
  const changedAt = row?.state === 'readable' ? row.changedAt : null;
  useEffect(() => {
    let current = true;
    look((list) => list.get(id)).then((result) => current && setRead(result));
    return () => {
      current = false;
    };
  }, [id, changedAt, look]);
  // The page has taken the list's place: who reads by ear or moves by keys goes on at its title.
  const heading = useFocusWhen<HTMLHeadingElement>(read !== null);
  const limit = useMessageLimit(read?.ok ? read.value.record.shown.address : null);
  const saveNote = useCallback(
    async (note: string, begunWith: string) => {
      const saved = await act((list) => list.setNote(id, note, begunWith));
      return saved?.ok ? saved.value : null;
    },
    [act, id],
  );
  const reader = useMemo(connectReader, []);
  const addSent = useCallback(
    async (given: readonly GivenPhoto[]) => {
      const brought = await readGiven(given, reader);
      await act((list) => list.addSent(id, brought));
    },
    [act, id, reader],
  );
  const openFile = useCallback(
    async (name: string) => {
      const file = await look((list) => list.file(name));
      return file?.ok ? file.value : null;
    },
    [look],
  );
  if (read === null) return null;
  const back = <a href={`#watch&row=${encodeURIComponent(id)}`}>{strings.watch.back}</a>;
  const shown = broken ? fail(notShown) : read;
  if (!shown.ok) {
    return (
      <>
        <p>{back}</p>
        <ProblemNote problem={shown.problem} />
      </>
    );
  }
  const saved = shown.value;
  const { record } = saved;
  const { title } = record;
  const { address, price } = record.shown;
  const [latest] = saved.looks;
  const kase = caseOf(saved);
  const face = latest?.state === 'readable' && latest.pictures.find(({ lineId }) => lineId === null);
  const link = webLink(address);
  const facts = [price && priceWords(price), strings.watch.saved(dayWords(record.savedAt))];
  return (
    <article class="case-page" data-case={id} aria-label={title}>
      <p>{back}</p>
      <header class="case-head">
        <div class="case-face">{face && <img src={face.picture} alt="" />}</div>
        <div class="case-words">
          <h2 tabIndex={-1} ref={heading}>
            {title}
          </h2>
          <p class="muted">{facts.filter(Boolean).join(' · ')}</p>
        </div>
      </header>
      <div class="case-actions">
        <StatusChoice
          status={record.status}
          title={title}
          onStatus={(status) => act((list) => list.setStatus(id, status))}
        />
        {link && (
          <a href={link} target="_blank" rel="noreferrer noopener">
            {strings.watch.page}
          </a>
        )}
        <a href={`#dossier=${encodeURIComponent(id)}`}>{strings.dossier.open}</a>
        <button type="button" class="small" onClick={() => onRemove(record)}>
          {strings.watch.remove}
        </button>
      </div>
      <NoteField note={record.note} onNote={saveNote} />
      <OtherNotes
        notes={record.otherNotes}
        onSettle={(other, take) => act((list) => list.settleOtherNote(id, other, take))}
      />
      {kase && (
        <DatedOtherwise kase={kase} dated={record.dated} onDated={(dated) => act((list) => list.setDated(id, dated))} />
      )}
      <SamePhotos id={id} changedAt={record.changedAt} look={look} />
      <EarlierLooks saved={saved} openFile={openFile} />
      <JudgedLook
        saved={saved}
        at={0}
        asked={{ questions: record.asked, onAsked: (ids) => act((list) => list.setAsked(id, ids)) }}
        limit={limit}
        openFile={openFile}
        sending={{ add: addSent, remove: (photoId) => act((list) => list.removeSent(id, photoId)) }}
        onReply={async (text) => (await act((list) => list.addReply(id, text)))?.ok ?? false}
      />
    </article>
  );
}

/** A case from a file may hold what its form allows and no sentence can be made of: the page around it stands. */
const notShown = problem('case-not-shown', 'watch list');
