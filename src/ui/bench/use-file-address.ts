import { useEffect, useMemo, useState } from 'preact/hooks';
import { drawnAnew } from '../../reader/drawn-anew';

/** An address inside this document for a photo's bytes, as long as they are shown; of a drawing where browsers show no such file. */
export function useFileAddress(photo: Blob | null): string | null {
  const [drawn, setDrawn] = useState<{ of: Blob; as: Blob } | null>(null);
  const shown = photo !== null && drawn?.of === photo ? drawn.as : photo;
  const file = useMemo(() => (shown ? URL.createObjectURL(shown) : null), [shown]);
  useEffect(() => () => (file ? URL.revokeObjectURL(file) : undefined), [file]);
  useEffect(() => {
    const ended = new AbortController();
    const keep = (as: Blob | null) => {
      if (!ended.signal.aborted && photo !== null && as !== null) setDrawn({ of: photo, as });
    };
    // What cannot be drawn is shown as it is, which the browser says with its own sign.
    if (photo !== null) drawnAnew(photo, ended.signal).then(keep, () => {});
    return () => ended.abort();
  }, [photo]);
  return file;
}
