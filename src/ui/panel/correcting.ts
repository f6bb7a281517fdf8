import {
  adjustmentOf,
  correct,
  findMeant,
  type NewCorrection,
  type PhotoMeant,
  photoMeant,
  typedCode,
  undo,
} from '../../case';
import type { PhotoView } from '../../message/protocol';
import { type Adjustment, noAdjustment } from '../../photo/adjustment-types';
import type { Result } from '../../problem';
import type { PanelState } from './state';

interface Desk {
  state(): PanelState;
  /** Shows a change, with the case made anew. */
  recompute(part: Partial<PanelState>): void;
  /** Reads a photo that is at hand once more; null where it is not. */
  reread(photoId: string, adjustment: Adjustment): Promise<Result<PhotoView> | null>;
}

const readsOf = (views: PanelState['views']) => Object.values(views).map(({ read }) => read);

/** How the buyer wants a photo to be read; `seen` where it was read just now and tells itself by what it shows. */
export const wantedOf = (state: PanelState, id: string, seen?: PhotoView): Adjustment => {
  const { corrections, listing, views } = state;
  return adjustmentOf(corrections, id, listing?.photos ?? [], readsOf(seen ? { ...views, [id]: seen } : views));
};

/** What the buyer does to what was read and said: everything goes into the one list, and out of it again. */
export function correctingAt({ state, recompute, reread }: Desk) {
  const set = (made: NewCorrection): void => recompute({ corrections: correct(state().corrections, made) });
  const meant = (photoId: string): PhotoMeant | null => {
    const { listing, views } = state();
    return listing && photoMeant(listing, photoId, views[photoId]?.read);
  };

  return {
    /** Sets something right that was read or said, adds to it, or strikes it. */
    correct: set,

    typeCode(photoId: string | null, text: string): void {
      const code = text.trim().slice(0, 200);
      if (code !== '') set(typedCode(code, photoId === null ? null : meant(photoId)));
    },

    /** Reads one photo again as the buyer turned, inverted or cut it. */
    async readAgain(photoId: string, adjustment: Adjustment): Promise<Result<PhotoView> | null> {
      const view = await reread(photoId, adjustment);
      const photo = meant(photoId);
      if (view?.ok && view.value.read.state === 'read' && photo) set({ of: 'part', photo, to: adjustment });
      return view;
    },

    /** Takes one correction back; a part of a photo is then read whole again. */
    async undo(id: string): Promise<void> {
      const taken = state().corrections.find((one) => one.id === id);
      recompute({ corrections: undo(state().corrections, id) });
      const { listing, views } = state();
      if (taken?.of !== 'part' || !listing) return;
      const photoId = findMeant(taken.photo, listing.photos, readsOf(views));
      if (photoId !== null) await reread(photoId, noAdjustment);
    },
  };
}
