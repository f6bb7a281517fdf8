import { quadSize } from '../photo';
import { bare } from './bare';
import { freeTexts } from './free-text';
import { weighRuns } from './runs';
import { angleBetween, directionOf, fromOtherSide, isReadFromBothSides } from './sides';
import { sure } from './sure';
import type { StampLine } from './types';

const leastCharacters = 3;

/**
 * Settles lines that spell a code from both sides by the other lines of the photo: words and codes of one piece are
 * mostly struck the same way up. What no other line settles keeps both ways, for the code system to settle or to be
 * left open.
 */
export function settleSides(lines: readonly StampLine[]): StampLine[] {
  const showing = lines.filter(
    ({ free, otherWay }) =>
      otherWay === undefined &&
      free.probability >= sure &&
      bare(free.text).length >= leastCharacters &&
      !isReadFromBothSides(free.text),
  );
  return lines.map((line) => {
    if (line.otherWay === undefined) return line;
    const near = showing
      .map((other) => ({ other, apart: distance(line, other) }))
      .sort((a, b) => a.apart - b.apart)[0]?.other;
    if (near === undefined) return line;
    const angle = angleBetween(directionOf(line.quad), directionOf(near.quad));
    const { otherWay, ...settled } = line;
    if (angle < 45) return settled;
    return angle > 135 ? turnedLine(line) : line;
  });
}

/** The line as it reads from its other side, and as nothing else. */
export function turnedLine({ otherWay, ...line }: StampLine): StampLine {
  if (otherWay === undefined) return line;
  const free = weighRuns(freeTexts(otherWay, 40, 40))[0] ?? line.free;
  return {
    ...line,
    quad: fromOtherSide(line.quad),
    lattice: otherWay,
    free: { text: free.text, probability: free.probability },
  };
}

function distance(one: StampLine, other: StampLine): number {
  const middle = ({ quad }: StampLine) => ({ x: (quad[0].x + quad[2].x) / 2, y: (quad[0].y + quad[2].y) / 2 });
  const [a, b] = [middle(one), middle(other)];
  return Math.hypot(a.x - b.x, a.y - b.y) / Math.max(1, quadSize(one.quad).down);
}
