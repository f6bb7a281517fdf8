import { type GreyImage, type Point, type Quad, quadSize } from '../photo';
import { lineAround } from './align';
import { bare } from './bare';
import { between } from './between';
import { growQuad } from './crop';
import { fitRows } from './fit-rows';
import { looksLikeCode } from './looks-like-code';
import type { Spelt } from './spelt';
import { sure } from './sure';

/** A reading that is less likely says nothing of where its characters stand, and fewer of them measure no pitch. */
const leastRead = 0.3;
const leastCharacters = 4;
/** Half a character in pitches, without the air beside it, and the most that it is in heights. */
const halfPitch = 0.45;
const halfHeight = 0.4;
/** How much lower the third box is than the second, in heights at its upper and lower side. */
const tighter = 0.07;

/** A reading of a line in one box. */
interface Read {
  quad: Quad;
  spelt: Spelt;
}

/**
 * What a line that is not surely read spells in a box that is fitted to the characters that were read in it: its ends to
 * the first and last of them, its upper and lower side to where they stand out. It is read in three such boxes (the ends
 * fitted, the rows too, and these a little lower); what most of them say counts, as likely as in the box that is neither
 * the surest nor the least sure of it. Null where that is no likelier than what was read at first, or no two boxes spell
 * the same.
 */
export async function refit(
  grey: GreyImage,
  quad: Quad,
  first: Spelt,
  margin: number,
  spell: (quad: Quad) => Promise<Spelt>,
): Promise<Read | null> {
  const { text, probability } = first.free;
  if (probability < leastRead || probability >= sure) return null;
  if (!looksLikeCode(text) || bare(text).length < leastCharacters) return null;
  const middles = first.placed.map(({ middle }) => middle);
  const read: Read[] = [];
  for (const box of boxesFittedTo(grey, lineAround(quad, middles, margin))) {
    // Of three the middle one counts: where two are no likelier than what was read, a third changes nothing.
    if (read.length === 2 && read.every(({ spelt }) => spelt.free.probability <= probability)) return null;
    read.push({ quad: box, spelt: await spell(box) });
  }
  const middle = middleOf(read);
  return middle !== null && middle.spelt.free.probability > probability ? middle : null;
}

const said = ({ text }: { text: string }): string => bare(text.toUpperCase());

/** Of three readings the one that says what most of them do, and is neither the surest nor the least sure of it. */
function middleOf(read: readonly Read[]): Read | null {
  const alike = (one: Read): Read[] => read.filter(({ spelt }) => said(spelt.free) === said(one.spelt.free));
  const most = read.map(alike).find(({ length }) => length >= 2) ?? [];
  return [...most].sort((a, b) => b.spelt.free.probability - a.spelt.free.probability)[1] ?? null;
}

function boxesFittedTo(grey: GreyImage, { quad, middles }: ReturnType<typeof lineAround>): Quad[] {
  const [start, end] = [middles[0], middles.at(-1)];
  const { across, down } = quadSize(quad);
  if (start === undefined || end === undefined || middles.length < leastCharacters) return [];
  const gaps = middles.slice(1).map((middle, at) => middle - middles[at]!);
  const pitch = gaps.sort((a, b) => a - b)[gaps.length >> 1]!;
  const half = Math.min(pitch * halfPitch, (halfHeight * down) / across);
  const ended = partOf(quad, start - half, end + half, 0, 1);
  const fit = fitRows(grey, ended);
  if (fit === null) return [];
  const fitted = partOf(ended, 0, 1, fit.top, fit.bottom);
  return [ended, fitted, growQuad(fitted, 0, -tighter)];
}

/** The quad between shares of its width and of its height; they may lie outside. */
function partOf([a, b, c, d]: Quad, from: number, to: number, top: number, bottom: number): Quad {
  const at = (along: number, below: number): Point => between(between(a, b, along), between(d, c, along), below);
  return [at(from, top), at(to, top), at(to, bottom), at(from, bottom)];
}
