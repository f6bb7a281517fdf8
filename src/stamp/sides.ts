import { type GreyImage, type Point, type Quad, release, resizeGrey, sampleGrey, sizeWithin } from '../photo';
import { bare } from './bare';

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
 * An image turned clockwise by any angle, shrunk so that its longer side is at most `longest`, nothing cut off, on a ground
 * of its mean; and how points of the turned one lie in the first.
 */
export function turnedBy(
  image: GreyImage,
  degrees: number,
  longest: number,
): { turned: GreyImage; back: (point: Point) => Point } {
  const angle = (degrees * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(angle), Math.sin(angle)];
  const across = Math.abs(image.width * cosine) + Math.abs(image.height * sine);
  const down = Math.abs(image.width * sine) + Math.abs(image.height * cosine);
  const scale = Math.min(1, longest / Math.max(across, down));
  const { width, height } = sizeWithin(image.width, image.height, scale * Math.max(image.width, image.height));
  const small = width === image.width ? image : resizeGrey(image, width, height);
  const turned = { width: Math.ceil(across * scale), height: Math.ceil(down * scale) };
  const data = new Float32Array(turned.width * turned.height).fill(meanOf(small));
  for (let row = 0; row < turned.height; row++) {
    for (let column = 0; column < turned.width; column++) {
      const [u, v] = [column + 0.5 - turned.width / 2, row + 0.5 - turned.height / 2];
      const [x, y] = [u * cosine + v * sine + width / 2, v * cosine - u * sine + height / 2];
      const isInside = x >= 0 && y >= 0 && x <= width && y <= height;
      if (isInside) data[row * turned.width + column] = sampleGrey(small, x, y);
    }
  }
  if (small !== image) release(small.data);
  return {
    turned: { ...turned, data },
    back({ x, y }) {
      const [u, v] = [x - turned.width / 2, y - turned.height / 2];
      return {
        x: ((u * cosine + v * sine) / width + 0.5) * image.width,
        y: ((v * cosine - u * sine) / height + 0.5) * image.height,
      };
    },
  };
}

function meanOf({ data }: GreyImage): number {
  let sum = 0;
  for (let at = 0; at < data.length; at++) sum += data[at]!;
  return sum / data.length;
}

/**
 * Characters that are characters upside down too. From the shapes of plain capitals and figures; a 1 with a long flag
 * or an 8 with a small head gives its side away, which the recogniser has to see.
 */
const sameUpsideDown = /^[01689HINOSXZMW]+$/;

/** Whether a text may be another text, or the same, seen from the other side. */
export const isReadFromBothSides = (text: string): boolean => sameUpsideDown.test(bare(text));

/** Turn of a line's reading direction, degrees clockwise from the photo's right. */
export function directionOf([a, b]: Quad): number {
  return (Math.atan2(b.y - a.y, b.x - a.x) * 180) / Math.PI;
}

/** Smallest angle between two directions, 0 to 180 degrees. */
export const angleBetween = (one: number, other: number): number => {
  const apart = Math.abs(one - other) % 360;
  return apart > 180 ? 360 - apart : apart;
};
