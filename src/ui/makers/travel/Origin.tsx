import { useState } from 'preact/hooks';
import { hostPatterns, requestHosts } from '../../../browser/permissions';
import { type Draft, draftOf, inspectDraft, type MakerFile } from '../../../maker';
import type { Problem } from '../../../problem';
import { lookAt, notAllowed } from '../../../reader/file/browser-ports';
import { updatedWith, waitingChanges, withoutUpdate } from '../../../reader/file/look';
import { type FileOrigin, removeOrigin, writeOrigin } from '../../../store/file-origins';
import { kit, strings } from '../../../words';
import { ProblemNote } from '../../parts/ProblemNote';
import { FileChanges } from './FileChanges';

const words = strings.travel;

interface Props {
  id: string;
  origin: FileOrigin;
  draft: Draft;
  onChange: (draft: Draft) => void;
}

/** Where a file is from: what changed there since, and the way back behind the last update. */
export function Origin({ id, origin, draft, onChange }: Props) {
  const [asking, setAsking] = useState(false);
  const [said, setSaid] = useState('');
  const [refused, setRefused] = useState<readonly Problem[]>([]);
  const { file } = inspectDraft(draft);
  const changes = file ? waitingChanges(origin, file) : [];
  const { address, used, daily, before, troubles } = origin;
  const begin = () => {
    setSaid('');
    setRefused([]);
  };
  const look = async () => {
    begin();
    setAsking(true);
    const allowed = await requestHosts(hostPatterns([address])).catch(() => false);
    if (allowed) await lookAt(id, origin);
    setAsking(false);
    if (allowed) setSaid(words.looked);
    else setRefused([notAllowed(address)]);
  };
  /** The own file as one step more, so that it can be taken back like any other. */
  const change = (own: MakerFile, what: string, next: FileOrigin) => {
    onChange({ ...draftOf(own), past: [...draft.past, { value: draft.value, what }] });
    writeOrigin(id, next);
  };
  const update = (wanted: ReadonlySet<string>, left: ReadonlySet<string>) => {
    begin();
    if (!file) return;
    const updated = updatedWith(origin, file, wanted, left);
    if (!updated.ok) return setRefused(updated.problems.slice(0, 5));
    change(updated.own, words.steps.update, updated.origin);
    setSaid(words.updated(wanted.size));
  };
  const undo = () => {
    begin();
    if (!file) return;
    const { own, origin: next, kept } = withoutUpdate(origin, file);
    change(own, words.steps.undoUpdate, next);
    setSaid(words.undone(kept));
  };
  return (
    <section class="notice origin" aria-labelledby="origin-title">
      <h3 id="origin-title">{words.originTitle}</h3>
      <p>{address}</p>
      <p class="muted hint">
        {words.usedOn(kit.day(used.at))} {words.sha256(used.sha256)}
      </p>
      <label class="tick">
        <input
          type="checkbox"
          checked={daily}
          onChange={({ currentTarget }) => writeOrigin(id, { ...origin, daily: currentTarget.checked })}
        />
        <span>{words.daily}</span>
      </label>
      <div class="row">
        <button type="button" disabled={asking} onClick={look}>
          {words.look}
        </button>
        {before && file && (
          <button type="button" onClick={undo}>
            {words.undoUpdate}
          </button>
        )}
        <button type="button" onClick={() => removeOrigin(id)}>
          {words.forget}
        </button>
      </div>
      <p role="status">
        {asking ? words.asking : [said, words.waiting(changes.length, kit.day(origin.asked))].join(' ').trim()}
      </p>
      <div role="alert">
        {[...troubles, ...refused].map((problem) => (
          <ProblemNote key={problem.code + problem.where} problem={problem} named={refused.includes(problem)} />
        ))}
        {origin.found && !file && <p class="problem">{words.unfinished}</p>}
      </div>
      {origin.found && changes.length > 0 && (
        <FileChanges key={origin.found.sha256} found={origin.found} changes={changes} onUse={update} />
      )}
    </section>
  );
}
