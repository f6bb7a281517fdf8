import { type GreyImage, type Quad, release } from '../photo';
import { askPrint } from './agreed';
import { bare } from './bare';
import type { FoundLine, PrintReader, StampNets } from './engines';
import { isSameLine } from './find/find-lines';
import { findSideways, looksAslant, mayLieAskew } from './find-turned';
import { type Ground, lineReader } from './line-reader';
import { lookCloser } from './look-closer';
import { type FullSize, looksAtFullSize } from './look-full-size';
import { looksLikeCode } from './looks-like-code';
import { startedPrint } from './print/when-needed';
import {
  type PlaceRead,
  type Settling,
  settledFromAskew,
  settledFromOtherSide,
  settledFromSameSide,
} from './read-already';
import { readPrintedLine } from './read-printed';
import { lineOfBoth } from './same-row';
import { settleSides } from './settle-sides';
import type { Spelt } from './spelt';
import { sure } from './sure';
import type { StampLine } from './types';

type FreeText = Spelt['free'];
/** Lines read at full size in one photo; a stamp has one to three. */
const mostLines = 6;
/** A text with this probability is told, and is likelier than not what stands there. */
const likely = 0.6;
/** Size of the second look as a share of the first's: what was too large, or framed badly, is framed anew. */
const againShare = 0.7;
/**
 * How many times a small photo is enlarged for a look, and the longest side up to which it is one, pixels: lines of a few
 * pixels are found there, and framed better. Own measurement on real photographs.
 */
const enlarged = 2.5;
const smallUpTo = 800;
/** Pieces are one line where together they spell a code that is this likely. */
const leastJoined = 0.5;

/**
 * Stamped lines by the nets: the finder looks at the whole photo, the recogniser only at lines worth reading. Where no
 * code is surely read, the finder looks again in a smaller size, in a larger one where the photo is small, then at the
 * photo turned by a quarter and by an eighth either way (a small one once more enlarged), and where none is found at all, at quarters of a large photo;
 * places where small lines seem to stand are looked at in the file's own pixels, where it has more. A line that is not
 * surely read is read from its other side too, and in boxes fitted to its characters. Lines that are likelier words than
 * a code also go to the print engine; where that trusts nothing (blind wording), words that the recogniser is sure of
 * stand for themselves. A code that neither look reads surely, and the print engine reads the same, is read. What an
 * earlier look read is read again only where the later one may frame it better.
 */
export async function readWithNets(
  grey: GreyImage,
  photoId: string,
  nets: StampNets,
  print: PrintReader | null,
  full: FullSize | null = null,
): Promise<{ lines: StampLine[]; printed: string[] }> {
  const whole: Ground = { grey, back: (point) => point, factor: 1 };
  /** All that was found in the photo, also what spelt nothing. */
  const places: FoundLine[] = [];
  /** What was read of it, in pixels of the whole photo. */
  const placesRead: PlaceRead[] = [];
  const lines: StampLine[] = [];
  const printed: string[] = [];
  const isCode = ({ stampScore, free }: Pick<StampLine, 'stampScore' | 'free'>): boolean =>
    looksLikeCode(free.text) && stampScore >= nets.acceptance.stampScore;
  const isSure = (line: StampLine): boolean => isCode(line) && line.free.probability >= sure;
  const read = lineReader(nets, photoId);
  const add = async (line: StampLine, seen: Quad, { grey }: Ground = whole): Promise<void> => {
    if (!isCode(line)) {
      const reader = await startedPrint(print);
      const words = reader === null ? '' : await readPrintedLine(grey, seen, reader);
      printed.push(words === '' && isWording(line.free) ? line.free.text : words);
    }
    lines.push(line);
  };
  const look = async (
    found: readonly FoundLine[],
    {
      isSettled = () => false,
      counts = () => true,
      on = whole,
    }: { isSettled?: Settling; counts?: (line: StampLine) => boolean; on?: Ground } = {},
  ): Promise<void> => {
    if (on === whole) places.push(...found);
    for (const seen of found.slice(0, mostLines)) {
      if (isSettled(seen.quad, placesRead)) continue;
      const line = await read(seen, on);
      if (on === whole) placesRead.push({ quad: seen.quad, line });
      if (line === null || !counts(line)) continue;
      const same = lines.filter(({ quad }) => isSameLine(quad, line.quad));
      if (same.length === 0) await add(line, seen.quad, on);
      else if (isCode(line) && same.every((other) => !isCode(other) || isSurer(line, other))) {
        const others = lines
          .map((other) => (other === same[0] ? line : other))
          .filter((other) => !same.includes(other));
        lines.splice(0, lines.length, ...others);
      }
    }
  };
  const isCodeNotGrain = (line: StampLine): boolean => isCode(line) && isNoGrain(line.free);
  places.push(...(await nets.findLines(grey)));
  for (const seen of places.slice(0, mostLines)) {
    const line = await read(seen, whole);
    placesRead.push({ quad: seen.quad, line });
    if (line !== null) await add(line, seen.quad);
  }
  if (!lines.some(isSure)) await look(await nets.findLines(grey, againShare), { isSettled: settledFromSameSide });
  const isSmall = Math.max(grey.width, grey.height) <= smallUpTo;
  if (isSmall && !lines.some(isSure)) await look(await nets.findLines(grey, enlarged));
  if (!lines.some(isSure)) await look(await findSideways(grey, nets), { isSettled: settledFromOtherSide });
  for (const { level, find } of looksAslant(grey, nets)) {
    if (lines.some(isSure) || !mayLieAskew(places, lines)) continue;
    await look(await find(), { isSettled: settledFromAskew(level), counts: isCodeNotGrain });
  }
  if (isSmall && !lines.some(isSure)) await look(await findSideways(grey, nets, enlarged), { counts: isCodeNotGrain });
  if (!lines.some(isCode)) await look(await lookCloser(grey, nets, lines));
  for (const lookThere of looksAtFullSize(places, grey, nets, full)) {
    const part = lines.some(isSure) ? null : await lookThere();
    if (part === null) continue;
    await look(part.found, { counts: isCode, on: part });
    release(part.grey.data);
  }
  await joinPieces(lines, (found) => read(found, whole), isCode);
  if (!lines.some(isSure)) await askPrint(lines.filter(isCode), lines, grey, print);
  return { lines: settleSides(lines), printed };
}

/**
 * Pieces of one line are read as one; where that spells no likely code neither piece passes for a whole one. The joined
 * line takes the place and the name of the first piece.
 */
async function joinPieces(
  lines: StampLine[],
  read: (found: FoundLine) => Promise<StampLine | null>,
  isCode: (line: StampLine) => boolean,
): Promise<void> {
  for (let at = 0; at < lines.length; at++) {
    for (let next = at + 1; next < lines.length; next++) {
      const [one, other] = [lines[at]!, lines[next]!];
      if (!isCode(one) && !isCode(other)) continue;
      const quad = lineOfBoth(one.quad, other.quad);
      if (quad === null) continue;
      const whole = await read({ quad, stampScore: Math.max(one.stampScore, other.stampScore) });
      if (whole !== null && isCode(whole) && whole.free.probability >= leastJoined) {
        lines[at] = { ...whole, id: one.id };
        lines.splice(next--, 1);
      } else {
        lines[at] = { ...one, mayGoOn: true };
        lines[next] = { ...other, mayGoOn: true };
      }
    }
  }
}

/** Few stamps lie askew, and much leather does: a few characters seen there have to be sure, more of them likely. */
const manyCharacters = 5;
const isNoGrain = ({ text, probability }: FreeText): boolean =>
  probability >= (bare(text).length >= manyCharacters ? likely : sure);

/**
 * A second view of a line replaces the first only where it is clearly the surer one, or surely reads what the first likely
 * did: what differs is mostly the box. One that sees the line go on past its box, or spells a part of what is likely read
 * already, saw less of it.
 */
function isSurer(line: StampLine, other: StampLine): boolean {
  const [less, more] = [bare(line.free.text), bare(other.free.text)];
  const [now, before] = [line.free.probability, other.free.probability];
  const isPiece = less.length < more.length && more.includes(less);
  if ((line.mayGoOn && !other.mayGoOn) || (isPiece && before >= likely)) return false;
  const makesSure = less === more && before >= likely && before < sure && now >= sure;
  return makesSure || now > before + 0.1;
}

/** Words in capitals, read with certainty: a maker's name, an origin. */
const isWording = ({ text, probability }: { text: string; probability: number }): boolean =>
  probability >= 0.8 && /[A-Z]{3}/.test(text);
