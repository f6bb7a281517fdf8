import { useCallback, useEffect, useState } from 'preact/hooks';
import { strings } from '../../words';
import { useGivenPhotos, useOtherFiles } from '../start/given-files';
import { LooseRoom } from '../start/LooseRoom';
import { photoOfFile } from '../start/photo-of-file';
import { useLoose } from '../start/use-loose';
import { useFocusWhen } from '../use-focus-when';
import { bringFiles } from './maker-file-ways';

interface Props {
  /** Whether a case stands here, which takes photos as its own. */
  hasCase: boolean;
  incognito: boolean;
}

/** Files that are dropped on the panel, and photos that are pasted: read here, or opened among the maker files. */
export function GivenHere({ hasCase, incognito }: Props) {
  const [given, setGiven] = useState<readonly File[]>([]);
  const photos = useCallback((files: readonly File[]) => setGiven((before) => [...before, ...files]), []);
  const others = useCallback((files: readonly File[]) => void bringFiles(files, incognito), [incognito]);
  useGivenPhotos(photos, !hasCase);
  useOtherFiles(others);
  return given.length > 0 && !hasCase ? <GivenPhotos files={given} /> : null;
}

/** Photos by themselves, where the page offers no piece. */
function GivenPhotos({ files }: { files: readonly File[] }) {
  const [state, loose] = useLoose();
  const [maker, setMaker] = useState('');
  const [taken, setTaken] = useState(0);
  const heading = useFocusWhen<HTMLHeadingElement>(files);
  useEffect(() => {
    if (files.length === taken) return;
    loose.add(files.slice(taken).map(photoOfFile));
    setTaken(files.length);
  }, [files, taken, loose]);
  return (
    <section class="given-here" aria-labelledby="given-here-title">
      <h2 id="given-here-title" ref={heading} tabIndex={-1}>
        {strings.start.given}
      </h2>
      <LooseRoom state={state} loose={loose} maker={maker} onMaker={setMaker} />
    </section>
  );
}
