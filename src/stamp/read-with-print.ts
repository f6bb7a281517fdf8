import { flatten, type GreyImage, invert, pixelsOf, type Quad, quadSize, stretch } from '../photo';
import { mayGoOn } from './at-edge';
import { cropLine, growQuad } from './crop';
import type { PrintReader, PrintSymbol, PrintWord } from './engines';
import { proposeLines, sharedGround } from './find/find-lines';
import { freeTexts } from './free-text';
import { measureLine } from './measure';
import { latticeFromSymbols, stampCharacter } from './print/to-lattice';
import { trustedText } from './read-printed';
import type { StampLine } from './types';

/** Height that a general engine reads best, pixels. */
const lineHeight = 72;

interface Attempt {
  symbols: PrintSymbol[];
  text: string;
  confidence: number;
}

/** Lines read in one photo, and the share of the best line's score below which a line is leather. */
const mostLines = 10;
const worthReading = 0.3;

/**
 * Stamped lines by pixel arithmetic and a general print engine: what is done where the nets cannot run. Each proposed
 * line is read plain and with its background flattened; two readings that agree are worth more than either. `printed`
 * are the words that the engine trusts, whether they look like a code or not.
 */
export async function readWithPrint(
  grey: GreyImage,
  photoId: string,
  print: PrintReader,
): Promise<{ lines: StampLine[]; printed: string[] }> {
  const lines: StampLine[] = [];
  const printed: string[] = [];
  const proposals = proposeLines(grey, mostLines);
  for (const proposal of proposals) {
    if (proposal.score < worthReading * proposals[0]!.score) break;
    const quad = growQuad(proposal.quad, 1, 0.45);
    const crop = cropLine(grey, quad, lineHeight);
    if (crop === null) continue;
    const upright = proposal.polarity === 'light' ? invert(crop) : crop;
    const attempts: Attempt[] = [];
    const trusted: string[] = [];
    for (const image of [stretch(upright), stretch(flatten(upright, 40, 40, 12))]) {
      const found = await print.read(pixelsOf(image), 'line');
      attempts.push(attemptOf(found.flatMap((line) => line.words)));
      trusted.push(...found.map(trustedText));
    }
    const words = trusted.sort((a, b) => b.length - a.length)[0] ?? '';
    if (words !== '' && !printed.some((other) => other.includes(words))) printed.push(words);
    const line = lineFrom(attempts, crop, quad, grey, `${photoId}-line-${lines.length + 1}`, photoId);
    if (line !== null) keepBetter(lines, line);
  }
  lines.sort((a, b) => b.stampScore * b.free.probability - a.stampScore * a.free.probability);
  return { lines, printed };
}

/** Two proposals for the same characters: the one with more characters read stays, doubtful ones counting less. */
function keepBetter(lines: StampLine[], line: StampLine): void {
  const worth = ({ free: { text, probability } }: StampLine): number =>
    text.length * probability ** (2 / Math.max(1, text.length));
  const same = lines.findIndex((other) => sharedGround(other.quad, line.quad) > 0.35);
  if (same === -1) lines.push(line);
  else if (worth(line) > worth(lines[same]!)) lines[same] = { ...line, id: lines[same]!.id };
}

/** The words that hold: lone signs at the ends are edges of the crop, words without trust are leather. */
function attemptOf(words: readonly PrintWord[]): Attempt {
  const kept = words.filter((word) => word.confidence >= 0.25 && [...word.text].some((c) => /[A-Za-z0-9]/.test(c)));
  const symbols = kept.flatMap((word) => word.symbols);
  const text = symbols.map((symbol) => stampCharacter(symbol.choices[0]?.text ?? '') ?? '').join('');
  return { symbols, text, confidence: Math.min(1, ...kept.map((word) => word.confidence)) };
}

function lineFrom(
  attempts: readonly Attempt[],
  crop: GreyImage,
  quad: Quad,
  photo: GreyImage,
  id: string,
  photoId: string,
): StampLine | null {
  const [best] = attempts.filter(({ text }) => text.length >= 2).sort((a, b) => b.confidence - a.confidence);
  if (best === undefined) return null;
  const agreeing = attempts.filter(({ text }) => text === best.text).length;
  const lattice = latticeFromSymbols(best.symbols, certaintyOf(best.confidence, agreeing > 1));
  const boxes = best.symbols.map((symbol) => symbol.box);
  const tight = tightQuad(quad, crop, boxes);
  const middles = boxes.map(({ x0, x1 }) => {
    const [from, to] = [Math.min(...boxes.map((box) => box.x0)), Math.max(...boxes.map((box) => box.x1))];
    return ((x0 + x1) / 2 - from) / Math.max(1, to - from);
  });
  const tightCrop = cropLine(crop, cropBounds(boxes), lineHeight) ?? crop;
  return {
    id,
    photoId,
    quad: tight,
    stampScore: likenessToCode(best),
    engine: 'tesseract',
    lattice,
    free: freeTexts(lattice)[0] ?? { text: best.text, probability: 0 },
    measurements: measureLine(tightCrop, tight, middles),
    ...(mayGoOn(tight, middles, photo) ? { mayGoOn: true as const } : {}),
  };
}

/**
 * How far one character is to be believed, from the engine's confidence in its word and whether two preparations of
 * the crop gave the same text. Fitted by eye to `npm run bench -- stamp`; the engine's own figure is far too high.
 */
function certaintyOf(confidence: number, agreed: boolean): number {
  return agreed ? 0.8 + 0.19 * confidence : 0.45 + 0.45 * confidence;
}

/** Likeness of a text to a code stamp and not to a name or leather: digits, capitals, a plausible length. */
function likenessToCode({ symbols, text, confidence }: Attempt): number {
  const seen = symbols.map((symbol) => symbol.choices[0]?.text ?? '');
  const digits = seen.filter((character) => /[0-9]/.test(character)).length;
  const clean = seen.filter((character) => /[A-Z0-9]/.test(character)).length / Math.max(1, seen.length);
  const length = text.length >= 3 && text.length <= 12 ? 1 : 0.4;
  return Math.min(
    1,
    (digits > 0 ? 0.4 + 0.6 * Math.min(1, digits / 3) : 0.15) * clean ** 2 * length * confidence ** 0.5,
  );
}

function cropBounds(boxes: readonly { x0: number; y0: number; x1: number; y1: number }[]): Quad {
  const x0 = Math.min(...boxes.map((box) => box.x0));
  const y0 = Math.min(...boxes.map((box) => box.y0));
  const x1 = Math.max(...boxes.map((box) => box.x1));
  const y1 = Math.max(...boxes.map((box) => box.y1));
  return [
    { x: x0, y: y0 },
    { x: x1, y: y0 },
    { x: x1, y: y1 },
    { x: x0, y: y1 },
  ];
}

/** The characters' own rectangle in the photo: the crop is a turned rectangle, so the map back is a straight one. */
function tightQuad(
  quad: Quad,
  crop: GreyImage,
  boxes: readonly { x0: number; y0: number; x1: number; y1: number }[],
): Quad {
  const [a, b, , d] = quad;
  const { across, down } = quadSize(quad);
  if (across === 0 || down === 0) return quad;
  return cropBounds(boxes).map(({ x, y }) => {
    const right = x / crop.width;
    const below = y / crop.height;
    return {
      x: a.x + (b.x - a.x) * right + (d.x - a.x) * below,
      y: a.y + (b.y - a.y) * right + (d.y - a.y) * below,
    };
  }) as Quad;
}
