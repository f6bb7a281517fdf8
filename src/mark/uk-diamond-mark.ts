import { sinceSpan } from '../span';
import { defineMark, type MarkFound, rowSource } from './define';
import { type DiamondCorners, readDiamond } from './diamond';
import table from './tables/uk-diamond-marks.json';

const nameOfMark =
  /\b(?:diamond|lozenge|kite)[\s-]{0,4}(?:shaped\s{1,4})?(?:registry|registration|design|registered)?[\s-]{0,4}mark\b/giu;
const corner = (name: string) =>
  new RegExp(`\\b${name}(?:\\s{1,4}corner)?\\s{0,4}[:=]?\\s{0,4}["“'‘]?([A-Z]|\\d{1,3})["”'’]?(?![\\p{L}\\d])`, 'iu');
const corners = { top: corner('top'), left: corner('left'), right: corner('right'), bottom: corner('bottom') };
const reach = 200;

/**
 * The day on which the design was registered, 1842 to 1883: what carries the mark is no older.
 * A diamond mark as a listing describes it: its name, and within the same words the four corners ("diamond mark:
 * top E, left E, right 31, bottom 2"). Drawn marks are not read from photos.
 */
export const ukDiamondMark = defineMark({
  id: 'uk-diamond-mark',
  find: (text) =>
    [...text.matchAll(nameOfMark)].flatMap((match) => {
      const after = text.slice(match.index, match.index + match[0].length + reach);
      const read = cornersIn(after);
      if (!read) return [];
      return [foundByDiamond(read.corners, match.index, match.index + read.end)];
    }),
});

function cornersIn(text: string): { corners: DiamondCorners; end: number } | null {
  const [top, left, right, bottom] = [corners.top, corners.left, corners.right, corners.bottom].map((pattern) =>
    pattern.exec(text),
  );
  if (!top?.[1] || !left?.[1] || !right?.[1] || !bottom?.[1]) return null;
  const end = Math.max(...[top, left, right, bottom].map((match) => match.index + match[0].length));
  const [a, b, c, d] = [top[1], left[1], right[1], bottom[1]].map((value) => value.toUpperCase());
  return { corners: { top: a!, left: b!, right: c!, bottom: d! }, end };
}

function foundByDiamond(read: DiamondCorners, start: number, end: number): MarkFound {
  const reading = readDiamond(read);
  const verified = reading.ok && reading.verified;
  const at = { start, end, source: rowSource(table.source, verified), verified };
  if (!reading.ok) {
    const says = { kind: 'no-diamond' as const, why: reading.why };
    return { ...at, spans: [], strength: 'soft', says, cautions: [{ kind: 'corner-misread' }] };
  }
  const first = reading.days[0]!;
  return {
    ...at,
    spans: [sinceSpan(first)],
    strength: reading.verified ? 'hard' : 'soft',
    says: { kind: 'diamond', days: reading.days },
    cautions: [{ kind: 'dates-registration' }],
  };
}
