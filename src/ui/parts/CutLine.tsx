import { cutLine } from '../../case';
import type { PhotoRead } from '../../photo';
import type { Adjustment } from '../../photo/adjustment-types';
import { strings } from '../../words';

interface Props {
  read: PhotoRead;
  crop: Adjustment['crop'];
  onTakeIn: (crop: Adjustment['crop']) => void;
}

/** Says, before the part is read, that it cuts a line that was seen in the photo, and offers to take all of it in. */
export function CutLine({ read, crop, onTakeIn }: Props) {
  const cut = crop && cutLine(read, crop);
  return (
    <div role="status">
      {cut && (
        <p class="cut-line">
          {strings.photos.cuts(cut.text)}{' '}
          <button type="button" class="small" onClick={() => onTakeIn(cut.whole)}>
            {strings.photos.takeIn}
          </button>
        </p>
      )}
    </div>
  );
}
