import { useEffect, useState } from 'preact/hooks';
import type { Case } from '../../case';
import { strings } from '../../words';
import type { ByHand } from '../parts/by-hand';
import { Bench } from './Bench';
import type { UseFileOf } from './SideBySide';
import type { Size } from './view';

interface Props {
  kase: Case;
  photoId: string;
  /** The photo's address inside this document. */
  file: string;
  byHand: ByHand;
  useFileOf: UseFileOf;
}

type Opened = { state: 'opening' } | { state: 'failed' } | { state: 'open'; photo: Blob; size: Size };

/** The bench, once the browser has the photo whole and knows its size. */
export function OpenedBench({ kase, photoId, file, byHand, useFileOf }: Props) {
  const opened = useOpened(file);
  if (opened.state === 'opening') return <p role="status">{strings.bench.waiting}</p>;
  if (opened.state === 'failed') return <p role="alert">{strings.bench.notShown}</p>;
  return (
    <Bench
      key={photoId}
      kase={kase}
      photoId={photoId}
      photo={opened.photo}
      file={file}
      size={opened.size}
      byHand={byHand}
      useFileOf={useFileOf}
    />
  );
}

function useOpened(file: string): Opened {
  const [opened, setOpened] = useState<Opened>({ state: 'opening' });
  useEffect(() => {
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
