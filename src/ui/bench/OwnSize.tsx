import { useEffect, useRef, useState } from 'preact/hooks';
import { strings } from '../../words';
import { plainLight, ViewTools } from './BenchTools';
import { useOpened } from './opened';
import { PhotoStage } from './PhotoStage';
import { useFileAddress } from './use-file-address';
import { useStage } from './use-stage';
import type { Size } from './view';

/** One photo to look at, with the bench's ways to enlarge, move and turn it, and nothing to mark. */
export function OwnSize({ photo, number }: { photo: Blob; number: number }) {
  const file = useFileAddress(photo);
  const opened = useOpened(file);
  if (opened.state === 'opening' || file === null) return <p role="status">{strings.bench.waiting}</p>;
  if (opened.state === 'failed') return <p role="alert">{strings.bench.notShown}</p>;
  return <Shown file={file} size={opened.size} number={number} />;
}

function Shown({ file, size, number }: { file: string; size: Size; number: number }) {
  const room = useRef<HTMLElement>(null);
  const stage = useStage(room, size);
  const [light, setLight] = useState(plainLight);
  // The keyboard goes to the photo, which arrow keys move.
  useEffect(() => room.current?.focus(), []);
  return (
    <>
      <PhotoStage
        file={file}
        alt={strings.bench.photo(number)}
        photo={size}
        stage={stage}
        room={room}
        light={light}
        marks={[]}
        chosen={null}
        onChoose={() => undefined}
        onMove={() => undefined}
        onRest={() => undefined}
      />
      <ViewTools stage={stage} light={light} onLight={setLight} />
    </>
  );
}
