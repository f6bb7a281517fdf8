import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Point } from '../../photo';
import { fitting, holding, moved, type Size, type View } from './view';

/** One step of the wheel, of + and of −. */
const zoomStep = 1.25;
/** CSS pixels that an arrow key moves the photo. */
const keyStep = 40;

export interface Stage {
  view: View;
  size: Size;
  zoomBy(factor: number): void;
  ownSize(): void;
  whole(): void;
  turnTo(degrees: number): void;
  /** What the stage's element does with the hand. */
  handlers: {
    onPointerDown(event: PointerEvent): void;
    onPointerMove(event: PointerEvent): void;
    onPointerUp(event: PointerEvent): void;
    onPointerCancel(event: PointerEvent): void;
    onKeyDown(event: KeyboardEvent): void;
  };
}

/** How the photo lies in its stage, and the ways to move, enlarge and turn it: wheel, drag, two fingers, keys. */
export function useStage(room: RefObject<HTMLElement | null>, photo: Size): Stage {
  const [size, setSize] = useState<Size>({ width: 1, height: 1 });
  const [view, setView] = useState<View | null>(null);
  const fingers = useRef(new Map<number, Point>());

  useLayoutEffect(() => {
    const element = room.current;
    if (!element) return;
    const measure = () => setSize({ width: element.clientWidth || 1, height: element.clientHeight || 1 });
    measure();
    const watch = new ResizeObserver(measure);
    watch.observe(element);
    return () => watch.disconnect();
  }, [room]);

  const shown = view ?? fitting(size, photo);
  const change = (by: (view: View) => View) => setView((one) => by(one ?? fitting(size, photo)));
  const middle = { x: size.width / 2, y: size.height / 2 };
  const at = ({ clientX, clientY }: MouseEvent): Point => {
    const box = room.current?.getBoundingClientRect();
    return { x: clientX - (box?.left ?? 0), y: clientY - (box?.top ?? 0) };
  };

  const wheel = useRef<(event: WheelEvent) => void>(() => undefined);
  wheel.current = (event) => {
    event.preventDefault();
    const lines = event.deltaMode === 0 ? event.deltaY / 100 : event.deltaY / 3;
    change((one) => holding(one, at(event), { zoom: one.zoom * zoomStep ** -Math.max(-3, Math.min(3, lines)) }));
  };
  // By hand: a listener of the element itself that may keep the page from scrolling.
  useEffect(() => {
    const element = room.current;
    const turn = (event: WheelEvent) => wheel.current(event);
    element?.addEventListener('wheel', turn, { passive: false });
    return () => element?.removeEventListener('wheel', turn);
  }, [room]);

  const zoomBy = (factor: number) => change((one) => holding(one, middle, { zoom: one.zoom * factor }));
  const ownSize = () => change((one) => holding(one, middle, { zoom: 1 / (globalThis.devicePixelRatio || 1) }));
  const whole = () => change((one) => fitting(size, photo, one.turn));
  const turnTo = (degrees: number) =>
    change((one) => holding(one, middle, { turn: ((((degrees + 180) % 360) + 360) % 360) - 180 }));
  const letGo = ({ pointerId }: PointerEvent) => {
    fingers.current.delete(pointerId);
  };

  return {
    view: shown,
    size,
    zoomBy,
    ownSize,
    whole,
    turnTo,
    handlers: {
      onPointerDown(event) {
        (event.currentTarget as HTMLElement).setPointerCapture?.(event.pointerId);
        fingers.current.set(event.pointerId, at(event));
      },
      onPointerMove(event) {
        const before = fingers.current.get(event.pointerId);
        if (!before) return;
        const now = at(event);
        const [other] = [...fingers.current].flatMap(([id, point]) => (id === event.pointerId ? [] : [point]));
        fingers.current.set(event.pointerId, now);
        change((one) => (other ? pinched(one, other, before, now) : moved(one, now.x - before.x, now.y - before.y)));
      },
      onPointerUp: letGo,
      onPointerCancel: letGo,
      onKeyDown(event) {
        if (event.altKey || event.ctrlKey || event.metaKey || event.target !== event.currentTarget) return;
        const act = keys({ change, zoomBy, ownSize, whole, turnTo, turn: shown.turn })[event.key];
        if (!act) return;
        event.preventDefault();
        act();
      },
    },
  };
}

/** Two fingers hold two points of the photo: one stays, the other goes from `before` to `now`. */
function pinched(view: View, still: Point, before: Point, now: Point): View {
  const length = (to: Point) => Math.max(10, Math.hypot(to.x - still.x, to.y - still.y));
  return holding(view, still, { zoom: (view.zoom * length(now)) / length(before) });
}

interface Acts extends Pick<Stage, 'zoomBy' | 'ownSize' | 'whole' | 'turnTo'> {
  change: (by: (view: View) => View) => void;
  turn: number;
}

const keys = ({ change, zoomBy, ownSize, whole, turnTo, turn }: Acts): Record<string, (() => void) | undefined> => ({
  ArrowLeft: () => change((one) => moved(one, keyStep, 0)),
  ArrowRight: () => change((one) => moved(one, -keyStep, 0)),
  ArrowUp: () => change((one) => moved(one, 0, keyStep)),
  ArrowDown: () => change((one) => moved(one, 0, -keyStep)),
  '+': () => zoomBy(zoomStep),
  '=': () => zoomBy(zoomStep),
  '-': () => zoomBy(1 / zoomStep),
  '0': whole,
  '1': ownSize,
  '[': () => turnTo(turn - 1),
  ']': () => turnTo(turn + 1),
});
