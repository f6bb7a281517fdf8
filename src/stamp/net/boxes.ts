import { type Quad, turnedQuad } from '../../photo';
import type { ModelCard } from './card';

/** The finder's answer: eight planes of `rows` × `columns` cells. */
export interface FinderMap {
  data: ArrayLike<number>;
  rows: number;
  columns: number;
}

/** A line in pixels of the finder's own picture. */
export interface FoundBox {
  quad: Quad;
  /** How likely it is a line of characters, and how likely that line is a code stamp; 0 to 1. */
  score: number;
  stampScore: number;
}

/** Planes of the map: see the interface in the training's README. */
const plane = { core: 0, code: 1, top: 2, bottom: 3, left: 4, right: 5, sine: 6, cosine: 7 } as const;

const sigmoid = (value: number): number => 1 / (1 + Math.exp(-value));

/** Groups of joined cells, each with the box that its cells agree on; best first. */
export function boxesOf(map: FinderMap, { core, smallest, least, step, unit }: ModelCard['finder']): FoundBox[] {
  const { rows, columns, data } = map;
  const scores = Float32Array.from({ length: rows * columns }, (_, cell) => sigmoid(data[cell]!));
  const boxes: FoundBox[] = [];
  for (const cells of joinedCells(scores, rows, columns, core)) {
    const box = cells.length < smallest ? null : boxFrom(cells, map, scores, step, unit);
    if (box !== null && box.score >= least) boxes.push(box);
  }
  return boxes.sort((a, b) => b.score * b.stampScore - a.score * a.stampScore);
}

/** Cells above the level, joined over all eight neighbours. */
function joinedCells(scores: Float32Array, rows: number, columns: number, level: number): number[][] {
  const seen = new Uint8Array(scores.length);
  const groups: number[][] = [];
  for (let start = 0; start < scores.length; start++) {
    if (seen[start] === 1 || scores[start]! <= level) continue;
    const cells = [start];
    seen[start] = 1;
    for (let next = 0; next < cells.length; next++) {
      const cell = cells[next]!;
      const column = cell % columns;
      const row = (cell - column) / columns;
      for (let r = Math.max(0, row - 1); r <= Math.min(rows - 1, row + 1); r++) {
        for (let c = Math.max(0, column - 1); c <= Math.min(columns - 1, column + 1); c++) {
          const beside = r * columns + c;
          if (seen[beside] === 1 || scores[beside]! <= level) continue;
          seen[beside] = 1;
          cells.push(beside);
        }
      }
    }
    groups.push(cells);
  }
  return groups;
}

/** The direction is the cells' mean; height comes from all of them, each end from those near it. Null when flat. */
function boxFrom(
  cells: readonly number[],
  { data, rows, columns }: FinderMap,
  scores: Float32Array,
  step: number,
  unit: number,
): FoundBox | null {
  const size = rows * columns;
  const at = (which: number, cell: number): number => data[which * size + cell]!;
  const distance = (which: number, cell: number): number => Math.exp(Math.min(6, Math.max(-6, at(which, cell)))) * unit;
  const weighted = (value: (cell: number) => number, weight = (cell: number): number => scores[cell]!): number => {
    let sum = 0;
    let total = 0;
    for (const cell of cells) {
      sum += weight(cell) * value(cell);
      total += weight(cell);
    }
    return sum / Math.max(total, 1e-12);
  };
  const angle = Math.atan2(
    weighted((cell) => at(plane.sine, cell)),
    weighted((cell) => at(plane.cosine, cell)),
  );
  const cosine = Math.cos(angle);
  const sine = Math.sin(angle);
  const placeX = (cell: number): number => (cell % columns) * step + (step - 1) / 2;
  const placeY = (cell: number): number => Math.floor(cell / columns) * step + (step - 1) / 2;
  const along = (cell: number): number => placeX(cell) * cosine + placeY(cell) * sine;
  const across = (cell: number): number => -placeX(cell) * sine + placeY(cell) * cosine;
  const top = weighted((cell) => across(cell) - distance(plane.top, cell));
  const bottom = weighted((cell) => across(cell) + distance(plane.bottom, cell));
  const height = bottom - top;
  const near = (side: number) => (cell: number) =>
    scores[cell]! * Math.exp(-distance(side, cell) / Math.max(height, 1));
  const left = weighted((cell) => along(cell) - distance(plane.left, cell), near(plane.left));
  const right = weighted((cell) => along(cell) + distance(plane.right, cell), near(plane.right));
  if (!(height > 0) || !(right > left)) return null;
  const [u, v] = [(left + right) / 2, (top + bottom) / 2];
  // Cells count pixel middles; quads count pixel edges, half a pixel on.
  const middle = { x: u * cosine - v * sine + 0.5, y: u * sine + v * cosine + 0.5 };
  return {
    quad: turnedQuad(middle, right - left, height, (angle * 180) / Math.PI),
    score: cells.reduce((sum, cell) => sum + scores[cell]!, 0) / cells.length,
    stampScore: weighted((cell) => sigmoid(at(plane.code, cell))),
  };
}
