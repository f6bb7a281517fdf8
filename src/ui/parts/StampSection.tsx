import type { PhotoView } from '../../bridge/protocol';
import type { Case } from '../../case';
import { strings } from '../strings';
import { DecodingCard } from './DecodingCard';
import { TypeCode } from './TypeCode';

interface Props {
  kase: Case;
  pictureOfLine: (photoId: string, lineId: string) => string | null;
  onType?: ((code: string) => void) | undefined;
  onRemoveTyped?: ((code: string) => void) | undefined;
}

/** The heart: every code of the case, where it was seen, and what it says. */
export function StampSection({ kase, pictureOfLine, onType, onRemoveTyped }: Props) {
  const numberOf = (photoId: string) => kase.listing.photos.findIndex(({ id }) => id === photoId) + 1;
  const fromPhotos = kase.decodings.some(({ from }) => from.kind === 'photo');
  // Accepted codes first: an unclear line in another photo must not push the read one out of sight.
  const ordered = [...kase.decodings].sort((a, b) => Number(b.accepted) - Number(a.accepted));
  return (
    <section aria-labelledby="stamp-title">
      <h2 id="stamp-title">{strings.stamp.title}</h2>
      {!fromPhotos && <p class="muted">{kase.photos.length === 0 ? strings.stamp.waiting : strings.stamp.none}</p>}
      {ordered.map((decoding) => {
        const { from } = decoding;
        const photo = from.kind === 'photo' ? from : null;
        return (
          <DecodingCard
            key={decoding.id}
            decoding={decoding}
            picture={photo && pictureOfLine(photo.photoId, photo.lineId)}
            pictureLabel={photo ? strings.stamp.pictureOf(numberOf(photo.photoId)) : ''}
            where={
              photo
                ? strings.stamp.inPhoto(numberOf(photo.photoId))
                : from.kind === 'claim'
                  ? strings.stamp.inListing
                  : strings.stamp.typed
            }
            onRemove={from.kind === 'typed' && onRemoveTyped ? () => onRemoveTyped(decoding.code) : undefined}
          />
        );
      })}
      {onType && <TypeCode onType={onType} />}
      {kase.maker !== null && <p class="muted hint">{strings.makerFile(kase.maker)}</p>}
    </section>
  );
}

/** The cut-out of one line among what the reader gave. */
export const cropOf = (views: Record<string, PhotoView>) => (photoId: string, lineId: string) =>
  views[photoId]?.crops.find((crop) => crop.lineId === lineId)?.picture ?? null;
