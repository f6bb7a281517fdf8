import type { Case } from '../../case';
import { strings } from '../../words';
import { goToPart } from './Fold';

interface Props {
  kase: Case;
  /** Opens a maker file begun from this listing. */
  onStartFile: () => void;
  /** Opens the maker files, to bring one in. */
  onBringFile: () => void;
}

/** Where no maker's file speaks: the ways on, in the order of what most buyers can do. */
export function WaysOn({ kase, onStartFile, onBringFile }: Props) {
  const words = strings.waysOn;
  const maker = kase.listing.maker[0]?.value ?? '';
  return (
    <section class="ways-on" aria-labelledby="ways-on-title">
      <h3 id="ways-on-title">{words.title}</h3>
      <ul>
        {maker !== '' && (
          <li>
            <button type="button" onClick={onStartFile}>
              {words.start}
            </button>{' '}
            <span class="muted hint">{words.startHint}</span>
          </li>
        )}
        <li>
          <button type="button" onClick={onBringFile}>
            {words.bring}
          </button>{' '}
          <span class="muted hint">{words.bringHint}</span>
        </li>
        <li>
          <button
            type="button"
            onClick={({ currentTarget }) => {
              const room = currentTarget.closest('.case');
              goToPart(room, 'claims');
              const correct = room?.querySelector<HTMLDetailsElement>('.point-at-page');
              if (correct) correct.open = true;
              const field = correct?.querySelector('select');
              if (!field) return;
              field.value = 'maker';
              field.dispatchEvent(new Event('change', { bubbles: true }));
              field.focus();
            }}
          >
            {words.other}
          </button>{' '}
          <span class="muted hint">{words.otherHint(maker)}</span>
        </li>
      </ul>
    </section>
  );
}
