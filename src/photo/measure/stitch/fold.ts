import type { Strip } from './strip';

/** A row laid over itself, stitch on stitch. */
export interface Fold {
  /** Samples of one stitch along and across. */
  columns: number;
  rows: number;
  /** Where each stitch begins, samples of the strip. */
  starts: number[];
  /** What all have in common, row by row; the mean of each row of the strip is taken out. */
  common: Float64Array;
  /** That mean of each row. */
  means: Float64Array;
  /** How alike each is to the mean of the others, −1 to 1. */
  alike: number[];
  /** Mean of `alike`. */
  likeness: number;
}

/**
 * A row that was folded by a pitch, samples of the strip, that grows by the share `swell` from end to end, `reach` rows to
 * either side.
 */
export interface Folded extends Fold {
  pitch: number;
  swell: number;
  reach: number;
}

/** Samples of one stitch along the row, whatever its pitch. */
const columns = 16;

/** Where stitches begin whose pitch changes evenly by the share `swell` from first to last. */
export function startsOf(from: number, count: number, pitch: number, swell: number): number[] {
  return Array.from({ length: count + 1 }, (_, at) => {
    const share = count > 0 ? at / count : 0;
    return from + pitch * (at + swell * count * (share * share - share) * 0.5);
  });
}

/** The strip between two samples and `reach` rows to either side, as `columns` by `rows`; `means` is taken out of each row. */
export function cellAt(
  strip: Strip,
  start: number,
  end: number,
  reach: number,
  rows: number,
  means: Float64Array,
): Float64Array {
  const cell = new Float64Array(columns * rows);
  placeColumns(strip.width, start, end);
  rowsAt(strip, reach, rows).forEach((from, row) => {
    const to = row * columns;
    sampleRow(cell, to, strip.data, from);
    for (let column = 0; column < columns; column++) cell[to + column]! -= means[row]!;
  });
  return cell;
}

/** Where the rows of a drawing begin in the strip. */
const rowsAt = (strip: Strip, reach: number, rows: number): number[] =>
  Array.from(
    { length: rows },
    (_, row) => Math.round(strip.aside + ((row / (rows - 1)) * 2 - 1) * reach) * strip.width,
  );

/** Which two samples of a row each column lies between, and the share of the second: of one cell at a time. */
const lefts = new Int32Array(columns);
const shares = new Float64Array(columns);

function placeColumns(width: number, start: number, end: number): void {
  for (let column = 0; column < columns; column++) {
    const x = start + ((column + 0.5) / columns) * (end - start) - 0.5;
    lefts[column] = Math.max(0, Math.min(width - 2, Math.floor(x)));
    shares[column] = Math.min(1, Math.max(0, x - lefts[column]!));
  }
}

/** Writes a row of the cell that was placed into `cells` from `to` on; gives the sum. */
function sampleRow(cells: Float64Array, to: number, data: Float32Array, from: number): number {
  let sum = 0;
  for (let column = 0; column < columns; column++) {
    const at = from + lefts[column]!;
    const share = shares[column]!;
    const value = data[at]! * (1 - share) + data[at + 1]! * share;
    cells[to + column] = value;
    sum += value;
  }
  return sum;
}

export const rowsOf = (reach: number): number => Math.min(17, 2 * Math.max(2, Math.round(reach)) + 1);

/** Lays the stitches between `starts` over each other, `reach` rows to either side. */
export function foldRow(strip: Strip, starts: number[], reach: number): Fold {
  const rows = rowsOf(reach);
  const at = rowsAt(strip, reach, rows);
  const count = starts.length - 1;
  const size = columns * rows;
  const cells = roomFor(count * size);
  const means = new Float64Array(rows);
  const total = new Float64Array(size);
  for (let place = 0; place < count; place++) {
    placeColumns(strip.width, starts[place]!, starts[place + 1]!);
    for (let row = 0; row < rows; row++) {
      const from = place * size + row * columns;
      const mean = sampleRow(cells, from, strip.data, at[row]!) / columns;
      means[row]! += mean / count;
      for (let column = 0; column < columns; column++) {
        const value = cells[from + column]! - mean;
        cells[from + column] = value;
        total[row * columns + column]! += value;
      }
    }
  }
  const common = new Float64Array(size);
  let all = 0;
  for (let place = 0; place < size; place++) {
    all += total[place]! * total[place]!;
    common[place] = total[place]! / count;
  }
  const alike: number[] = [];
  for (let place = 0; place < count; place++) alike.push(likeOthers(cells, place * size, total, all));
  return {
    columns,
    rows,
    starts,
    common,
    means,
    alike,
    likeness: alike.reduce((sum, value) => sum + value, 0) / Math.max(1, count),
  };
}

/** Cells of one fold at a time: hundreds are folded until the best is found. */
let room = new Float64Array(0);
function roomFor(samples: number): Float64Array {
  if (room.length < samples) room = new Float64Array(samples);
  return room;
}

/**
 * Correlation of the cell that begins at `from` with the sum of the others; `total` is that of all, `all` the sum of its
 * squares, and each row's mean is out of both.
 */
function likeOthers(cells: Float64Array, from: number, total: Float64Array, all: number): number {
  let [product, own] = [0, 0];
  for (let at = 0; at < total.length; at++) {
    const value = cells[from + at]!;
    product += value * total[at]!;
    own += value * value;
  }
  const others = all - 2 * product + own;
  return own > 0 && others > 0 ? (product - own) / Math.sqrt(own * others) : 0;
}

/** Correlation of two cells, each row's mean taken out: an edge along the row is not alike in itself. */
export function likeness(one: Float64Array, other: Float64Array): number {
  let [product, square, otherSquare] = [0, 0, 0];
  for (let row = 0; row < one.length; row += columns) {
    let [mean, otherMean] = [0, 0];
    for (let at = row; at < row + columns; at++) {
      mean += one[at]!;
      otherMean += other[at]!;
    }
    mean /= columns;
    otherMean /= columns;
    for (let at = row; at < row + columns; at++) {
      product += (one[at]! - mean) * (other[at]! - otherMean);
      square += (one[at]! - mean) ** 2;
      otherSquare += (other[at]! - otherMean) ** 2;
    }
  }
  return square > 0 && otherSquare > 0 ? product / Math.sqrt(square * otherSquare) : 0;
}

/** How much of a drawing a cell holds: 1 all of it, 0 nothing. */
export function shareOf(cell: Float64Array, drawing: Float64Array): number {
  const whole = drawing.reduce((sum, value) => sum + value * value, 0);
  return whole > 0 ? cell.reduce((sum, value, at) => sum + value * drawing[at]!, 0) / whole : 0;
}
