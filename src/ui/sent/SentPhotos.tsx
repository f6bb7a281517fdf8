import type { DossierSent } from '../../watch';
import { strings } from '../../words';
import { RemoveSent } from './RemoveSent';
import { sentWords } from './sent-words';

interface Props {
  sent: readonly DossierSent[];
  onRemove?: ((id: string) => void) | undefined;
}

/** Photos that came another way than by the page, each small, with where it came from and when. */
export const SentPhotos = ({ sent, onRemove }: Props) => (
  <ul class="photo-strip sent-photos">
    {sent.map(({ sent: photo, photo: number, picture }) => (
      <li key={photo.id}>
        {picture ? <img src={picture} alt={strings.photos.alone(number)} /> : <span class="no-picture">{number}</span>}
        <span class="photo-says">
          {strings.photos.alone(number)}: {sentWords(photo)}
        </span>
        {onRemove && <RemoveSent number={number} onRemove={() => onRemove(photo.id)} />}
      </li>
    ))}
  </ul>
);
