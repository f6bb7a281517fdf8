import type { Case } from '../../case';
import { strings } from '../../words';
import type { ByHand } from '../parts/by-hand';
import { Bench } from './Bench';
import { useOpened } from './opened';
import type { UseFileOf } from './SideBySide';

interface Props {
  kase: Case;
  photoId: string;
  /** The photo's address inside this document. */
  file: string;
  byHand: ByHand;
  useFileOf: UseFileOf;
}

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
