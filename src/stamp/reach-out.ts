import { type Quad, quadSize } from '../photo';
import { reachOfNext } from './at-edge';
import { growQuad } from './crop';
import { looksLikeCode } from './looks-like-code';
import type { Spelt } from './spelt';

/** How far past each end of a line is read, in heights: two characters, as a box that stops short stops by one or two. */
const reach = 1.5;
/** A line that is hardly read is not worth a look further. */
const leastRead = 0.5;
/** From this probability on, what stands further along the row is read; grain that looks like a character is not. */
const leastFurther = 0.9;
/** How likely it is that more stands there, and how likely at most that nothing does, where the line goes on surely. */
const leastMore = 0.5;
const mostNothing = 0.1;
/** How likely it is at least, at each step past a line's ends, that nothing stands there, where its ends are seen. */
const surelyNothing = 0.99;
/** From this probability on, what stands there is told, though not sure; below it the line is left open. */
const leastTold = 0.6;

/**
 * What a line spells once it is read past its ends, where characters go on there without a gap: the box stopped short, at
 * a dash mostly, and its part would pass for a whole code. Words that a gap parts from the line are no part of it.
 * `beyond` is how far that lattice reaches past the quad's ends, in heights. A line whose ends were seen in the ground that
 * its lattice covers, `margin` heights past each, is not read further. `spelt` is null where the line likely goes on
 * and what it says there is not sure; the answer is null where the line is whole as it is.
 */
export async function reachOut(
  quad: Quad,
  read: Spelt,
  margin: number,
  spell: (quad: Quad) => Promise<Spelt>,
): Promise<{ spelt: Spelt | null; beyond: number } | null> {
  const { free } = read;
  if (!looksLikeCode(free.text) || free.probability < leastRead || showsItsEnds(quad, read, margin)) return null;
  const spelt = await spell(growQuad(quad, reach, 0));
  const isToldLonger = goesOn(free.text, spelt.free.text);
  if (isToldLonger && spelt.free.probability >= leastFurther) return { spelt, beyond: reach };
  const shareOf = (is: (text: string) => boolean): number =>
    spelt.texts.filter(({ text }) => is(text)).reduce((sum, { probability }) => sum + probability, 0);
  const isLonger = shareOf((text) => goesOn(free.text, text)) >= leastMore;
  if (!isLonger || shareOf((text) => text === free.text) > mostNothing) return null;
  return { spelt: isToldLonger && spelt.free.probability >= leastTold ? spelt : null, beyond: reach };
}

/** Whether a lattice shows at both ends that nothing stands where a further character would. */
function showsItsEnds(quad: Quad, { lattice, placed }: Spelt, margin: number): boolean {
  const { across, down } = quadSize(quad);
  const [first, last] = [placed[0], placed.at(-1)];
  if (first === undefined || last === undefined || !(across > 0)) return false;
  const next = reachOfNext(
    placed.map(({ middle }) => middle),
    down / (across + 2 * margin * down),
  );
  if (first.middle < next || last.middle + next > 1) return false;
  const outside = [...lattice.steps.slice(0, first.steps[0]), ...lattice.steps.slice(last.steps.at(-1)! + 1)];
  return outside.every((step) => (step[''] ?? 0) >= surelyNothing);
}

/** Whether a text holds another and more, and what is more stands close by at every end. */
export function goesOn(text: string, further: string): boolean {
  const at = further.indexOf(text);
  if (at === -1 || text === '') return false;
  const [before, after] = [further.slice(0, at), further.slice(at + text.length)];
  const isClose = !before.endsWith(' ') && !after.startsWith(' ');
  return isClose && /[A-Z0-9]/.test(before + after);
}
