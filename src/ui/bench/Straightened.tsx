import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { type HandMark, type Quad, quadSize } from '../../photo';
import { straightening } from './straighten';
import type { Size } from './view';

/** A part of a photo; the whole where there is no mark. */
interface Part {
  photo: Size;
  mark: HandMark | null;
}

interface Props extends Part {
  file: string;
  /** Most CSS pixels across and down; less where there is no room. */
  most: Size;
  /** Stretched to the size of another part, where it is laid over it. */
  as?: Part | undefined;
  opacity?: number;
  label: string;
}

/** A part of a photo as its four corners straighten it, drawn by the browser alone: it follows a drag at once. */
export function Straightened({ file, photo, mark, most, as = { photo, mark }, opacity = 1, label }: Props) {
  const room = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(most.width);
  useLayoutEffect(() => {
    const element = room.current;
    if (!element) return;
    const watch = new ResizeObserver(() => setWidth(element.clientWidth));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  const box = boxOf(as, { ...most, width: Math.min(most.width, width || most.width) });
  const transform = straightening(quadOf({ photo, mark }), box);
  return (
    <div ref={room}>
      <div
        class="straightened"
        role="img"
        aria-label={label}
        style={{ width: `${box.width}px`, height: `${box.height}px`, opacity }}
      >
        {transform && <img src={file} alt="" width={photo.width} height={photo.height} style={{ transform }} />}
      </div>
    </div>
  );
}

/** How large a part is drawn: its sides as long to each other as in the photo on the average. */
function boxOf(part: Part, most: Size): Size {
  const { across, down } = quadSize(quadOf(part));
  const share = Math.min(most.width / Math.max(1, across), most.height / Math.max(1, down));
  return { width: Math.max(1, across * share), height: Math.max(1, down * share) };
}

const whole = [
  { x: 0, y: 0 },
  { x: 1, y: 0 },
  { x: 1, y: 1 },
  { x: 0, y: 1 },
];

const quadOf = ({ photo, mark }: Part): Quad =>
  (mark?.points ?? whole).map(({ x, y }) => ({ x: x * photo.width, y: y * photo.height })) as Quad;
