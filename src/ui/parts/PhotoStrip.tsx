import { type Case, tagsOf } from '../../case';
import { isCopy } from '../../check';
import type { PhotoView } from '../../message/protocol';
import { isTooWeakRead } from '../../photo';
import { strings } from '../../words';
import { copyWords } from '../copies';
import { RemoveSent } from '../sent/RemoveSent';
import { sentWords } from '../sent/sent-words';
import type { ByHand } from './by-hand';
import { tagByKey } from './PartTags';

interface Props {
  kase: Case;
  views: Record<string, PhotoView>;
  /** Ids of photos in which a line counts as a stamp. */
  stamped: Set<string>;
  byHand: ByHand;
  /** Takes a photo out that came another way than by the page. */
  onRemove: (id: string) => void;
  /** Whether a photo's bytes are at hand: of one that was kept only small pictures are. */
  here: (id: string) => boolean;
  onLook?: ((photoId: string) => void) | undefined;
}

/** All photos small, each saying whether it shows a stamp; one click looks at it by hand. */
export const PhotoStrip = ({ kase, views, stamped, byHand, here, onLook, onRemove }: Props) => (
  <ul class="photo-strip">
    {kase.listing.photos.map(({ id }, index) => {
      const view = views[id];
      const came = kase.sent?.find((one) => one.id === id);
      const tags = tagsOf(kase, id);
      const picture = view?.thumbnail ? <img src={view.thumbnail} alt={strings.photos.alone(index + 1)} /> : null;
      return (
        <li key={id}>
          {picture && onLook && here(id) ? (
            <button
              type="button"
              data-photo={id}
              aria-label={strings.photos.byHand(index + 1)}
              onClick={() => onLook(id)}
              onKeyDown={(event) => tagByKey(event, kase, id, byHand)}
            >
              {picture}
            </button>
          ) : (
            (picture ?? <span class="no-picture">{index + 1}</span>)
          )}
          <span class="photo-says">{photoSays(view, stamped.has(id))}</span>
          {copyWords(view?.read) && <span class="photo-says">{copyWords(view?.read)}</span>}
          {tags.length > 0 && (
            <span class="photo-says by-buyer">
              {strings.partTags.shows(tags.map(({ part }) => strings.partTags.name(part)))}
            </span>
          )}
          {came && (
            <>
              <span class="photo-says">{sentWords(came)}</span>
              <RemoveSent number={index + 1} onRemove={() => onRemove(id)} />
            </>
          )}
        </li>
      );
    })}
  </ul>
);

function photoSays(view: PhotoView | undefined, stamped: boolean): string {
  if (!view) return strings.photos.waiting;
  if (view.read.state === 'unread') return strings.photos.unread;
  if (stamped) return strings.photos.shows;
  if (isCopy(view.read)) return strings.photos.seesNone;
  return isTooWeakRead(view.read) ? strings.photos.tooWeak : strings.photos.showsNone;
}
