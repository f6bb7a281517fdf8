import { type GreyImage, inPixelsOf, type Quad, quadSize, release } from '../photo';
import { lineAround } from './align';
import { mayGoOn } from './at-edge';
import { bare } from './bare';
import { cropLine, growQuad } from './crop';
import type { FoundLine, StampNets } from './engines';
import { fromLikelierSide } from './likelier-side';
import type { PartAtFullSize } from './look-full-size';
import { looksLikeCode } from './looks-like-code';
import { measureLine } from './measure';
import { plusSigns, withSignsOpen } from './plus-signs';
import { reachOut } from './reach-out';
import { refit } from './refit';
import { isPartedBySigns } from './sign';
import { type Spelt, speltBy } from './spelt';
import type { StampLine } from './types';
import { hasWideGap } from './wide-gap';

type FreeText = Spelt['free'];
/** Pixels in which lines are read, and how their points lie in the photo. */
export type Ground = Pick<PartAtFullSize, 'grey' | 'back' | 'factor'>;

/** Reads lines of one photo, each under a name of its own, in pixels of that photo; null for what is none. */
export function lineReader(nets: StampNets, photoId: string) {
  let counted = 0;
  return async ({ quad, stampScore: seenAs }: FoundLine, { grey, back, factor }: Ground): Promise<StampLine | null> => {
    const { across, down } = quadSize(quad);
    if (across < 4 || down < 4) return null;
    const spell = async (side: Quad) => speltBy(await nets.readLine(grey, side));
    const likelier = await fromLikelierSide(quad, spell);
    const { otherWay } = likelier;
    if (likelier.spelt.free.text === '' || isLoneShape(likelier.spelt.texts)) return null;
    const fitted = otherWay === null ? await refit(grey, likelier.quad, likelier.spelt, nets.margin, spell) : null;
    const { quad: standing, spelt } = fitted ?? likelier;
    const further = otherWay === null ? await reachOut(standing, spelt, nets.margin, spell) : null;
    const told = further?.spelt ?? spelt;
    const isOpen = further?.spelt === null || hasWideGap(told) || isPartedBySigns(told);
    const middles = told.placed.map(({ middle }) => middle);
    const line = lineAround(standing, middles, nets.margin + (further?.spelt ? further.beyond : 0));
    const { lattice, texts, free } = withSignsLeftOpen(grey, told, line);
    const crop = cropLine(grey, line.quad, 48);
    const measured = crop === null ? [] : measureLine(crop, line.quad, line.middles);
    if (crop !== null) release(crop.data);
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
}

/** Ground above, below and beside a line in which its characters are seen whole, in heights. */
const aboveSigns = 0.3;
const besideSigns = 0.5;

/** What a line spells once signs among its characters that are likelier none are left open. */
function withSignsLeftOpen(grey: GreyImage, whole: Spelt, line: ReturnType<typeof lineAround>): Spelt {
  if (!looksLikeCode(whole.free.text)) return whole;
  const { across, down } = quadSize(line.quad);
  const beside = (besideSigns * down) / across;
  const middles = line.middles.map((middle) => (middle + beside) / (1 + 2 * beside));
  const crop = cropLine(grey, growQuad(line.quad, besideSigns, aboveSigns), 48);
  const signs = crop === null ? [] : plusSigns(crop, whole.placed, middles);
  if (signs.length === 0) return whole;
  const open = signs.map((at) => whole.placed[at]!);
  return speltBy(withSignsOpen(whole.lattice, open));
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
