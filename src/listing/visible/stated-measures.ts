import type { PriceHints } from '../../text/currency';
import { parseMeasures } from '../../text/measure';
import type { Draft } from '../draft';

/** Measurements that the description states; bare ones ("25 x 19 x 15 cm") only as a run of at least two. */
export function readStatedMeasures(draft: Draft, text: string, hints: PriceHints): void {
  const found = parseMeasures(text.slice(0, 20_000), hints.language ?? null).slice(0, 20);
  const before = [...draft.measures];
  const known = before.length > 0;
  for (const { measure, start } of found) {
    const inRun = found.some((other) => other.start !== start && Math.abs(other.start - start) < 16);
    // A labelled line of the description was read as a field already.
    const again = before.some(({ value }) => value.words === measure.words && value.dimension === measure.dimension);
    if (!again && (measure.dimension !== 'unknown' || (!known && inRun)))
      draft.measures.push({ value: measure, origin: 'visible', where: 'description', confidence: 0.6 });
  }
}
