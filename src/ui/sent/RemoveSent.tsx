import { strings } from '../../words';

/** Takes a photo out of the case that came another way than by the page. */
export const RemoveSent = ({ number, onRemove }: { number: number; onRemove: () => void }) => (
  <button type="button" class="small" aria-label={strings.sent.removeNumbered(number)} onClick={onRemove}>
    {strings.sent.remove}
  </button>
);
