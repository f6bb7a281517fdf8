import type { Point } from '../../../src/photo/types';

/** A symmetry in shares of the lattice's two steps: x′ = a·x + b·y + c, y′ = d·x + e·y + f. */
export type Operation = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

type System = 'oblique' | 'rectangular' | 'square' | 'hexagonal';

interface Listed {
  system: System;
  positions: string;
  /** Every position stands once more half of both steps on. */
  centred?: true;
}

/**
 * The 17 plane groups by the coordinates of their general positions.
 * Source: International Tables for Crystallography, volume A, plane groups, general positions.
 */
const listed = {
  p1: { system: 'oblique', positions: 'x,y' },
  p2: { system: 'oblique', positions: 'x,y -x,-y' },
  pm: { system: 'rectangular', positions: 'x,y -x,y' },
  pg: { system: 'rectangular', positions: 'x,y -x,y+1/2' },
  cm: { system: 'rectangular', positions: 'x,y -x,y', centred: true },
  p2mm: { system: 'rectangular', positions: 'x,y -x,-y -x,y x,-y' },
  p2mg: { system: 'rectangular', positions: 'x,y -x,-y -x+1/2,y x+1/2,-y' },
  p2gg: { system: 'rectangular', positions: 'x,y -x,-y -x+1/2,y+1/2 x+1/2,-y+1/2' },
  c2mm: { system: 'rectangular', positions: 'x,y -x,-y -x,y x,-y', centred: true },
  p4: { system: 'square', positions: 'x,y -x,-y -y,x y,-x' },
  p4mm: { system: 'square', positions: 'x,y -x,-y -y,x y,-x -x,y x,-y y,x -y,-x' },
  p4gm: {
    system: 'square',
    positions: 'x,y -x,-y -y,x y,-x -x+1/2,y+1/2 x+1/2,-y+1/2 y+1/2,x+1/2 -y+1/2,-x+1/2',
  },
  p3: { system: 'hexagonal', positions: 'x,y -y,x-y -x+y,-x' },
  p3m1: { system: 'hexagonal', positions: 'x,y -y,x-y -x+y,-x -y,-x -x+y,y x,x-y' },
  p31m: { system: 'hexagonal', positions: 'x,y -y,x-y -x+y,-x y,x x-y,-y -x,-x+y' },
  p6: { system: 'hexagonal', positions: 'x,y -y,x-y -x+y,-x -x,-y y,-x+y x-y,x' },
  p6mm: {
    system: 'hexagonal',
    positions: 'x,y -y,x-y -x+y,-x -x,-y y,-x+y x-y,x -y,-x -x+y,y x,x-y y,x x-y,-y -x,-x+y',
  },
} as const satisfies Record<string, Listed>;

export type PlaneGroup = keyof typeof listed;
export const planeGroups = Object.keys(listed) as PlaneGroup[];

export const systemOf = (group: PlaneGroup): System => listed[group].system;

export function operationsOf(group: PlaneGroup): Operation[] {
  const { positions, ...rest } = listed[group];
  const own = positions.split(' ').map((position): Operation => {
    const [[a, b, c], [d, e, f]] = position.split(',').map(coordinate) as [Row, Row];
    return [a, b, c, d, e, f];
  });
  if (!('centred' in rest)) return own;
  return [...own, ...own.map(([a, b, c, d, e, f]): Operation => [a, b, c + 0.5, d, e, f + 0.5])];
}

type Row = [x: number, y: number, along: number];

function coordinate(text: string): Row {
  const row: Row = [0, 0, 0];
  for (const [, sign, term] of text.matchAll(/([+-]?)(x|y|1\/2)/gu)) {
    const value = sign === '-' ? -1 : 1;
    if (term === 'x') row[0] += value;
    else if (term === 'y') row[1] += value;
    else row[2] += value / 2;
  }
  return row;
}

/** Two steps that span a lattice, in the plane of the panel. */
export interface Basis {
  one: Point;
  other: Point;
}

export const placeOf = ({ one, other }: Basis, x: number, y: number): Point => ({
  x: x * one.x + y * other.x,
  y: x * one.y + y * other.y,
});

/** What an operation does in the plane of the panel: a turn or mirroring, then a move. */
function inThePlane(basis: Basis, [a, b, c, d, e, f]: Operation) {
  const { one, other } = basis;
  const area = one.x * other.y - one.y * other.x;
  const image = ({ x, y }: Point): Point => {
    const [u, v] = [(x * other.y - y * other.x) / area, (one.x * y - one.y * x) / area];
    return placeOf(basis, a * u + b * v, d * u + e * v);
  };
  return { right: image({ x: 1, y: 0 }), lower: image({ x: 0, y: 1 }), moved: placeOf(basis, c, f) };
}

const near = (value: number, to: number): boolean => Math.abs(value - to) < 1e-6;

/** Steps of the lattice, the shortest first. */
function steps(basis: Basis): Point[] {
  const far = Array.from({ length: 25 }, (_, at) => at - 12);
  const all = far.flatMap((x) => far.map((y) => placeOf(basis, x, y)));
  return all.sort((a, b) => Math.hypot(a.x, a.y) - Math.hypot(b.x, b.y));
}

/** Places across at which an upright mirror axis stands, in the plane of the panel; none for a group without one there. */
export function uprightAxes(group: PlaneGroup, basis: Basis): number[] {
  const all = steps(basis);
  return operationsOf(group).flatMap((operation) => {
    const { right, lower, moved } = inThePlane(basis, operation);
    if (!near(right.x, -1) || !near(right.y, 0) || !near(lower.x, 0) || !near(lower.y, 1)) return [];
    // A move along the axis makes it a glide, unless a step of the lattice takes it back.
    return all.filter(({ y }) => near(y + moved.y, 0)).map(({ x }) => (x + moved.x) / 2);
  });
}

export const hasHalfTurn = (group: PlaneGroup): boolean =>
  operationsOf(group).some(([a, b, , d, e]) => a === -1 && b === 0 && d === 0 && e === -1);

/** The shortest step that surely runs across (or down), and shorter ones that lean a little more and may be told instead. */
export interface StepTruth {
  sure: Point;
  may: Point[];
}

export function stepTruth(basis: Basis, level: boolean): StepTruth {
  const along = ({ x, y }: Point): number => (level ? x : y);
  const aside = ({ x, y }: Point): number => Math.abs(level ? y : x);
  const leaning = steps(basis).filter((step) => along(step) > 1e-6 && aside(step) < 0.09 * along(step));
  const at = leaning.findIndex((step) => aside(step) < 0.05 * along(step));
  const sure = leaning[at];
  if (sure === undefined) throw new Error('A lattice has a step in every direction, if a long one');
  return { sure, may: leaning.slice(0, at) };
}
