import { useEffect, useRef, useState } from 'preact/hooks';
import type { PhotoView } from '../../message/protocol';
import { seenIn } from '../../photo';
import type { Adjustment } from '../../photo/adjustment-types';
import { noAdjustment } from '../../photo/adjustment-types';
import type { Result } from '../../problem';
import { strings } from '../../words';
import { drawAdjusted } from './draw-adjusted';
import { ProblemNote } from './ProblemNote';

interface Props {
  file: string;
  number: number;
  /** As the photo was looked at last. */
  start: Adjustment;
  onRead: (adjustment: Adjustment) => Promise<Result<PhotoView> | null>;
  onClose: () => void;
}

const edges = ['left', 'top', 'right', 'bottom'] as const;

/** One photo large: turned, inverted, cut by dragging or by four sliders, and read again. It takes the focus when it opens. */
export function LookByHand({ file, number, start, onRead, onClose }: Props) {
  const [adjustment, setAdjustment] = useState<Adjustment>(start);
  const [result, setResult] = useState<Result<PhotoView> | 'reading' | null>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const heading = useRef<HTMLHeadingElement>(null);
  const dragFrom = useRef<{ x: number; y: number } | null>(null);
  const crop = adjustment.crop ?? [0, 0, 1, 1];

  useEffect(() => heading.current?.focus(), []);
  useEffect(() => {
    const ended = new AbortController();
    if (canvas.current) drawAdjusted(canvas.current, file, adjustment, ended.signal);
    return () => ended.abort();
  }, [file, adjustment]);

  const setEdge = (index: number, share: number) => {
    const next = [...crop] as [number, number, number, number];
    next[index] = share;
    // The edges may not cross: at least a fiftieth of the photo stays.
    if (next[2] - next[0] >= 0.02 && next[3] - next[1] >= 0.02) setAdjustment({ ...adjustment, crop: next });
  };
  const pointed = (event: PointerEvent) => {
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
    return { x: (event.clientX - box.left) / box.width, y: (event.clientY - box.top) / box.height };
  };
  const dropped = (event: PointerEvent) => {
    const [from, to] = [dragFrom.current, pointed(event)];
    dragFrom.current = null;
    if (!from || Math.abs(from.x - to.x) < 0.03 || Math.abs(from.y - to.y) < 0.01) return;
    setAdjustment({
      ...adjustment,
      crop: [Math.min(from.x, to.x), Math.min(from.y, to.y), Math.max(from.x, to.x), Math.max(from.y, to.y)],
    });
  };
  const read = async () => {
    if (result === 'reading') return;
    setResult('reading');
    setResult(await onRead(adjustment));
  };

  return (
    <section
      class="by-hand"
      aria-labelledby="by-hand-title"
      onKeyDown={({ key }) => {
        if (key === 'Escape') onClose();
      }}
    >
      <h3 id="by-hand-title" ref={heading} tabIndex={-1}>
        {strings.photos.byHand(number)}
      </h3>
      <canvas
        ref={canvas}
        role="img"
        aria-label={strings.photos.alone(number)}
        onPointerDown={(event) => {
          dragFrom.current = pointed(event);
          (event.currentTarget as HTMLElement).setPointerCapture(event.pointerId);
        }}
        onPointerUp={dropped}
      />
      <fieldset>
        <legend>{strings.photos.zone}</legend>
        {edges.map((edge, index) => (
          <label key={edge}>
            <span>{strings.photos[edge]}</span>
            <input
              type="range"
              min={0}
              max={100}
              value={Math.round((crop[index] ?? 0) * 100)}
              onInput={(event) => setEdge(index, Number(event.currentTarget.value) / 100)}
            />
          </label>
        ))}
      </fieldset>
      <div class="row">
        <button
          type="button"
          onClick={() => setAdjustment({ ...adjustment, turn: ((adjustment.turn + 90) % 360) as Adjustment['turn'] })}
        >
          {strings.photos.turn}
        </button>
        <button
          type="button"
          aria-pressed={adjustment.invert}
          onClick={() => setAdjustment({ ...adjustment, invert: !adjustment.invert })}
        >
          {strings.photos.invert}
        </button>
        <button type="button" onClick={() => setAdjustment(noAdjustment)}>
          {strings.photos.whole}
        </button>
        {/* Not disabled: the focus would be lost while it reads. */}
        <button type="button" class="main" onClick={read} aria-disabled={result === 'reading'}>
          {strings.photos.read}
        </button>
        <button type="button" onClick={onClose}>
          {strings.photos.close}
        </button>
      </div>
      <div role="status">
        {result === 'reading' && <p class="muted">{strings.photos.reading}</p>}
        {result && result !== 'reading' && <Outcome result={result} />}
      </div>
    </section>
  );
}

function Outcome({ result }: { result: Result<PhotoView> }) {
  if (!result.ok) return <ProblemNote problem={result.problem} />;
  const { read } = result.value;
  if (read.state === 'unread') return <ProblemNote problem={read.problem} />;
  return <p>{strings.photos.found(seenIn(read, 'stamp-line').length)}</p>;
}
