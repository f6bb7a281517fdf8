import { useState } from 'preact/hooks';
import type { Problem } from '../../problem';
import { strings } from '../../words';
import { saidProblem, sentence } from '../parts/ProblemNote';
import { openPasting, takeFromTab } from './maker-file-ways';

const words = strings.take;

/** On a page that offers nothing: what it tells of a maker, opened in the full page to be ticked. */
export function TakeThisPage({ tabId }: { tabId: number }) {
  const [state, setState] = useState<'idle' | 'reading' | 'nothing' | Problem>('idle');
  const take = async () => {
    setState('reading');
    setState((await takeFromTab(tabId)) ?? 'idle');
  };
  return (
    <div class="take-this">
      <button type="button" disabled={state === 'reading'} onClick={take}>
        {words.fromThis}
      </button>{' '}
      <span class="muted hint">{words.fromThisHint}</span>
      <p role="status">{saidOf(state)}</p>
    </div>
  );
}

/** Beside a document that cannot be read where it is: its text, copied and pasted, is read as a page; `told`: how is said already. */
export const PasteText = ({ told = false }: { told?: boolean }) => (
  <div class="take-this">
    <button type="button" onClick={openPasting}>
      {words.pasteText}
    </button>{' '}
    {!told && <span class="muted hint">{words.pasteTextHint}</span>}
  </div>
);

function saidOf(state: 'idle' | 'reading' | 'nothing' | Problem): string {
  if (state === 'idle') return '';
  if (state === 'reading') return words.reading;
  if (state === 'nothing') return words.nothing;
  const { what, remedy } = saidProblem(state);
  return `${sentence(what)} ${remedy}`;
}
