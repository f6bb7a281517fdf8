import { openFullPage } from '../../browser/compat';
import { changesSince } from '../../check';
import { strings } from '../../words';
import { dayWords } from '../day-words';
import { ProblemNote } from '../parts/ProblemNote';
import { isBusy, type PanelState } from './state';
import type { SavedCase } from './use-saved';

/** Saving, always in reach at the panel's end; what was saved before is said and opened from here. */
export function SaveBar({ state, saved }: { state: PanelState; saved: SavedCase }) {
  const { record, justSaved, problem } = saved;
  const { case: kase } = state;
  const isOutdated =
    record !== null &&
    !justSaved &&
    kase?.previous &&
    changesSince(kase.previous, kase.listing, kase.claims).length > 0;
  if (state.incognito) return <p class="save-bar muted">{strings.save.private}</p>;
  return (
    <div class="save-bar">
      {kase && (
        <button type="button" onClick={saved.save} disabled={isBusy(state.stage)}>
          {record ? strings.save.update : strings.save.save}
        </button>
      )}
      {record ? (
        <button type="button" onClick={() => openFullPage(`#case=${encodeURIComponent(record.id)}`)}>
          {strings.save.openCase}
        </button>
      ) : (
        <button type="button" onClick={() => openFullPage()}>
          {strings.save.open}
        </button>
      )}
      <p role="status" class="muted hint">
        {justSaved ? strings.save.savedNow : record ? strings.save.saved(dayWords(record.savedAt)) : ''}
        {isOutdated && ` ${strings.save.changed}`}
      </p>
      {problem && <ProblemNote problem={problem} />}
    </div>
  );
}
