import { useId, useRef, useState } from 'preact/hooks';
import { strings } from '../../words';
import { type DatedCase, rowOfKnown } from './dated-cases';
import type { Editing } from './editing';
import { type KnownRow, readKnownRows, rowRange, wholeProblem } from './known-codes';
import { LearnedLayouts, Outcome } from './LearnedLayouts';
import { type Search, useSearch } from './use-search';

const words = strings.makers.learn;

/** The rows with one more, unless it is there. */
const withRow = (text: string, row: string): string =>
  row === '' || text.split('\n').includes(row) ? text : [text.trimEnd(), row].filter(Boolean).join('\n');

/** Rows that are typed but not yet learned from outlive a reload, as everything in the editor does. */
function useKeptText(key: string, first: string) {
  const [text, setText] = useState(() => withRow(sessionStorage.getItem(key) ?? '', first));
  return [
    text,
    (next: string) => {
      sessionStorage.setItem(key, next);
      setText(next);
    },
  ] as const;
}

interface Props {
  edit: Editing;
  fileId: string;
  /** A row to begin with. */
  known: string;
  /** The user's kept cases of this maker whose dates something else settles. */
  cases: readonly DatedCase[];
}

/** The teacher: known codes go in, the layouts that explain them come out, and one of them into the draft. */
export function LearnSystem({ edit, fileId, known, cases }: Props) {
  const id = useId();
  const area = useRef<HTMLTextAreaElement>(null);
  const [text, setText] = useKeptText(`known-codes ${fileId}`, known);
  // Only at first: a panel that shut itself when its text is emptied would take the field from under the hands.
  const [openAtFirst] = useState(text !== '');
  const [refused, setRefused] = useState<string | null>(null);
  const { search, begin, change } = useSearch();
  const rows = readKnownRows(text);
  const write = (next: string) => {
    setRefused(null);
    setText(next);
    change();
  };
  const goTo = (row: number) => {
    area.current?.focus();
    area.current?.setSelectionRange(...rowRange(text, row));
  };
  const ask = () => {
    if (search.state === 'busy') return;
    const problem = wholeProblem(rows);
    setRefused(problem);
    if (problem !== null) {
      const faulty = rows.find((row) => row.problem !== null);
      return faulty ? goTo(faulty.row) : area.current?.focus();
    }
    const known = rows.flatMap((row) => (row.known ? [{ row: row.row, known: row.known }] : []));
    begin({ text, rows: known.map(({ row }) => row), examples: known.map((one) => one.known) });
  };
  return (
    <details class="learn" open={openAtFirst}>
      <summary>{words.title}</summary>
      {known !== '' && <p class="hint">{words.begun}</p>}
      <p id={`${id}-about`}>
        {words.about} <span class="muted">{words.dates}</span>
      </p>
      <div class="field">
        <label for={id}>{words.codes}</label>
        <textarea
          id={id}
          ref={area}
          class="code"
          rows={Math.min(14, Math.max(6, text.split('\n').length + 1))}
          value={text}
          placeholder={words.hint}
          spellcheck={false}
          autocapitalize="off"
          aria-describedby={`${id}-about ${id}-rows`}
          aria-invalid={rows.some(({ problem }) => problem !== null)}
          onInput={({ currentTarget }) => {
            write(currentTarget.value);
          }}
        />
      </div>
      {cases.length > 0 && (
        <button type="button" class="small" onClick={() => write(cases.map(rowOfKnown).reduce(withRow, text))}>
          {words.fromCases(cases.length)}
        </button>
      )}
      <Rows id={`${id}-rows`} rows={rows} onGoTo={goTo} />
      <div class="learn-ask">
        <button type="button" class="main" aria-disabled={search.state === 'busy'} onClick={ask}>
          {words.search}
        </button>
      </div>
      <div role="alert">{refused !== null && <p class="problem">{refused}</p>}</div>
      <div aria-busy={search.state === 'busy'}>
        {search.state === 'busy' && <progress aria-label={words.busy} />}
        <p role="status" class="hint">
          {search.state === 'busy' && words.busy}
          {search.state === 'ended' && words.ended}
          {search.state === 'done' && <Outcome asked={search.asked} learned={search.learned} />}
          {search.state === 'done' && search.asked.text !== text && <span class="learn-fault"> {words.stale}</span>}
        </p>
        <RanHere search={search} />
        {search.state === 'done' && <LearnedLayouts edit={edit} asked={search.asked} learned={search.learned} />}
      </div>
    </details>
  );
}

/** Where the browser gave no room for the search, with its reason: the page may be slow meanwhile. */
const RanHere = ({ search }: { search: Search }) =>
  (search.state === 'busy' || search.state === 'done') &&
  search.here !== null && <p class="hint muted">{words.ranHere(search.here)}</p>;

/** Beyond so many rows only the faulty ones are shown, so that they are not lost among the others. */
const mostShown = 12;

/** Each row as it is understood; a faulty one says why at its place and leads back to it. */
function Rows({ id, rows, onGoTo }: { id: string; rows: readonly KnownRow[]; onGoTo: (row: number) => void }) {
  const faulty = rows.filter(({ problem }) => problem !== null);
  const shown = rows.length > mostShown ? faulty : rows;
  return (
    <>
      <p id={id} role="status" class="hint muted">
        {rows.length > 0 && words.understood(rows.length - faulty.length)}
        {faulty.length > 0 && `, ${words.faulty(faulty.length)}`}
      </p>
      {shown.length > 0 && (
        <ul class="learn-rows" aria-label={words.readSo}>
          {shown.map((row) => (
            <li key={row.row}>
              <span class="muted">{words.row(row.row)}</span>{' '}
              {row.known ? (
                <>
                  <span class="code">{row.known.code}</span> {row.says}
                </>
              ) : (
                <>
                  <span class="code">{row.text}</span> <span class="learn-fault">{row.problem}</span>{' '}
                  <button type="button" class="small" onClick={() => onGoTo(row.row)}>
                    {words.goTo(row.row)}
                  </button>
                </>
              )}
            </li>
          ))}
        </ul>
      )}
    </>
  );
}
