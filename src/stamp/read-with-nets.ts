import { type GreyImage, inPixelsOf, type Quad, quadSize, release } from '../photo';
import { askPrint } from './agreed';
import { lineAround, type PlacedCharacter, placedCharacters } from './align';
import { mayGoOn } from './at-edge';
import { bare } from './bare';
import { cropLine, growQuad } from './crop';
import type { FoundLine, PrintReader, StampNets } from './engines';
import { sharedGround } from './find/find-lines';
import { findSideways, looksAslant } from './find-turned';
import { fromLikelierSide } from './likelier-side';
import { lookCloser } from './look-closer';
import { type FullSize, looksAtFullSize, type PartAtFullSize } from './look-full-size';
import { looksLikeCode } from './looks-like-code';
import { measureLine } from './measure';
import { plusSigns, withSignsOpen } from './plus-signs';
import { startedPrint } from './print/when-needed';
import { reachOut } from './reach-out';
import { readPrintedLine } from './read-printed';
import { refit } from './refit';
import { lineOfBoth } from './same-row';
import { settleSides } from './settle-sides';
import { isPartedBySigns } from './sign';
import { type Spelt, speltBy } from './spelt';
import { sure } from './sure';
import type { StampLine } from './types';
import { hasWideGap } from './wide-gap';

type FreeText = Spelt['free'];
/** Pixels in which lines are read, and how their points lie in the photo. */
type Ground = Pick<PartAtFullSize, 'grey' | 'back' | 'factor'>;

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
/** Two boxes that share more ground than this are the same line. */
const sameGround = 0.3;
/**
 * Stamped lines by the nets: the finder looks at the whole photo, the recogniser only at lines worth reading. Where no
 * code is surely read, the finder looks again in a smaller size, in a larger one where the photo is small, then at the
 * photo turned by a quarter and by an eighth either way (a small one once more enlarged), and where none is found at all, at quarters of a large photo;
 * places where small lines seem to stand are looked at in the file's own pixels, where it has more. A line that is not
 * surely read is read from its other side too, and in boxes fitted to its characters. Lines that are likelier words than
 * a code also go to the print engine; where that trusts nothing (blind wording), words that the recogniser is sure of
 * stand for themselves. A code that neither look reads surely, and the print engine reads the same, is read.
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
  const lines: StampLine[] = [];
  const printed: string[] = [];
  let counted = 0;
  const isCode = ({ stampScore, free }: Pick<StampLine, 'stampScore' | 'free'>): boolean =>
    looksLikeCode(free.text) && stampScore >= nets.acceptance.stampScore;
  const isSure = (line: StampLine): boolean => isCode(line) && line.free.probability >= sure;
  const read = async (
    { quad, stampScore: seenAs }: FoundLine,
    { grey, back, factor }: Ground = whole,
  ): Promise<StampLine | null> => {
    const { across, down } = quadSize(quad);
    if (across < 4 || down < 4) return null;
    const spell = async (side: Quad) => speltBy(await nets.readLine(grey, side));
    const likelier = await fromLikelierSide(quad, spell);
    const { otherWay } = likelier;
    if (likelier.spelt.free.text === '' || isLoneShape(likelier.spelt.texts)) return null;
    const fitted = otherWay === null ? await refit(grey, likelier.quad, likelier.spelt, nets.margin, spell) : null;
    const { quad: standing, spelt } = fitted ?? likelier;
    const further = otherWay === null ? await reachOut(standing, spelt, spell) : null;
    const told = further?.spelt ?? spelt;
    const placed = placedCharacters(told.lattice);
    const isOpen = further?.spelt === null || hasWideGap(told, placed) || isPartedBySigns(told, placed);
    const middles = placed.map(({ middle }) => middle);
    const line = lineAround(standing, middles, nets.margin + (further?.spelt ? further.beyond : 0));
    const { lattice, texts, free } = withSignsLeftOpen(grey, told, placed, line);
    const crop = cropLine(grey, line.quad, 48);
    const measured = crop === null ? [] : measureLine(crop, line.quad, line.middles);
    return {
      id: `${photoId}-line-${++counted}`,
      photoId,
      quad: line.quad.map(back) as Quad,
      stampScore: withWhatItSays(seenAs, texts),
      engine: 'net',
      lattice,
      free,
      measurements: measured.map((one) => inPixelsOf(1 / factor, one)),
      ...(isOpen || mayGoOn(line.quad, line.middles, grey) ? { mayGoOn: true as const } : {}),
      ...(otherWay === null ? {} : { otherWay }),
    };
  };
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
    counts = (_: StampLine) => true,
    on: Ground = whole,
  ): Promise<void> => {
    if (on === whole) places.push(...found);
    for (const seen of found.slice(0, mostLines)) {
      const line = await read(seen, on);
      if (line === null || !counts(line)) continue;
      const same = lines.filter(({ quad }) => sharedGround(quad, line.quad) > sameGround);
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
    const line = await read(seen);
    if (line !== null) await add(line, seen.quad);
  }
  if (!lines.some(isSure)) await look(await nets.findLines(grey, againShare));
  const isSmall = Math.max(grey.width, grey.height) <= smallUpTo;
  if (isSmall && !lines.some(isSure)) await look(await nets.findLines(grey, enlarged));
  if (!lines.some(isSure)) await look(await findSideways(grey, nets));
  for (const lookAslant of looksAslant(grey, nets)) {
    if (!lines.some(isSure)) await look(await lookAslant(), isCodeNotGrain);
  }
  if (isSmall && !lines.some(isSure)) await look(await findSideways(grey, nets, enlarged), isCodeNotGrain);
  if (!lines.some(isCode)) await look(await lookCloser(grey, nets, lines));
  for (const lookThere of looksAtFullSize(places, grey, nets, full)) {
    const part = lines.some(isSure) ? null : await lookThere();
    if (part === null) continue;
    await look(part.found, isCode, part);
    release(part.grey.data);
  }
  await joinPieces(lines, read, isCode);
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

/** Ground above, below and beside a line in which its characters are seen whole, in heights. */
const aboveSigns = 0.3;
const besideSigns = 0.5;

/** What a line spells once signs among its characters that are likelier none are left open. */
function withSignsLeftOpen(
  grey: GreyImage,
  whole: Spelt,
  placed: readonly PlacedCharacter[],
  line: ReturnType<typeof lineAround>,
): Spelt {
  if (!looksLikeCode(whole.free.text)) return whole;
  const { across, down } = quadSize(line.quad);
  const beside = (besideSigns * down) / across;
  const middles = line.middles.map((middle) => (middle + beside) / (1 + 2 * beside));
  const crop = cropLine(grey, growQuad(line.quad, besideSigns, aboveSigns), 48);
  const signs = crop === null ? [] : plusSigns(crop, placed, middles);
  if (signs.length === 0) return whole;
  const open = signs.map((at) => placed[at]!);
  return speltBy(withSignsOpen(whole.lattice, open));
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

/**
 * Rivets, rings and slots look like one or two characters, and no code on file is shorter than three. A blurred stamp
 * may spell little as well, but then longer texts are likely too.
 */
function isLoneShape(texts: readonly FreeText[]): boolean {
  return shareOf(texts, ({ text }) => bare(text).length >= 3) < 0.2;
}

/**
 * How likely a line is a code stamp once it is read. The finder sees it small and takes many a code among words for a
 * word; a text that has the look of a code counts as much as what it saw, one that has not takes nothing away.
 */
const withWhatItSays = (seenAs: number, texts: readonly FreeText[]): number =>
  Math.max(seenAs, (seenAs + shareOf(texts, ({ text }) => looksLikeCode(text))) / 2);

const shareOf = (texts: readonly FreeText[], has: (text: FreeText) => boolean): number =>
  texts.filter(has).reduce((sum, { probability }) => sum + probability, 0);

/** Words in capitals, read with certainty: a maker's name, an origin. */
const isWording = ({ text, probability }: { text: string; probability: number }): boolean =>
  probability >= 0.8 && /[A-Z]{3}/.test(text);
