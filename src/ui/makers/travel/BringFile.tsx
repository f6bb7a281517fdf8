import { useRef, useState } from 'preact/hooks';
import { hostPatterns, requestHosts } from '../../../browser/permissions';
import type { Problem } from '../../../problem';
import { filePorts, notAllowed } from '../../../reader/file/browser-ports';
import { fileAddress } from '../../../reader/file/file-address';
import { type FileAt, readFileAt } from '../../../reader/file/read-file';
import { strings } from '../../../words';
import { ProblemNote, saidProblem } from '../../parts/ProblemNote';
import { FetchedFile } from './FetchedFile';

const words = strings.travel;

interface Props {
  onText: (text: string) => void;
  onFetched: (fetched: FileAt, daily: boolean) => void;
}

/** Brings a maker file in as its pasted text, or from an address that the buyer names. */
export function BringFile({ onText, onFetched }: Props) {
  const [text, setText] = useState('');
  const [typed, setTyped] = useState('');
  const [asking, setAsking] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [fetched, setFetched] = useState<FileAt | null>(null);
  const field = useRef<HTMLInputElement>(null);
  const fetchFile = async () => {
    setFetched(null);
    const address = fileAddress(typed);
    if (!address.ok) return setProblems([address.problem]);
    setProblems([]);
    setAsking(true);
    // Asked before anything is waited for: the browser takes the question from a click alone.
    const allowed = await requestHosts(hostPatterns([address.value])).catch(() => false);
    const read = allowed
      ? await readFileAt(address.value, filePorts)
      : { ok: false as const, problems: [notAllowed(address.value)] };
    setAsking(false);
    if (read.ok) setFetched(read.value);
    else setProblems(read.problems.slice(0, 5));
  };
  const leave = () => {
    setFetched(null);
    field.current?.focus();
  };
  return (
    <details class="bring-file">
      <summary>{words.more}</summary>
      <form
        class="field"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          fetchFile();
        }}
      >
        <label class="field-label" for="file-address">
          {words.address}
        </label>
        <div class="row">
          <input
            id="file-address"
            ref={field}
            type="url"
            class="spread"
            placeholder="https://"
            aria-describedby="file-address-how"
            value={typed}
            onInput={({ currentTarget }) => setTyped(currentTarget.value)}
          />
          <button type="submit" disabled={asking || typed.trim() === ''}>
            {words.fetch}
          </button>
        </div>
        <p class="muted hint" id="file-address-how">
          {words.addressHow}
        </p>
      </form>
      <p role="status">{asking ? words.asking : ''}</p>
      <div role="alert">
        {problems.map((problem) => (
          <ProblemNote key={problem.where + saidProblem(problem).what} problem={problem} />
        ))}
      </div>
      {fetched && (
        <FetchedFile
          fetched={fetched}
          onLeave={leave}
          onUse={(daily) => {
            setFetched(null);
            onFetched(fetched, daily);
          }}
        />
      )}
      <label class="field-label">
        {words.paste}
        <textarea rows={4} value={text} onInput={({ currentTarget }) => setText(currentTarget.value)} />
      </label>
      <button
        type="button"
        disabled={text.trim() === ''}
        onClick={() => {
          onText(text);
          setText('');
        }}
      >
        {words.openText}
      </button>
    </details>
  );
}
