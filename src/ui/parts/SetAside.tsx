import { useState } from 'preact/hooks';
import { type Case, mostReasonCharacters, setAsideIn } from '../../case';
import type { Finding } from '../../check';
import { chosenLanguage, sayFinding, strings } from '../../words';
import { useFocusWhen } from '../use-focus-when';
import { Fold } from './Fold';

const words = strings.findings.aside;
const statementOf = (finding: Finding) => sayFinding(finding, chosenLanguage()).statement;

/** Sets a finding aside: asks why, in the buyer's own words, and takes no empty answer. */
export function SetAsideForm({
  finding,
  onAside,
}: {
  finding: Finding;
  onAside: (finding: Finding, reason: string) => void;
}) {
  const [asks, setAsks] = useState(false);
  const [reason, setReason] = useState('');
  const field = useFocusWhen<HTMLInputElement>(asks);
  if (!asks) {
    return (
      <button
        type="button"
        class="small"
        aria-label={words.actionOf(statementOf(finding))}
        onClick={() => setAsks(true)}
      >
        {words.action}
      </button>
    );
  }
  return (
    <form
      class="set-aside-form"
      onSubmit={(event) => {
        event.preventDefault();
        if (reason.trim() !== '') onAside(finding, reason);
      }}
      onKeyDown={({ key }) => {
        if (key === 'Escape') setAsks(false);
      }}
    >
      <label>
        {words.why}
        <input
          ref={field}
          type="text"
          maxLength={mostReasonCharacters}
          value={reason}
          onInput={({ currentTarget: { value } }) => setReason(value)}
        />
      </label>
      <div class="row">
        <button type="submit" class="small" disabled={reason.trim() === ''}>
          {words.done}
        </button>
        <button type="button" class="small" onClick={() => setAsks(false)}>
          {words.leave}
        </button>
      </div>
    </form>
  );
}

/** What the buyer set aside, each with the reason: kept, judged no more, and taken back where it stands. */
export function SetAside({ kase, onUndo }: { kase: Case; onUndo?: ((id: string) => void) | undefined }) {
  const aside = setAsideIn(kase);
  if (aside.length === 0) return null;
  return (
    <Fold part="set-aside" title={words.title}>
      <p class="muted hint">{words.note}</p>
      <ul class="set-aside">
        {aside.map(({ finding, correction }) => {
          const statement = statementOf(finding);
          return (
            <li key={correction.id} data-check={finding.check}>
              {statement} <q class="by-hand-words">{correction.reason}</q>{' '}
              {onUndo && (
                <button
                  type="button"
                  class="small"
                  aria-label={words.undoOf(statement)}
                  onClick={() => onUndo(correction.id)}
                >
                  {strings.byHand.undo}
                </button>
              )}
            </li>
          );
        })}
      </ul>
    </Fold>
  );
}
