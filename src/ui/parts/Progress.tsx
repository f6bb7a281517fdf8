import { useEffect, useRef, useState } from 'preact/hooks';
import type { Copies } from '../../words';
import { strings } from '../../words';
import { isBusy, type Stage } from '../panel/state';
import { useFocusKept } from '../use-focus-kept';

interface Props {
  stage: Stage;
  copies: Copies;
  onStop: () => void;
  onGoOn: () => void;
  onAgain: () => void;
}

/** Where the reading stands, in words and as a bar, with the button that stops it or goes on. */
export function Progress({ stage, copies, onStop, onGoOn, onAgain }: Props) {
  const words = stageWords(stage, copies);
  const room = useFocusKept<HTMLDivElement>();
  return (
    <div class="progress" ref={room}>
      <p class="progress-line" data-stage={stage.kind}>
        {words}
      </p>
      <Announced words={words} />
      {stage.kind === 'photos' && <progress max={stage.of} value={stage.done} aria-label={words} />}
      <div class="row progress-actions">
        {isBusy(stage) ? (
          <button type="button" class="small" onClick={onStop} disabled={stage.kind === 'opening'}>
            {strings.stage.stop}
          </button>
        ) : (
          <>
            {stage.kind === 'stopped' && stage.read < stage.of && (
              <button type="button" class="small" onClick={onGoOn}>
                {strings.stage.goOn}
              </button>
            )}
            <button type="button" class="small" onClick={onAgain}>
              {strings.stage.again}
            </button>
          </>
        )}
      </div>
    </div>
  );
}

export function stageWords(stage: Stage, copies: Copies): string {
  switch (stage.kind) {
    case 'opening':
      return strings.stage.opening;
    case 'page':
      return strings.stage.page;
    case 'photos':
      return strings.stage.photos(stage.done, stage.of, stage.now);
    case 'stopped':
      return strings.stage.stopped(stage.read, stage.of);
    case 'done':
      return stage.read === stage.of
        ? strings.stage.done(stage.of, copies)
        : strings.stage.doneBut(stage.read, stage.of, copies, stage.late);
    default:
      return '';
  }
}

/** For screen readers only: at most one line a second, so that fast photos do not drown the voice. */
function Announced({ words }: { words: string }) {
  const [said, setSaid] = useState(words);
  const last = useRef(0);
  useEffect(() => {
    const wait = Math.max(0, last.current + 1000 - Date.now());
    const timer = setTimeout(() => {
      last.current = Date.now();
      setSaid(words);
    }, wait);
    return () => clearTimeout(timer);
  }, [words]);
  return (
    <p class="visually-hidden" role="status">
      {said}
    </p>
  );
}
