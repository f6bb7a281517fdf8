import { boxWhere, type Point, type Where } from '../../photo';

/** Places on a screen are in shares of the picture's sides, 0 to 1: the picture may be drawn in any size. */
export type Crop = readonly [left: number, top: number, right: number, bottom: number];
export type QuadWhere = Extract<Where, { form: 'quad' }>;

/** What may be held of a place: one of its points, or all of it. */
export type Held = number | 'whole';

/** A rectangle that a hand makes keeps this share of each side of the picture. */
const leastShare = 0.02;

const within = (share: number): number => Math.min(1, Math.max(0, share));

/** Where that which is held lies: the point, or the middle of all. */
export function heldAt({ points }: Where, held: Held): Point {
  const middle = (axis: 'x' | 'y') => {
    const values = points.map((point) => point[axis]);
    return (Math.min(...values) + Math.max(...values)) / 2;
  };
  return held === 'whole' ? { x: middle('x'), y: middle('y') } : (points[held] ?? { x: 0, y: 0 });
}

/** The place with what is held moved to a point; nothing leaves the picture, and the whole keeps its shape. */
export function moveTo<W extends Where>(where: W, held: Held, to: Point): W {
  if (held !== 'whole') {
    const points = where.points.map((point, index) => (index === held ? { x: within(to.x), y: within(to.y) } : point));
    return { ...where, points } as W;
  }
  const from = heldAt(where, held);
  const step = (axis: 'x' | 'y') => {
    const values = where.points.map((point) => point[axis]);
    return Math.min(1 - Math.max(...values), Math.max(-Math.min(...values), to[axis] - from[axis]));
  };
  const [across, down] = [step('x'), step('y')];
  return { ...where, points: where.points.map(({ x, y }) => ({ x: x + across, y: y + down })) } as W;
}

/** A rectangle whose one corner was moved: its neighbours follow, the opposite corner stays, and no two cross. */
export function keepRectangle(where: Where, held: Held): Where {
  if (held === 'whole' || where.form !== 'quad') return where;
  const [moved, fixed] = [heldAt(where, held), heldAt(where, (held + 2) % 4)];
  const [isLeft, isTop] = [held === 0 || held === 3, held < 2];
  const x = isLeft ? Math.min(moved.x, fixed.x - leastShare) : Math.max(moved.x, fixed.x + leastShare);
  const y = isTop ? Math.min(moved.y, fixed.y - leastShare) : Math.max(moved.y, fixed.y + leastShare);
  return quadOf([Math.min(x, fixed.x), Math.min(y, fixed.y), Math.max(x, fixed.x), Math.max(y, fixed.y)]);
}

export const quadOf = ([left, top, right, bottom]: Crop): QuadWhere => boxWhere(left, top, right, bottom);

/** The smallest upright rectangle around a place. */
export function cropAround({ points }: Where): [number, number, number, number] {
  const [across, down] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [Math.min(...across), Math.min(...down), Math.max(...across), Math.max(...down)];
}
