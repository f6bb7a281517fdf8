import { acceptanceLevel, decodeLine, freeDecode } from '../../../src/code';
import type { MakerFile } from '../../../src/maker';
import {
  freeTexts,
  looksLikeCode,
  type StampLine,
  type StampReading,
  textsBeside,
  weighRuns,
} from '../../../src/stamp';

/** What one photo gave: the best text with code systems and without, how likely, and whether it counts as read. */
export interface Judged {
  code: string | null;
  withSystems: { text: string; probability: number; accepted: boolean };
  /** The same when the maker is known, as it is from most listings; null where the bench does not know it. */
  named: { text: string; probability: number; accepted: boolean } | null;
  free: { text: string; probability: number; accepted: boolean };
  /** Free readings of all lines, best first. */
  lines: string[];
}

/** Separators that a stamp may or may not show make no other code. */
export const bare = (text: string): string => text.toUpperCase().replace(/[^A-Z0-9]/g, '');

const nothing = { text: '', probability: 0, accepted: false };

/** What the readings of a set are held against. `maker` is null where any maker on file or none may have stamped it. */
export interface Book {
  makers: readonly MakerFile[];
  maker: string | null;
  now: string;
}

/**
 * Judges a photo as the tool does: lines that are likelier no stamp count for nothing; what is accepted goes before what is
 * not, and of either the likeliest reading wins.
 */
export function judge(read: StampReading, code: string | null, leastStampScore: number, book: Book): Judged {
  const seen = read.state === 'read' ? read : { lines: [], printed: [] };
  const lines = seen.lines.filter(({ stampScore }) => stampScore >= leastStampScore);
  const bestUnder = (maker: string | null) =>
    lines
      .map((line) => bestReading(line, textsBeside(line, seen.lines, seen.printed), { ...book, maker }))
      .sort((a, b) => Number(b.accepted) - Number(a.accepted) || b.probability - a.probability)[0] ?? nothing;
  const free = lines
    .map((line) => ({ ...freeDecode(line.lattice), whole: line.mayGoOn !== true && line.otherWay === undefined }))
    .map((free) => ({ ...free, likely: looksLikeCode(free.text) }))
    .sort((a, b) => Number(b.likely) - Number(a.likely) || b.probability - a.probability)
    .map(({ text, probability, likely, whole }) => ({
      text,
      probability,
      accepted: likely && whole && probability >= acceptanceLevel,
    }));
  return {
    code,
    withSystems: bestUnder(null),
    named: book.maker === null ? null : bestUnder(book.maker),
    free: free[0] ?? nothing,
    lines: free.map(({ text }) => text),
  };
}

/**
 * What the tool tells of a line: characters that are clearly legible though no system explains them, for an impossible month
 * is a finding, or else the likeliest text. What the systems explain and what none of them does are rivals there: a text's
 * probability is that of its readings, plus that of the characters alone as far as no system explains the line.
 */
function bestReading(line: StampLine, beside: readonly string[], { makers, maker, now }: Book): Judged['withSystems'] {
  const { readings, nearest, accepted, code, open } = decodeLine(line, { makers, maker, now }, beside);
  const alone = sumsOf(weighRuns(freeTexts(line.lattice, 40, 40)).filter(({ text }) => looksLikeCode(text)));
  const told = sumsOf(
    readings.length > 0
      ? readings
      : nearest
          .filter(({ how }) => how !== 'differs')
          .map(({ text, likelihood }) => ({ text, probability: likelihood })),
  );
  const seen = alone.get(bare(code));
  // What has a character left open is told so, and counts neither as read nor as wrong.
  if (accepted && readings.length === 0 && open === undefined && seen !== undefined) {
    return { text: bare(code), probability: Math.min(1, seen), accepted: true };
  }
  const rest = Math.max(0, 1 - [...told.values()].reduce((sum, probability) => sum + probability, 0));
  const texts = [...new Set([...told.keys(), ...alone.keys()])].map((text) => ({
    text,
    probability: Math.min(1, (told.get(text) ?? 0) + rest * (alone.get(text) ?? 0)),
  }));
  const [best = nothing] = texts.sort((a, b) => b.probability - a.probability);
  return { ...best, accepted: readings.length > 0 && best.probability >= acceptanceLevel };
}

/** Probabilities of texts by their letters and digits. */
function sumsOf(texts: readonly { text: string; probability: number }[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const { text, probability } of texts) sums.set(bare(text), (sums.get(bare(text)) ?? 0) + probability);
  return sums;
}

export const share = (part: number, whole: number): string =>
  whole === 0 ? '–' : `${((100 * part) / whole).toFixed(1)}%`;

/** Expected calibration error over ten bins of equal width, and the bins that hold anything. */
export function reliability(results: readonly { probability: number; right: boolean }[]): {
  error: number;
  bins: { bin: string; photos: number; 'says, mean': string; 'is right': string }[];
} {
  const bins = Array.from({ length: 10 }, () => ({ count: 0, said: 0, right: 0 }));
  for (const { probability, right } of results) {
    const bin = bins[Math.min(9, Math.floor(probability * 10))]!;
    bin.count++;
    bin.said += probability;
    bin.right += right ? 1 : 0;
  }
  const error = bins.reduce((sum, { said, right }) => sum + Math.abs(said - right), 0) / Math.max(1, results.length);
  const rows = bins.flatMap(({ count, said, right }, at) =>
    count === 0
      ? []
      : [
          {
            bin: `${at * 10}–${at * 10 + 10}%`,
            photos: count,
            'says, mean': share(said, count),
            'is right': share(right, count),
          },
        ],
  );
  return { error, bins: rows };
}
