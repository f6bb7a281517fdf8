import type { DossierSent } from '../../watch';
import { strings } from '../../words';
import { RemoveSent } from './RemoveSent';
import { sentWords } from './sent-words';

interface Props {
  sent: readonly DossierSent[];
  onRemove?: ((id: string) => void) | undefined;
  /** Opens one at its own size; those that are kept whole can be. */
  onOpen?: ((id: string) => void) | undefined;
  whole?: ReadonlySet<string>;
}

/** Photos that came another way than by the page, each small, with where it came from and when. */
export const SentPhotos = ({ sent, onRemove, onOpen, whole }: Props) => (
  <ul class="photo-strip sent-photos">
    {sent.map(({ sent: photo, photo: number, picture }) => (
      <li key={photo.id}>
        {onOpen && whole?.has(photo.id) ? (
          <button
            type="button"
            data-photo={photo.id}
            aria-label={strings.sent.open(number)}
            onClick={() => onOpen(photo.id)}
          >
            <Small picture={picture} number={number} />
          </button>
        ) : (
          <Small picture={picture} number={number} />
        )}
        <span class="photo-says">
          {strings.photos.alone(number)}: {sentWords(photo)}
        </span>
        {onRemove && <RemoveSent number={number} onRemove={() => onRemove(photo.id)} />}
      </li>
    ))}
  </ul>
);

const Small = ({ picture, number }: { picture: string | null; number: number }) =>
  picture ? <img src={picture} alt={strings.photos.alone(number)} /> : <span class="no-picture">{number}</span>;
