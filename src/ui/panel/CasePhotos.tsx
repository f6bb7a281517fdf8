import type { ComponentChildren, RefObject } from 'preact';
import { useState } from 'preact/hooks';
import { openFullPage } from '../../browser/compat';
import type { Case } from '../../case';
import { strings } from '../../words';
import { BenchHere } from '../bench/BenchHere';
import { useLending } from '../bench/lending';
import { useShownAddress } from '../bench/use-file-address';
import { numberOf } from '../number-of';
import type { ByHand } from '../parts/by-hand';
import { Fold, goToPart } from '../parts/Fold';
import { LookByHand } from '../parts/LookByHand';
import { PhotoNotes } from '../parts/PhotoNotes';
import { PhotoStrip } from '../parts/PhotoStrip';
import { wantedOf } from './correcting';
import type { Session } from './session';
import { isBusy, type PanelState } from './state';

/** Which photo is looked at by hand, in a screen that holds the photos of a session. */
export function useLookedAt(room: RefObject<HTMLElement | null>) {
  const [looked, setLooked] = useState<string | null>(null);
  const [isMeasured, setMeasured] = useState(false);
  const look = (photoId: string) => {
    setMeasured(false);
    setLooked(photoId);
  };
  return {
    looked,
    /** Whether it lies on the bench. */
    isMeasured,
    setMeasured,
    setLooked: look,
    look(photoId: string): void {
      goToPart(room.current, 'photos');
      look(photoId);
    },
    close(): void {
      // What was opened from the thumbnail leads back to it.
      room.current?.querySelector<HTMLElement>(`[data-photo="${looked}"]`)?.focus();
      setLooked(null);
    },
  };
}

interface Props {
  kase: Case;
  state: PanelState;
  session: Session;
  byHand: ByHand;
  looking: ReturnType<typeof useLookedAt>;
  open?: boolean;
  /** What brings more photos to the case, where the screen can. */
  adding?: ComponentChildren;
}

/** The photos of a session's case, and the one that is looked at by hand. */
export function CasePhotos({ kase, state, session, byHand, looking, open = isBusy(state.stage), adding }: Props) {
  const { views, files } = state;
  const { photos } = kase.listing;
  const { looked } = looking;
  const stamped = new Set(kase.decodings.flatMap(({ from }) => (from.kind === 'photo' ? [from.photoId] : [])));
  const file = useShownAddress(looked === null ? null : (files[looked] ?? null));
  const keyOf = useLending({ kase, files, byHand });
  if (photos.length === 0 && !adding) return null;
  return (
    <Fold part="photos" title={strings.photos.title} open={open}>
      <PhotoStrip
        kase={kase}
        views={views}
        stamped={stamped}
        byHand={byHand}
        here={(id) => files[id] !== undefined}
        onLook={looking.setLooked}
        onRemove={session.removeSent}
      />
      {photos.length > 0 && <p class="muted hint">{strings.partTags.stripKeys}</p>}
      {looked !== null && file !== null && looking.isMeasured && (
        <BenchHere
          key={looked}
          kase={kase}
          photoId={looked}
          file={file}
          files={files}
          byHand={byHand}
          // A tab of its own would be one of an ordinary window.
          onTab={state.incognito ? null : () => openFullPage(`#bench=${keyOf(looked)}`)}
          onBack={() => looking.setMeasured(false)}
        />
      )}
      {looked !== null && file !== null && !looking.isMeasured && (
        <LookByHand
          key={looked}
          file={file}
          number={numberOf(kase, looked)}
          start={wantedOf(state, looked)}
          kase={kase}
          photoId={looked}
          byHand={byHand}
          onRead={(adjustment) => session.readAgain(looked, adjustment)}
          onClose={looking.close}
          onMeasure={() => looking.setMeasured(true)}
        />
      )}
      <PhotoNotes kase={kase} />
      {adding}
    </Fold>
  );
}

/** What the buyer does to the case of a session. */
export const byHandOf = (session: Session): ByHand => ({
  type: (code) => session.typeCode(null, code),
  correct: session.correct,
  undo: session.undo,
});
