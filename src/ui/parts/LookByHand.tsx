import { useEffect, useRef, useState } from 'preact/hooks';
import { type Case, correctedRead, marksOnPhoto } from '../../case';
import type { PhotoView } from '../../message/protocol';
import { type PhotoRead, scaledWhere, seenIn } from '../../photo';
import type { Adjustment } from '../../photo/adjustment-types';
import { noAdjustment } from '../../photo/adjustment-types';
import type { Result } from '../../problem';
import { strings } from '../../words';
import { cropAround, keepRectangle, quadOf } from '../overlay/move';
import { Overlay } from '../overlay/Overlay';
import { nameOfSeen } from '../seen-words';
import { useFocusWhen } from '../use-focus-when';
import type { ByHand } from './by-hand';
import { CutLine } from './CutLine';
import { drawAdjusted } from './draw-adjusted';
import { MarkDrawings, MeasuredHere } from './MarkedPhoto';
import { PartTags, tagByKey } from './PartTags';
import { ProblemNote } from './ProblemNote';
import { type Placing, SeenInPhoto } from './SeenInPhoto';

interface Props {
  file: string;
  number: number;
  /** As the photo was looked at last. */
  start: Adjustment;
  kase: Case;
  photoId: string;
  byHand: ByHand;
  onRead: (adjustment: Adjustment) => Promise<Result<PhotoView> | null>;
  onClose: () => void;
  onMeasure: () => void;
}

/** A press that hardly moves is no new part. */
const leastDrag = 0.02;

/** One photo large: turned, inverted, cut by its handles or by dragging, and read again. It takes the focus when it opens. */
export function LookByHand({ file, number, start, kase, photoId, byHand, onRead, onClose, onMeasure }: Props) {
  const [placing, setPlacing] = useState<Placing | null>(null);
  const seen = correctedRead(kase, photoId);
  const marks = marksOnPhoto(kase, photoId);
  const [adjustment, setAdjustment] = useState<Adjustment>(start);
  const [result, setResult] = useState<Result<PhotoView> | 'reading' | null>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const heading = useFocusWhen<HTMLHeadingElement>(true);
  const dragFrom = useRef<{ x: number; y: number } | null>(null);

  useEffect(() => {
    const ended = new AbortController();
    if (canvas.current) drawAdjusted(canvas.current, file, adjustment, ended.signal);
    return () => ended.abort();
  }, [file, adjustment]);

  const setCrop = (crop: Adjustment['crop']) => setAdjustment((one) => ({ ...one, crop }));
  const pointed = (event: PointerEvent) => {
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
    const share = (at: number, from: number, length: number) => Math.min(1, Math.max(0, (at - from) / length));
    return { x: share(event.clientX, box.left, box.width), y: share(event.clientY, box.top, box.height) };
  };
  const dragged = (event: PointerEvent) => {
    const [from, to] = [dragFrom.current, pointed(event)];
    if (!from || Math.abs(from.x - to.x) < leastDrag || Math.abs(from.y - to.y) < leastDrag) return;
    setCrop(cropAround({ form: 'line', points: [from, to] }));
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
      onKeyDown={(event) => {
        if (tagByKey(event, kase, photoId, byHand) || event.key !== 'Escape') return;
        if (placing) setPlacing(null);
        else onClose();
      }}
    >
      <h3 id="by-hand-title" ref={heading} tabIndex={-1}>
        {strings.photos.byHand(number)}
      </h3>
      <div class="on-photo">
        <canvas
          ref={canvas}
          role="img"
          aria-label={strings.photos.alone(number)}
          onPointerDown={(event) => {
            if (placing) return;
            dragFrom.current = pointed(event);
            (event.currentTarget as HTMLElement).setPointerCapture?.(event.pointerId);
          }}
          onPointerMove={dragged}
          onPointerUp={() => {
            dragFrom.current = null;
          }}
        />
        {seen && <Places read={seen} />}
        <MarkDrawings marks={marks} />
        {placing ? (
          <Overlay
            where={placing.where}
            label={nameOfSeen(placing.what)}
            onMove={(where) => setPlacing({ ...placing, where })}
          />
        ) : (
          <Overlay
            where={quadOf(adjustment.crop ?? [0, 0, 1, 1])}
            label={strings.photos.zone}
            keep={keepRectangle}
            onMove={(where) => setCrop(cropAround(where))}
          />
        )}
      </div>
      <p class="muted hint">{strings.overlay.hint}</p>
      {seen && <CutLine read={seen} crop={adjustment.crop} onTakeIn={setCrop} />}
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
        <button type="button" onClick={onMeasure}>
          {strings.bench.open}
        </button>
        <button type="button" onClick={onClose}>
          {strings.photos.close}
        </button>
      </div>
      <PartTags kase={kase} photoId={photoId} byHand={byHand} />
      <MeasuredHere marks={marks} />
      {seen && (
        <SeenInPhoto kase={kase} photoId={photoId} read={seen} byHand={byHand} placing={placing} onPlace={setPlacing} />
      )}
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
  const texts = seenIn(read, 'stamp-line').map(({ value }) => String(value));
  return (
    <p>
      {strings.photos.found(texts.length)} <span class="code">{texts.join(' · ')}</span>
    </p>
  );
}

/** Where lies what was seen in the photo. */
function Places({ read }: { read: PhotoRead }) {
  if (read.state === 'unread') return null;
  return (
    <>
      {read.observations.map(
        ({ id, what, value, where }) =>
          where && (
            <Overlay
              key={id}
              where={scaledWhere(where, 1 / read.width, 1 / read.height)}
              label={what === 'stamp-line' ? strings.photos.lineAt(String(value)) : `${nameOfSeen(what)}: ${value}`}
            />
          ),
      )}
    </>
  );
}
