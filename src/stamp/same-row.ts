import { type Point, type Quad, quadSize } from '../photo';
import { angleBetween, directionOf } from './sides';

/** Lines of one row run the same way, are about as tall and stand at one height. */
const mostTurn = 15;
const leastTall = 0.6;
const mostOff = 0.4;
/** How far two boxes reach into each other, in heights, before they are parts of one line; a box is never exact. */
const leastShared = 0.3;
/** A box that all but lies within another is no further part of the line. */
const mostShared = 0.85;

/**
 * The box around two that are parts of one line: in one row, each reaching past the other, and into it. Null for any
 * other two. Long lines on uneven ground are found in pieces, and each piece would pass for a whole code.
 */
export function lineOfBoth(one: Quad, other: Quad): Quad | null {
  const [a, b] = [quadSize(one), quadSize(other)];
  if (!(a.down > 0) || !(b.down > 0)) return null;
  const ratio = a.down / b.down;
  const direction = directionOf(a.across >= b.across ? one : other);
  if (angleBetween(directionOf(one), directionOf(other)) > mostTurn) return null;
  if (ratio < leastTall || ratio > 1 / leastTall) return null;
  const turn = (direction * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
  const along = ({ x, y }: Point): number => x * cosine + y * sine;
  const across = ({ x, y }: Point): number => -x * sine + y * cosine;
  const reach = (quad: Quad) => ({
    from: (along(quad[0]) + along(quad[3])) / 2,
    to: (along(quad[1]) + along(quad[2])) / 2,
    // Two pieces of a bent line stand apart at their far ends: the ends that meet are held against each other.
    left: (across(quad[0]) + across(quad[3])) / 2,
    right: (across(quad[1]) + across(quad[2])) / 2,
  });
  const [first, second] = [reach(one), reach(other)].sort((p, q) => p.from - q.from) as [
    ReturnType<typeof reach>,
    ReturnType<typeof reach>,
  ];
  const tall = (a.down + b.down) / 2;
  const shared = first.to - second.from;
  const shorter = Math.min(first.to - first.from, second.to - second.from);
  if (shared < leastShared * tall || shared > mostShared * shorter || second.to < first.to) return null;
  const lean = Math.sin((mostTurn * Math.PI) / 360) * shared;
  if (Math.abs(first.right - second.left) > mostOff * tall + lean) return null;
  const point = (u: number, v: number): Point => ({ x: u * cosine - v * sine, y: u * sine + v * cosine });
  const half = tall / 2;
  return [
    point(first.from, first.left - half),
    point(second.to, second.right - half),
    point(second.to, second.right + half),
    point(first.from, first.left + half),
  ];
}
