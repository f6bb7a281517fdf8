import { useEffect, useState } from 'preact/hooks';
import type { SamePhotoElsewhere } from '../../watch';
import { strings } from '../../words';
import { dayWords } from '../day-words';
import type { WatchState } from './use-watch-list';

const words = strings.samePhotos;

/** Looks for the case's photos in the others, once it is shown. */
export function SamePhotos({ id, changedAt, look }: { id: string; changedAt: string; look: WatchState['look'] }) {
  const [found, setFound] = useState<readonly SamePhotoElsewhere[]>([]);
  useEffect(() => {
    let current = true;
    look((list) => list.samePhotos(id)).then((result) => current && result?.ok && setFound(result.value));
    return () => {
      current = false;
    };
  }, [id, changedAt, look]);
  return <FoundPhotos found={found} />;
}

/** The two side by side, as a fact with its ordinary reasons. */
export const FoundPhotos = ({ found }: { found: readonly SamePhotoElsewhere[] }) =>
  found.length === 0 ? null : (
    <section class="same-photos" aria-labelledby="same-photos-title">
      <h3 id="same-photos-title">{words.title}</h3>
      <ul>
        {found.map(({ id, title, own, earlier, other, mirrored, cut }) => (
          <li key={`${id} ${own.photo} ${own.readAt}`}>
            <a href={`#case=${encodeURIComponent(id)}`}>{title}</a>
            <div class="same-photos-pair">
              <Pictured picture={own.picture} says={ownSaid(own, earlier)} />
              <Pictured picture={other.picture} says={words.other(other.photo, dayWords(other.readAt))} />
            </div>
            {mirrored && <p class="muted">{words.mirrored}</p>}
            {cut && <p class="muted">{words.cut}</p>}
          </li>
        ))}
      </ul>
      <p class="muted hint">
        {strings.findings.innocent}: {words.why}
      </p>
    </section>
  );

const ownSaid = ({ photo, readAt }: SamePhotoElsewhere['own'], earlier: boolean): string =>
  earlier ? words.ownEarlier(photo, dayWords(readAt)) : words.own(photo);

const Pictured = ({ picture, says }: { picture: string | null; says: string }) => (
  <figure>
    {picture && <img src={picture} alt="" />}
    <figcaption class="muted">{says}</figcaption>
  </figure>
);
