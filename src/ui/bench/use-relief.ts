import { useEffect, useState } from 'preact/hooks';
import type { LightSide } from '../../photo';
import type { Problem } from '../../problem';
import { drawRelief } from '../../reader/relief';
import { useAddressOf } from './use-file-address';

/** As the photo is, its slow light taken out, or its slopes seen from a side. */
export type ReliefView = 'plain' | 'even' | LightSide;

export interface Relief {
  view: ReliefView;
  onView(view: ReliefView): void;
  /** Address of the picture to show in the photo's place; null while the photo itself is shown. */
  file: string | null;
  isDrawing: boolean;
  problem: Problem | null;
}

/** The relief view of a photo, worked out once for each side when it is first asked for. */
export function useRelief(photo: Blob): Relief {
  const [view, onView] = useState<ReliefView>('plain');
  const [drawn, setDrawn] = useState<ReadonlyMap<ReliefView, Blob>>(new Map());
  const [problem, setProblem] = useState<Problem | null>(null);
  const isKnown = view === 'plain' || drawn.has(view);
  useEffect(() => {
    setDrawn(new Map());
  }, [photo]);
  useEffect(() => {
    setProblem(null);
    if (view === 'plain' || isKnown) return;
    const ended = new AbortController();
    photo
      .arrayBuffer()
      .then((bytes) => drawRelief({ bytes, side: view === 'even' ? null : view }, ended.signal))
      .then((relief) => {
        if (relief === null || ended.signal.aborted) return;
        if (relief.ok) setDrawn((known) => new Map(known).set(view, relief.value));
        else setProblem(relief.problem);
      });
    return () => ended.abort();
  }, [photo, view, isKnown]);
  const file = useAddressOf(drawn.get(view) ?? null);
  return { view, onView, file, isDrawing: !isKnown && problem === null, problem };
}
