import { useState } from 'preact/hooks';
import { openFullPage } from '../../browser/compat';
import type { Listing } from '../../listing/types';
import { send } from '../../message/send';
import { strings } from '../../words';
import { LooseRoom } from '../start/LooseRoom';
import { useLoose } from '../start/use-loose';

/** A tab that shows a photo by itself: it is read without a listing, where it stands. */
export function ReadThisPhoto({ tabId, listing }: { tabId: number; listing: Listing }) {
  const [state, loose] = useLoose();
  const [maker, setMaker] = useState('');
  const [photo] = listing.photos;
  const begun = (state.listing?.photos.length ?? 0) > 0;
  if (!photo) return null;
  const read = () => loose.add([{ id: photo.id, bytes: () => send('photo.fetch', { tabId, photoId: photo.id }) }]);
  return begun ? (
    <LooseRoom state={state} loose={loose} maker={maker} onMaker={setMaker} />
  ) : (
    <button type="button" class="main" onClick={read}>
      {strings.start.readThis}
    </button>
  );
}

/** Where a photo is read that was saved out of what this tab shows. */
export const OtherPhoto = () => (
  <button type="button" onClick={() => openFullPage('#photo')}>
    {strings.start.otherPhoto}
  </button>
);
