import { type GreyImage, type Quad, quadSize } from '../photo';
import { askPrint } from './agreed';
import { lineAround, type PlacedCharacter, placedCharacters } from './align';
import { mayGoOn } from './at-edge';
import { bare } from './bare';
import { cropLine, growQuad } from './crop';
import type { FoundLine, PrintReader, StampNets } from './engines';
import { sharedGround } from './find/find-lines';
import { findSideways, looksAslant } from './find-turned';
import { lookCloser } from './look-closer';
import { looksLikeCode } from './looks-like-code';
import { measureLine } from './measure';
import { plusSigns, withSignsOpen } from './plus-signs';
import { startedPrint } from './print/when-needed';
import { reachOut } from './reach-out';
import { readPrintedLine } from './read-printed';
import { lineOfBoth } from './same-row';
import { settleSides } from './settle-sides';
import { fromOtherSide, isReadFromBothSides } from './sides';
import { type Spelt, speltBy } from './spelt';
import type { Lattice, StampLine } from './types';
import { hasWideGap } from './wide-gap';

type FreeText = Spelt['free'];

/** Lines read at full size in one photo; a stamp has one to three. */
const mostLines = 6;
/** A code read with this probability needs no second look. */
const sure = 0.9;
/** A text with this probability is told, and is likelier than not what stands there. */
const likely = 0.6;
/** Size of the second look as a share of the first's: what was too large, or framed badly, is framed anew. */
const againShare = 0.7;
/** Two boxes that share more ground than this are the same line. */
const sameGround = 0.3;
/**
 * How likely a text must be from the other side to be taken instead, and how many times likelier: the finder was shown
 * upright lines only and frames one that stands on its head as well as any.
 */
const leastTurned = 0.5;
const timesLikelier = 2;
/** A text that is a code upside down too is left open from this probability on. */
const leastOtherWay = 0.5;

/**
 * Stamped lines by the nets: the finder looks at the whole photo, the recogniser only at lines worth reading. Where no
 * code is surely read, the finder looks again in a smaller size, then at the photo turned by a quarter and by an eighth
 * either way, and where none is found at all, at quarters of a large photo. A line that is not surely read is read from
 * its other side too. Lines that are likelier words than a code also go to the print engine; where that trusts nothing
 * (blind wording), words that the recogniser is sure of stand for themselves. A code that neither look reads surely, and the
 * print engine reads the same, is read.
 */
export async function readWithNets(
  grey: GreyImage,
  photoId: string,
  nets: StampNets,
  print: PrintReader | null,
): Promise<{ lines: StampLine[]; printed: string[] }> {
  const lines: StampLine[] = [];
  const printed: string[] = [];
  let counted = 0;
  const isCode = ({ stampScore, free }: Pick<StampLine, 'stampScore' | 'free'>): boolean =>
    looksLikeCode(free.text) && stampScore >= nets.acceptance.stampScore;
  const isSure = (line: StampLine): boolean => isCode(line) && line.free.probability >= sure;
  const read = async ({ quad, stampScore: seenAs }: FoundLine): Promise<StampLine | null> => {
    const { across, down } = quadSize(quad);
    if (across < 4 || down < 4) return null;
    const spell = async (side: Quad) => speltBy(await nets.readLine(grey, side));
    const { quad: standing, spelt, otherWay } = await fromLikelierSide(quad, spell);
    if (spelt.free.text === '' || isLoneShape(spelt.texts)) return null;
    const further = otherWay === null ? await reachOut(standing, spelt, spell) : null;
    const whole = further?.spelt ?? spelt;
    const placed = placedCharacters(whole.lattice);
    const isOpen = further?.spelt === null || hasWideGap(whole, placed);
    const middles = placed.map(({ middle }) => middle);
    const line = lineAround(standing, middles, nets.margin + (further?.spelt ? further.beyond : 0));
    const { lattice, texts, free } = withSignsLeftOpen(grey, whole, placed, line);
    const crop = cropLine(grey, line.quad, 48);
    return {
      id: `${photoId}-line-${++counted}`,
      photoId,
      quad: line.quad,
      stampScore: withWhatItSays(seenAs, texts),
      engine: 'net',
      lattice,
      free,
      measurements: crop === null ? [] : measureLine(crop, line.quad, line.middles),
      ...(isOpen || mayGoOn(line.quad, line.middles, grey) ? { mayGoOn: true as const } : {}),
      ...(otherWay === null ? {} : { otherWay }),
    };
  };
  const add = async (line: StampLine, seen: Quad): Promise<void> => {
    if (!isCode(line)) {
      const reader = await startedPrint(print);
      const words = reader === null ? '' : await readPrintedLine(grey, seen, reader);
      printed.push(words === '' && isWording(line.free) ? line.free.text : words);
    }
    lines.push(line);
  };
  const look = async (found: readonly FoundLine[], counts = (_: StampLine) => true): Promise<void> => {
    for (const seen of found.slice(0, mostLines)) {
      const line = await read(seen);
      if (line === null || !counts(line)) continue;
      const same = lines.filter(({ quad }) => sharedGround(quad, line.quad) > sameGround);
      if (same.length === 0) await add(line, seen.quad);
      else if (isCode(line) && same.every((other) => !isCode(other) || isSurer(line, other))) {
        const others = lines
          .map((other) => (other === same[0] ? line : other))
          .filter((other) => !same.includes(other));
        lines.splice(0, lines.length, ...others);
      }
    }
  };
  for (const seen of (await nets.findLines(grey)).slice(0, mostLines)) {
    const line = await read(seen);
    if (line !== null) await add(line, seen.quad);
  }
  if (!lines.some(isSure)) await look(await nets.findLines(grey, againShare));
  if (!lines.some(isSure)) await look(await findSideways(grey, nets));
  for (const lookAslant of looksAslant(grey, nets)) {
    if (!lines.some(isSure)) await look(await lookAslant(), (line) => isCode(line) && isNoGrain(line.free));
  }
  if (!lines.some(isCode)) await look(await lookCloser(grey, nets, lines));
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
      if (whole !== null && isCode(whole) && whole.free.probability >= leastTurned) {
        lines[at] = { ...whole, id: one.id };
        lines.splice(next--, 1);
      } else {
        lines[at] = { ...one, mayGoOn: true };
        lines[next] = { ...other, mayGoOn: true };
      }
    }
  }
}

/**
 * What a line spells as it was found, or from its other side where that is a code and clearly likelier. `otherWay` is
 * set where both sides spell likely codes, as those of 0, 1, 6, 8 and 9 do.
 */
async function fromLikelierSide(
  quad: Quad,
  spell: (quad: Quad) => Promise<Spelt>,
): Promise<{ quad: Quad; spelt: Spelt; otherWay: Lattice | null }> {
  const spelt = await spell(quad);
  const { text, probability } = spelt.free;
  const isSure = probability >= sure;
  if (isSure && !(looksLikeCode(text) && isReadFromBothSides(text))) return { quad, spelt, otherWay: null };
  const over = await spell(fromOtherSide(quad));
  const isCode = looksLikeCode(over.free.text);
  if (isSure) {
    const isLikely = isCode && over.free.probability >= leastOtherWay && over.free.text !== text;
    return { quad, spelt, otherWay: isLikely ? over.lattice : null };
  }
  const isLikelier = over.free.probability >= Math.max(leastTurned, timesLikelier * probability);
  return isCode && isLikelier
    ? { quad: fromOtherSide(quad), spelt: over, otherWay: null }
    : { quad, spelt, otherWay: null };
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
 * A second view of a line replaces the first only where it is clearly the surer one: what differs is mostly the box. One
 * that sees the line go on past its box, or spells a part of what is likely read already, saw less of it.
 */
function isSurer(line: StampLine, other: StampLine): boolean {
  const [less, more] = [bare(line.free.text), bare(other.free.text)];
  const isPiece = less.length < more.length && more.includes(less);
  if ((line.mayGoOn && !other.mayGoOn) || (isPiece && other.free.probability >= likely)) return false;
  return line.free.probability > other.free.probability + 0.1;
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
