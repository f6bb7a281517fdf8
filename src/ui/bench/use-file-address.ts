import { useEffect, useMemo, useState } from 'preact/hooks';
import { drawnAnew } from './as-shown';

/** An address inside this document for a photo's bytes, as long as they are shown; of a drawing where browsers show no such file. */
export function useFileAddress(photo: Blob | null): string | null {
  const [drawn, setDrawn] = useState<{ of: Blob; as: Blob } | null>(null);
  const shown = photo !== null && drawn?.of === photo ? drawn.as : photo;
  const file = useMemo(() => (shown ? URL.createObjectURL(shown) : null), [shown]);
  useEffect(() => () => (file ? URL.revokeObjectURL(file) : undefined), [file]);
  useEffect(() => {
    let isAsked = true;
    const keep = (as: Blob | null) => {
      if (isAsked && photo !== null && as !== null) setDrawn({ of: photo, as });
    };
    // What cannot be drawn is shown as it is, which the browser says with its own sign.
    if (photo !== null) drawnAnew(photo).then(keep, () => {});
    return () => {
      isAsked = false;
    };
  }, [photo]);
  return file;
}
