import { useRef } from 'preact/hooks';
import type { Point, Where } from '../../photo';
import { strings } from '../../words';
import { Drawing } from './Drawing';
import { type Held, heldAt, moveTo } from './move';
import { type PhotoOnScreen, plainly } from './on-screen';

interface Props {
  /** In shares of the picture's sides. */
  where: Where;
  /** What lies there. */
  label: string;
  /** What a hand makes of it; without, it is only drawn. */
  onMove?: ((where: Where) => void) | undefined;
  /** A drag has ended, or a key was let go: what was moved stays where it is. */
  onRest?: (() => void) | undefined;
  /** Brings a moved place back into its form; any is taken without. */
  keep?: (where: Where, held: Held) => Where;
  /** How the picture lies on the screen, where it does not fill the element that it shares with the overlay. */
  screen?: PhotoOnScreen;
  /** By which it is called; drawn beside it. */
  number?: number | undefined;
  /** Makes it the one that is moved. */
  onChoose?: (() => void) | undefined;
}

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
export function Overlay(props: Props) {
  const { where, label, onMove, onRest, keep = (moved) => moved, screen = plainly, number, onChoose } = props;
  const room = useRef<HTMLDivElement>(null);
  const drag = useRef<{ pointer: number; grip: Point; before: Where } | null>(null);
  const move = (held: Held, to: Point) => onMove?.(keep(moveTo(where, held, screen.toPhoto(to)), held));
  const pointed = ({ clientX, clientY }: PointerEvent): Point => {
    const box = room.current?.getBoundingClientRect();
    return box ? { x: (clientX - box.left) / box.width, y: (clientY - box.top) / box.height } : { x: 0, y: 0 };
  };
  const letGo = () => {
    if (drag.current) {
      onMove?.(drag.current.before);
      onRest?.();
    }
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
      const [at, finger] = [screen.toScreen(heldAt(where, held)), pointed(event)];
      drag.current = { pointer: event.pointerId, grip: { x: at.x - finger.x, y: at.y - finger.y }, before: where };
    },
    onPointerMove(event: PointerEvent) {
      if (drag.current?.pointer !== event.pointerId) return;
      const [finger, { grip }] = [pointed(event), drag.current];
      move(held, { x: finger.x + grip.x, y: finger.y + grip.y });
    },
    onPointerUp(event: PointerEvent) {
      if (drag.current?.pointer !== event.pointerId) return;
      drag.current = null;
      onRest?.();
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
      event.stopPropagation();
      const { across, down } = event.shiftKey ? screen.stride : screen.step;
      const at = screen.toScreen(heldAt(where, held));
      move(held, { x: at.x + way[0] * across, y: at.y + way[1] * down });
    },
    onKeyUp({ key }: KeyboardEvent) {
      if (ways[key]) onRest?.();
    },
  });
  const handles: Held[] = where.points.length > 1 ? ['whole', ...where.points.keys()] : [0];
  const shown: Where = { ...where, points: where.points.map(screen.toScreen) } as Where;
  const [first] = shown.points;
  return (
    <div class="overlay" ref={room}>
      <Drawing where={shown} label={onMove || onChoose ? null : label} />
      {number !== undefined && first && <Numbered number={number} at={first} label={label} onChoose={onChoose} />}
      {onMove &&
        handles.map((held) => {
          const { x, y } = heldAt(where, held);
          const at = screen.toScreen({ x, y });
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
              style={{ left: `${at.x * 100}%`, top: `${at.y * 100}%` }}
              {...handlersOf(held)}
            />
          );
        })}
    </div>
  );
}

interface NumberedProps {
  number: number;
  at: Point;
  label: string;
  onChoose: (() => void) | undefined;
}

/** Its number beside it; pressed, it is the one that is moved. */
function Numbered({ number, at: { x, y }, label, onChoose }: NumberedProps) {
  const style = { left: `${x * 100}%`, top: `${y * 100}%` };
  if (!onChoose)
    return (
      <span class="mark-number" aria-hidden="true" style={style}>
        {number}
      </span>
    );
  return (
    <button
      type="button"
      class="mark-number"
      style={style}
      aria-label={strings.bench.choose(label)}
      onPointerDown={(event) => event.stopPropagation()}
      onClick={onChoose}
    >
      {number}
    </button>
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
