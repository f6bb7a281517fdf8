import { useCallback, useEffect } from 'preact/hooks';
import { strings } from '../../words';
import { numberOf } from '../number-of';
import { Notice } from '../parts/Notice';
import { useBorrowed } from './lending';
import { OpenedBench } from './OpenedBench';
import type { UseFileOf } from './SideBySide';
import { useFileAddress } from './use-file-address';

/** The bench in a tab of its own, for a photo of an open panel or page. */
export function BenchPage({ of }: { of: string }) {
  const borrowed = useBorrowed(of);
  const photo = 'photo' in borrowed ? borrowed.photo : null;
  const file = useFileAddress(photo);
  const desk = of.slice(0, of.indexOf('.'));
  const useFileOf = useCallback<UseFileOf>((other) => useLentFile(other === null ? null : `${desk}.${other}`), [desk]);
  const words = strings.bench;
  const title = 'photo' in borrowed ? words.title(numberOf(borrowed.kase, borrowed.photoId), '') : words.waiting;
  useEffect(() => {
    document.title = `${title} – ${strings.product}`;
  }, [title]);
  if (!('photo' in borrowed) || file === null) {
    return (
      <main class="bench-page">
        {borrowed.state === 'gone' ? (
          <Notice title={words.gone} text={words.goneText} strong />
        ) : (
          <p role="status">{words.waiting}</p>
        )}
      </main>
    );
  }
  const { kase, photoId, byHand } = borrowed;
  return (
    <main class="bench-page">
      <h1>{words.title(numberOf(kase, photoId), kase.listing.title[0]?.value ?? '')}</h1>
      {borrowed.state === 'lost' && <Notice text={words.lost} strong />}
      <OpenedBench kase={kase} photoId={photoId} file={file} byHand={byHand} useFileOf={useFileOf} />
    </main>
  );
}

/** Another photo of the same desk. */
function useLentFile(key: string | null): string | null {
  const lent = useBorrowed(key);
  return useFileAddress('photo' in lent ? lent.photo : null);
}
