import { useEffect, useState } from 'preact/hooks';
import { type PickField, pickFieldSchema } from '../../listing/pick-types';
import { sendToPage } from '../../message/send';
import type { Problem } from '../../problem';
import { pointAtField } from '../../reader/page/point-at-field';
import { dropPicks, siteOf, writePick } from '../../store/site-picks';
import { strings } from '../../words';
import { ProblemNote } from '../parts/ProblemNote';
import { useFocusKept } from '../use-focus-kept';
import { useFocusWhen } from '../use-focus-when';
import type { PanelState } from './state';

const words = strings.pick;

interface Props {
  tabId: number;
  state: PanelState;
  /** A field to begin with: it stands open at it, and takes the focus each time that it is asked for. */
  asked?: { field: PickField } | null;
  /** What was pointed at changes what the page says: read it again. */
  onChanged: () => void;
}

/** Lets the user point at a field on the page. The choice is remembered for the site, shown as such, and can be undone. */
export function PointAtPage({ tabId, state: { listing, incognito, picks }, asked = null, onChanged }: Props) {
  const [field, setField] = useState<PickField>('price');
  const room = useFocusKept<HTMLDetailsElement>();
  const choice = useFocusWhen<HTMLSelectElement>(asked);
  useEffect(() => {
    if (asked !== null) setField(asked.field);
  }, [asked]);
  const [outcome, setOutcome] = useState<'none' | 'waiting' | 'nothing' | Problem>('none');
  if (!listing) return null;
  const site = siteOf(listing.url);
  const point = async () => {
    setOutcome('waiting');
    const picked = await pointAtField(tabId, field, words.invite(words.fields[field]));
    if (!picked.ok) return setOutcome(picked.problem);
    if (picked.value === null) return setOutcome('nothing');
    await writePick(site, incognito, picked.value);
    setOutcome('none');
    onChanged();
  };
  const forget = async (forgotten: PickField) => {
    await dropPicks(site, incognito, forgotten);
    onChanged();
  };
  return (
    <details class="quiet point-at-page" ref={room} open={picks.length > 0 || asked !== null}>
      <summary>{words.title}</summary>
      {picks.length > 0 && (
        <>
          <p>{words.kept}</p>
          <ul>
            {[...new Set(picks.map((pick) => pick.field))].map((kept) => (
              <li key={kept}>
                {words.fields[kept]}{' '}
                <button type="button" class="small" onClick={() => forget(kept)}>
                  {words.undo(words.fields[kept])}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      <div class="row">
        <label class="row">
          <span>{words.field}</span>
          <select
            ref={choice}
            value={field}
            onChange={({ currentTarget }) => setField(pickFieldSchema.parse(currentTarget.value))}
          >
            {pickFieldSchema.options.map((option) => (
              <option key={option} value={option}>
                {words.fields[option]}
              </option>
            ))}
          </select>
        </label>
        {outcome === 'waiting' ? (
          <button type="button" onClick={() => sendToPage(tabId, 'field.endPick', {})}>
            {words.end}
          </button>
        ) : (
          <button type="button" onClick={point}>
            {words.point}
          </button>
        )}
      </div>
      <div role="status">
        {outcome === 'waiting' && <p>{words.waiting}</p>}
        {outcome === 'nothing' && <p>{words.nothing}</p>}
        {typeof outcome === 'object' && <ProblemNote problem={outcome} />}
      </div>
    </details>
  );
}
