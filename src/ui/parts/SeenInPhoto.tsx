import { useState } from 'preact/hooks';
import { type Case, type Correction, findMeant, type NewCorrection, nameWithin, photoMeant } from '../../case';
import { type Observation, type PhotoRead, scaledWhere, type Where } from '../../photo';
import { strings } from '../../words';
import { quadOf } from '../overlay/move';
import { nameOfSeen, valueWords } from '../seen-words';
import type { ByHand } from './by-hand';

type SeenCorrection = Extract<Correction, { of: 'seen' }>;
type MadeSeen = Extract<NewCorrection, { of: 'seen' }>;

/** What a hand is about to put somewhere on the photo; in shares of its sides. */
export interface Placing {
  what: string;
  value: Observation['value'];
  unit: Observation['unit'];
  target: MadeSeen['target'];
  where: Where;
}

interface Props {
  kase: Case;
  photoId: string;
  /** As it was read, with all that was set right. */
  read: PhotoRead;
  byHand: ByHand;
  placing: Placing | null;
  onPlace: (placing: Placing | null) => void;
}

const words = strings.observed;
/** Where what is new lies first: in the middle, large enough to be taken hold of. */
const middle = quadOf([0.35, 0.42, 0.65, 0.58]);
/** What a hand may add: a code as it stands there, and a shop's address. */
const addable = ['code', 'watermark'] as const;
/** What the file itself says can be measured again, and not be seen otherwise. */
const ofFile = new Set(['longer-side', 'shorter-side', 'hash']);

/** Everything that was seen or measured in a photo: each can be left out or put elsewhere, more can be added, and all undone. */
export function SeenInPhoto({ kase, photoId, read, byHand, placing, onPlace }: Props) {
  if (read.state === 'unread') return null;
  const photo = photoMeant(
    kase.listing,
    photoId,
    kase.photos.find((one) => one.photoId === photoId),
  );
  const correct = (target: MadeSeen['target'], to: MadeSeen['to']) =>
    photo && byHand.correct({ of: 'seen', photo, target, to });
  const own = kase.corrections.filter(
    (one): one is SeenCorrection =>
      one.of === 'seen' && one.photo !== null && findMeant(one.photo, kase.listing.photos, kase.photos) === photoId,
  );
  const madeBy = (seen: Observation) => own.find(({ id }) => nameWithin(photoId, seen) === `-${id}`);
  return (
    <details class="quiet">
      <summary>{words.title}</summary>
      <ul class="seen-in-photo">
        {read.observations.filter(isSeen).map((seen) => (
          <Row
            key={seen.id}
            seen={seen}
            onUndo={undoOf(madeBy(seen), byHand)}
            onLeaveOut={ofFile.has(seen.what) ? null : () => correct(targetOf(photoId, seen, madeBy(seen)), null)}
            onPlace={
              seen.where || typeof seen.value === 'string'
                ? seen.what === 'hash'
                  ? null
                  : () => onPlace(placingOf(read, seen, targetOf(photoId, seen, madeBy(seen))))
                : null
            }
          />
        ))}
        {own.map((one) => one.to === null && one.target && <Struck key={one.id} correction={one} byHand={byHand} />)}
      </ul>
      {placing ? (
        <div class="row">
          <button
            type="button"
            class="main"
            onClick={() => {
              const { what, value, unit, target, where } = placing;
              correct(target, { what, value, unit, where });
              onPlace(null);
            }}
          >
            {words.set}
          </button>
          <button type="button" onClick={() => onPlace(null)}>
            {words.cancel}
          </button>
        </div>
      ) : (
        <Add onPlace={onPlace} />
      )}
    </details>
  );
}

const undoOf = (made: SeenCorrection | undefined, { undo }: ByHand) => (made ? () => undo(made.id) : null);

/** What a correction of this is of: what was read at first, also where a hand has set it since. */
function targetOf(photoId: string, seen: Observation, made: SeenCorrection | undefined): MadeSeen['target'] {
  if (made) return made.target;
  return { name: nameWithin(photoId, seen), what: seen.what, was: seen.value };
}

function placingOf(
  { width, height }: Extract<PhotoRead, { state: 'read' }>,
  { what, value, unit, where }: Observation,
  target: MadeSeen['target'],
): Placing {
  return { what, value, unit, target, where: where ? scaledWhere(where, 1 / width, 1 / height) : middle };
}

/** Which parts a photo shows, and where else it stands, is said in places of their own. */
const isSeen = ({ what }: Observation) => what !== 'shows-part' && what !== 'likeness';

interface RowProps {
  seen: Observation;
  onUndo: (() => void) | null;
  onLeaveOut: (() => void) | null;
  onPlace: (() => void) | null;
}

function Row({ seen, onUndo, onLeaveOut, onPlace }: RowProps) {
  const value = valueWords(seen);
  const named = `${nameOfSeen(seen.what)}: ${value}`;
  return (
    <li>
      <span>
        {nameOfSeen(seen.what)}: <strong>{value}</strong>
        {seen.by === 'hand' && <span class="muted"> {words.byHand}</span>}
      </span>
      {onPlace && (
        <button type="button" class="small" aria-label={words.placeNamed(named)} onClick={onPlace}>
          {words.place}
        </button>
      )}
      {onUndo ? (
        <button type="button" class="small" aria-label={strings.byHand.undoNamed(named)} onClick={onUndo}>
          {strings.byHand.undo}
        </button>
      ) : (
        onLeaveOut && (
          <button type="button" class="small" aria-label={strings.byHand.leaveOutNamed(named)} onClick={onLeaveOut}>
            {strings.byHand.leaveOut}
          </button>
        )
      )}
    </li>
  );
}

/** What the buyer left out of this photo stands there struck, until it is taken back. */
function Struck({ correction: { id, target }, byHand }: { correction: SeenCorrection; byHand: ByHand }) {
  const named = nameOfSeen(target?.what ?? '');
  return (
    <li>
      <span class="muted">
        <s>{typeof target?.was === 'string' ? `${named}: ${target.was}` : named}</s> {words.leftOut}
      </span>
      <button type="button" class="small" aria-label={strings.byHand.undoNamed(named)} onClick={() => byHand.undo(id)}>
        {strings.byHand.undo}
      </button>
    </li>
  );
}

function Add({ onPlace }: { onPlace: (placing: Placing) => void }) {
  const [what, setWhat] = useState<(typeof addable)[number]>('code');
  const [value, setValue] = useState('');
  return (
    <form
      class="row"
      onSubmit={(event) => {
        event.preventDefault();
        if (value.trim() === '') return;
        onPlace({ what, value: value.trim().slice(0, 200), unit: null, target: null, where: middle });
        setValue('');
      }}
    >
      <label class="field">
        <span>{words.add}</span>
        <select value={what} onChange={({ currentTarget }) => setWhat(currentTarget.value as typeof what)}>
          {addable.map((one) => (
            <option key={one} value={one}>
              {nameOfSeen(one)}
            </option>
          ))}
        </select>
      </label>
      <label class="field">
        <span>{words.reads}</span>
        <input type="text" value={value} onInput={({ currentTarget }) => setValue(currentTarget.value)} />
      </label>
      <button type="submit">{words.placeOnPhoto}</button>
    </form>
  );
}
