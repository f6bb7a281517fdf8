import { useEffect, useState } from 'preact/hooks';
import type { Size } from './view';

type Opened = { state: 'opening' } | { state: 'failed' } | { state: 'open'; photo: Blob; size: Size };

/** A photo of this document, once the browser has it whole and knows its size. */
export function useOpened(file: string | null): Opened {
  const [opened, setOpened] = useState<Opened>({ state: 'opening' });
  useEffect(() => {
    if (file === null) return;
    let current = true;
    open(file).then(
      (photo) => current && setOpened({ state: 'open', ...photo }),
      () => current && setOpened({ state: 'failed' }),
    );
    return () => {
      current = false;
    };
  }, [file]);
  return opened;
}

async function open(file: string): Promise<{ photo: Blob; size: Size }> {
  const picture = new Image();
  picture.src = file;
  const [photo] = await Promise.all([fetch(file).then((answer) => answer.blob()), picture.decode()]);
  return { photo, size: { width: picture.naturalWidth, height: picture.naturalHeight } };
}
