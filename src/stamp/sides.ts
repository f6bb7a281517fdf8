import type { GreyImage, Point, Quad } from '../photo';

/** The same line read from its other side: turned by half. */
export const fromOtherSide = ([a, b, c, d]: Quad): Quad => [c, d, a, b];

/** An image turned by a quarter clockwise, and how points of the turned one lie in the first. */
export function quarterTurn(image: GreyImage): { turned: GreyImage; back: (point: Point) => Point } {
  const { width, height, data } = image;
  const turned = { width: height, height: width, data: new Float32Array(data.length) };
  for (let row = 0; row < height; row++) {
    const column = height - 1 - row;
    for (let x = 0; x < width; x++) turned.data[x * height + column] = data[row * width + x]!;
  }
  return { turned, back: ({ x, y }) => ({ x: y, y: height - x }) };
}

/**
 * Characters that are characters upside down too. From the shapes of plain capitals and figures; a 1 with a long flag
 * or an 8 with a small head gives its side away, which the recogniser has to see.
 */
const sameUpsideDown = /^[01689HINOSXZMW]+$/;

/** Whether a text may be another text, or the same, seen from the other side. */
export const isReadFromBothSides = (text: string): boolean => sameUpsideDown.test(text.replace(/[^A-Z0-9]/g, ''));

/** Turn of a line's reading direction, degrees clockwise from the photo's right. */
export function directionOf([a, b]: Quad): number {
  return (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
}

/** Smallest angle between two directions, 0 to 180 degrees. */
export const angleBetween = (one: number, other: number): number => {
  const apart = Math.abs(one - other) % 360;
  return apart > 180 ? 360 - apart : apart;
};
