import { useState } from 'preact/hooks';
import type { Change } from '../../../maker';
import type { FileVersion } from '../../../store/file-origins';
import { kit, strings } from '../../../words';
import { FieldSaid } from '../FieldSaid';
import { changeWords } from './change-words';
import { termsOf } from './FetchedFile';

const words = strings.travel;

interface Props {
  found: FileVersion;
  changes: readonly Change[];
  /** `left` are told again another time. */
  onUse: (used: ReadonlySet<string>, left: ReadonlySet<string>) => void;
}

/**
 * What changed at a file's address, entry by entry, before anything of it is used. Where the buyer changed the same, the
 * buyer's stays unless the other is chosen.
 */
export function FileChanges({ found, changes, onUse }: Props) {
  const [unticked, setUnticked] = useState<ReadonlySet<string>>(new Set());
  const [theirs, setTheirs] = useState<ReadonlySet<string>>(new Set());
  const plain = changes.filter(({ conflict }) => !conflict);
  const both = changes.filter(({ conflict }) => conflict);
  const left = new Set(plain.flatMap(({ id }) => (unticked.has(id) ? [id] : [])));
  const used = new Set(
    changes.flatMap(({ id, conflict }) => ((conflict ? theirs.has(id) : !unticked.has(id)) ? [id] : [])),
  );
  const flip = (set: ReadonlySet<string>, id: string, isIn: boolean): ReadonlySet<string> => {
    const next = new Set(set);
    if (isIn) next.add(id);
    else next.delete(id);
    return next;
  };
  return (
    <div class="file-changes">
      <h4>{words.changesTitle}</h4>
      <p class="muted hint">
        {words.foundOn(kit.day(found.at))} {words.sha256(found.sha256)} {termsOf(found.file)}
      </p>
      {both.map((change) => (
        <Conflicting
          key={change.id}
          change={change}
          isTheirs={theirs.has(change.id)}
          onChoose={(isTheirs) => setTheirs(flip(theirs, change.id, isTheirs))}
        />
      ))}
      {plain.length > 0 && (
        <fieldset class="conflict">
          <legend>{words.plain(plain.length)}</legend>
          {plain.length > 1 && (
            <div class="row">
              <button type="button" class="small" onClick={() => setUnticked(new Set())}>
                {words.tickAll}
              </button>
              <button type="button" class="small" onClick={() => setUnticked(new Set(plain.map(({ id }) => id)))}>
                {words.tickNone}
              </button>
            </div>
          )}
          {plain.map((change) => (
            <label class="tick" key={change.id} data-change={change.id}>
              <input
                type="checkbox"
                checked={!unticked.has(change.id)}
                onChange={({ currentTarget }) => setUnticked(flip(unticked, change.id, !currentTarget.checked))}
              />
              <Said change={change} />
            </label>
          ))}
        </fieldset>
      )}
      <div class="row">
        <button
          type="button"
          class="main"
          disabled={used.size === 0 && both.length === 0}
          onClick={() => onUse(used, left)}
        >
          {words.useChanges(used.size)}
        </button>
      </div>
      <p class="muted hint">{words.useHow}</p>
    </div>
  );
}

/** One change: the entry, what happened to it, and each field as it was and as it is. */
function Said({ change }: { change: Change }) {
  const { title, parts } = changeWords(change);
  return (
    <span>
      <strong>{title}</strong>: {words.kinds[change.kind]}
      {parts.map(({ label, old, now }) => (
        <span class="conflict-part" key={label}>
          {label !== null && <span class="muted">{label}: </span>}
          {old !== null && now !== null ? words.fromTo(old, now) : (now ?? old)}{' '}
        </span>
      ))}
    </span>
  );
}

/** An entry that both changed: whose stays. */
function Conflicting({
  change,
  isTheirs,
  onChoose,
}: {
  change: Change;
  isTheirs: boolean;
  onChoose: (isTheirs: boolean) => void;
}) {
  const { title, parts } = changeWords(change);
  const side = (of: 'own' | 'now') =>
    parts.map(({ label, ...sides }) => (
      <FieldSaid key={label} label={label} said={sides[of] ?? strings.makers.nothing} />
    ));
  return (
    <fieldset class="conflict" data-change={change.id}>
      <legend>{words.conflict(title)}</legend>
      <p class="muted hint">
        {words.before}{' '}
        {parts
          .map(({ label, old }) => `${label === null ? '' : `${label}: `}${old ?? strings.makers.nothing}`)
          .join('; ')}
      </p>
      {([false, true] as const).map((choice) => (
        <label class="tick" key={String(choice)}>
          <input type="radio" name={change.id} checked={isTheirs === choice} onChange={() => onChoose(choice)} />
          <span>
            {choice ? words.theirs(words.kinds[change.kind]) : strings.makers.mine}: {side(choice ? 'now' : 'own')}
          </span>
        </label>
      ))}
    </fieldset>
  );
}
