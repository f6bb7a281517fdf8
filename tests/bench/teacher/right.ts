import { decodeSystem, type Explanation } from '../../../src/code';
import { spansMeet } from '../../../src/span';
import { chanceFrom } from '../../reference/number-systems';
import type { DrawnList } from './lists';
import { drawPiece } from './systems';

const probesEach = 40;

/**
 * Whether an explanation is the true system: each era of the truth has a layout that reads further codes of it, of the
 * years, letters and lengths that the list shows, as they say. A week counted from another day of the week is the same.
 */
export function isTrue({ eras }: Explanation, list: DrawnList): boolean {
  return list.eras.every((truth, at) => {
    const right = list.rows.filter(({ era, wrong }) => era === at && !wrong);
    if (truth.running) return eras.some(({ layout }) => layout.length === 1 && 'serial' in layout[0]!);
    const years = right.map(({ piece }) => Number(piece.span.from!.slice(0, 4)));
    const [first, last] = [Math.min(...years), Math.max(...years)];
    const widths = new Set(right.map(({ piece }) => piece.width));
    const chance = chanceFrom(list.seed + 91_000_000);
    const probes = Array.from({ length: 2000 }, () => drawPiece(truth, chance))
      .filter(
        ({ span, width }) =>
          Number(span.from!.slice(0, 4)) >= first && Number(span.to!.slice(0, 4)) <= last && widths.has(width),
      )
      .slice(0, probesEach);
    return eras.some(({ layout }) =>
      probes.every(({ code, span }) => {
        const system = { id: 'learned', used: [String(first), String(last)] as [string, string], layout, examples: [] };
        const readings = decodeSystem(code, system, []);
        const read = readings.filter(
          (reading) => reading.span && reading.span.precision === span.precision && spansMeet(reading.span, span),
        );
        return read.length > 0 && readings.length <= 2;
      }),
    );
  });
}
