import { type Draft, propose } from '../draft';
import type { Area } from '../page/area';
import { pathOf } from '../page/dom';
import type { Snapshot } from '../page/snapshot';
import type { PriceHints } from '../text/currency';
import { parseMeasures } from '../text/measure';
import { type ReadHints, readLabelled } from './labelled';
import { findPairs } from './pairs';
import { findSeenPrices, type SeenPrice } from './price';

/** Facts beside labels, wherever the listing's area shows them. */
export function readSeenPairs(snapshot: Snapshot, area: Area, draft: Draft, hints: ReadHints): void {
  for (const { name, value, at } of findPairs(snapshot, area.outside)) {
    const element = snapshot.elements[at];
    if (element)
      readLabelled(name, value, draft, { origin: 'visible', where: pathOf(element.element), confidence: 0.65 }, hints);
  }
}

/** Puts the seen prices into the draft. */
export function readSeenPrices(snapshot: Snapshot, area: Area, draft: Draft, hints: PriceHints): SeenPrice[] {
  const seen = findSeenPrices(snapshot, area, hints);
  for (const { price, words, confidence, where, caveats } of seen.slice(0, 8))
    propose(draft.price, price, { origin: 'visible', where, confidence, caveats }, words);
  return seen;
}

/** Measurements that the description states; bare ones ("25 x 19 x 15 cm") only as a run of at least two. */
export function readStatedMeasures(draft: Draft, text: string, hints: PriceHints): void {
  const found = parseMeasures(text.slice(0, 20_000), hints.language ?? null).slice(0, 20);
  const known = draft.measures.length > 0;
  for (const { measure, start } of found) {
    const inRun = found.some((other) => other.start !== start && Math.abs(other.start - start) < 16);
    if (measure.dimension !== 'unknown' || (!known && inRun))
      draft.measures.push({ value: measure, origin: 'visible', where: 'description', confidence: 0.6 });
  }
}
