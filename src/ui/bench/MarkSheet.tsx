import type { Case } from '../../case';
import type { HandMark } from '../../photo';
import { strings } from '../../words';
import { LettersBeside } from './LettersBeside';
import { Measures } from './Measures';
import { markWords } from './mark-words';
import { RulerLength } from './RulerLength';
import type { MeasuredMark } from './use-marks';

interface Props {
  kase: Case;
  one: MeasuredMark;
  isChosen: boolean;
  onChoose: () => void;
  onChange: (mark: HandMark) => void;
  onRemove: () => void;
}

/** One mark: what it is, what it lies on, and what was measured there. */
export function MarkSheet({ kase, one, isChosen, onChoose, onChange, onRemove }: Props) {
  const { mark, measured } = one;
  const words = markWords(mark);
  return (
    <li class={isChosen ? 'mark-sheet chosen' : 'mark-sheet'} data-mark={mark.number}>
      <div class="row">
        <button type="button" class="small" aria-pressed={isChosen} onClick={onChoose}>
          {words}
        </button>
        <button type="button" class="small" aria-label={strings.bench.removeNamed(words)} onClick={onRemove}>
          {strings.bench.remove}
        </button>
      </div>
      {measured === null ? (
        <p class="muted" role="status">
          {strings.bench.measuring}
        </p>
      ) : (
        <Measures measured={measured} />
      )}
      {isChosen && (
        <>
          <p class="muted hint">{strings.bench.hints[mark.kind]}</p>
          {mark.kind === 'ruler' && <RulerLength key={mark.number} mark={mark} onChange={onChange} />}
          {mark.kind !== 'white' && (
            <label class="field">
              <span>{mark.kind === 'lettering' ? strings.bench.characters : strings.bench.name}</span>
              <input
                type="text"
                maxLength={60}
                defaultValue={mark.name}
                onChange={({ currentTarget }) => onChange({ ...mark, name: currentTarget.value.trim() })}
              />
            </label>
          )}
          {mark.kind === 'lettering' && (
            <>
              <p class="muted hint">{strings.bench.letteringNote}</p>
              <LettersBeside kase={kase} one={one} />
            </>
          )}
        </>
      )}
    </li>
  );
}
