import { useRef } from 'preact/hooks';
import type { Point, Where } from '../../photo';
import { strings } from '../../words';
import { type Held, heldAt, moveTo } from './move';

interface Props {
  /** In shares of the picture's sides. */
  where: Where;
  /** What lies there. */
  label: string;
  /** What a hand makes of it; without, it is only drawn. */
  onMove?: ((where: Where) => void) | undefined;
  /** Brings a moved place back into its form; any is taken without. */
  keep?: (where: Where, held: Held) => Where;
}

/** Shares of the picture that a press of an arrow key goes, and that it goes with Shift. */
const step = 0.002;
const stride = 0.02;
const ways: Record<string, readonly [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/**
 * Whatever lies on a photo: a point, a line, a quad or a polygon, drawn over the picture whose element it shares. Each
 * point is a handle that mouse, finger and arrow keys move; one in the middle moves all. Escape lets go of a drag.
 */
export function Overlay({ where, label, onMove, keep = (moved) => moved }: Props) {
  const room = useRef<HTMLDivElement>(null);
  const drag = useRef<{ pointer: number; grip: Point; before: Where } | null>(null);
  const move = (held: Held, to: Point) => onMove?.(keep(moveTo(where, held, to), held));
  const pointed = ({ clientX, clientY }: PointerEvent): Point => {
    const box = room.current?.getBoundingClientRect();
    return box ? { x: (clientX - box.left) / box.width, y: (clientY - box.top) / box.height } : { x: 0, y: 0 };
  };
  const letGo = () => {
    if (drag.current) onMove?.(drag.current.before);
    drag.current = null;
  };
  const handlersOf = (held: Held) => ({
    onPointerDown(event: PointerEvent) {
      const handle = event.currentTarget as HTMLElement;
      // The press is the handle's own: the picture below would draw something new.
      event.preventDefault();
      event.stopPropagation();
      handle.focus();
      handle.setPointerCapture?.(event.pointerId);
      const [at, finger] = [heldAt(where, held), pointed(event)];
      drag.current = { pointer: event.pointerId, grip: { x: at.x - finger.x, y: at.y - finger.y }, before: where };
    },
    onPointerMove(event: PointerEvent) {
      if (drag.current?.pointer !== event.pointerId) return;
      const [finger, { grip }] = [pointed(event), drag.current];
      move(held, { x: finger.x + grip.x, y: finger.y + grip.y });
    },
    onPointerUp(event: PointerEvent) {
      if (drag.current?.pointer === event.pointerId) drag.current = null;
    },
    onPointerCancel: letGo,
    onKeyDown(event: KeyboardEvent) {
      if (event.key === 'Escape' && drag.current) {
        event.stopPropagation();
        return letGo();
      }
      const way = ways[event.key];
      if (!way || event.altKey || event.ctrlKey || event.metaKey) return;
      event.preventDefault();
      const far = event.shiftKey ? stride : step;
      const at = heldAt(where, held);
      move(held, { x: at.x + way[0] * far, y: at.y + way[1] * far });
    },
  });
  const handles: Held[] = where.points.length > 1 ? ['whole', ...where.points.keys()] : [0];
  return (
    <div class="overlay" ref={room}>
      <Drawing where={where} label={onMove ? null : label} />
      {onMove &&
        handles.map((held) => {
          const { x, y } = heldAt(where, held);
          return (
            <div
              key={held}
              class={held === 'whole' ? 'handle whole' : 'handle'}
              role="slider"
              tabIndex={0}
              aria-roledescription={strings.overlay.handle}
              aria-label={strings.overlay.named(label, nameOf(where, held))}
              aria-valuemin={0}
              aria-valuemax={100}
              aria-valuenow={Math.round(x * 100)}
              aria-valuetext={strings.overlay.at(tenths(x), tenths(y))}
              style={{ left: `${x * 100}%`, top: `${y * 100}%` }}
              {...handlersOf(held)}
            />
          );
        })}
    </div>
  );
}

/** Percent to one digit: what a press of an arrow key changes must be told. */
const tenths = (share: number): number => Math.round(share * 1000) / 10;

function nameOf({ form, points }: Where, held: Held): string {
  const words = strings.overlay;
  if (held === 'whole') return words.whole;
  if (form === 'point') return words.point;
  if (form === 'line') return held === 0 ? words.start : words.end;
  if (form === 'quad') return [words.topLeft, words.topRight, words.bottomRight, words.bottomLeft][held] ?? '';
  return words.corner(held + 1, points.length);
}

/** Two lines, a dark one under a light one, are seen on any ground. */
function Drawing({ where: { points }, label }: { where: Where; label: string | null }) {
  const [first] = points;
  const path = points.map(({ x, y }) => `${x * 100},${y * 100}`).join(' ');
  return (
    <svg
      viewBox="0 0 100 100"
      preserveAspectRatio="none"
      role="img"
      aria-label={label ?? ''}
      aria-hidden={label === null}
    >
      {['under', 'over'].map((name) =>
        points.length === 1 && first ? (
          <path key={name} class={`${name} dot`} d={`M ${first.x * 100} ${first.y * 100} h 0`} />
        ) : points.length === 2 ? (
          <polyline key={name} class={name} points={path} />
        ) : (
          <polygon key={name} class={name} points={path} />
        ),
      )}
    </svg>
  );
}
