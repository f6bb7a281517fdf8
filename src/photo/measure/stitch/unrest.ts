import type { Strip } from './strip';

/** A straight line through a strip: rows from its middle at the marked line's two points. */
export interface Line {
  first: number;
  last: number;
}

/**
 * Lines near the marked one along which brightness goes up and down most, all along: a thread and its holes do, and a
 * line that only crosses an edge does so at one place. Best first; `reach`: rows that either end may be off.
 */
export function unrestfulLines(strip: Strip, reach: number, most: number): Line[] {
  const { length } = strip;
  const wide = Math.max(length / 9, Math.min(length / 3, 30));
  const parts = Math.max(3, Math.round((2 * length) / wide) - 1);
  const unrest = Array.from({ length: parts }, (_, part) =>
    unrestOf(strip, strip.before + ((part + 0.5) / parts) * length - wide / 2, wide),
  );
  const step = Math.max(1, reach / 12);
  const steps = Math.floor(reach / step);
  const ranked: (Line & { worth: number })[] = [];
  for (let from = -steps; from <= steps; from++) {
    for (let to = -steps; to <= steps; to++) {
      let worth = 0;
      for (let part = 0; part < parts; part++) {
        const row = strip.aside + (from + ((to - from) * (part + 0.5)) / parts) * step;
        worth += unrest[part]![Math.max(0, Math.min(strip.height - 1, Math.round(row)))]!;
      }
      ranked.push({ first: from * step, last: to * step, worth });
    }
  }
  ranked.sort((a, b) => b.worth - a.worth);
  const kept: Line[] = [];
  const apart = Math.max(3, reach / 5);
  for (const line of ranked) {
    if (kept.length >= most) break;
    if (kept.every(({ first, last }) => Math.abs(first - line.first) + Math.abs(last - line.last) > apart))
      kept.push(line);
  }
  return kept;
}

/** Logarithm of how much brightness varies in a window along each row, three rows together; slow change is taken out. */
function unrestOf(strip: Strip, start: number, wide: number): Float64Array {
  const from = Math.max(0, Math.round(start));
  const to = Math.min(strip.width, Math.round(start + wide));
  const own = new Float64Array(strip.height);
  for (let row = 0; row < strip.height; row++) {
    let [sum, square, slope, places] = [0, 0, 0, 0];
    const middle = (from + to - 1) / 2;
    for (let column = from; column < to; column++) {
      const value = strip.data[row * strip.width + column]!;
      sum += value;
      square += value * value;
      slope += value * (column - middle);
      places += (column - middle) ** 2;
    }
    const count = to - from;
    own[row] = Math.max(0, square - (sum * sum) / count - (slope * slope) / places) / count;
  }
  return own.map((value, row) => Math.log(1 + value + (own[row - 1] ?? value) + (own[row + 1] ?? value)));
}
