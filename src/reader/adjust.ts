import type { Adjustment } from '../photo/adjustment-types';
import type { PixelImage, Point } from '../photo/types';

/** An adjusted picture, and how its points lie in the picture that it came from. */
export interface Adjusted {
  image: PixelImage;
  toWhole: (point: Point) => Point;
}

/** Cuts, turns clockwise and inverts, in this order. Turning by quarters loses nothing. */
export function adjustImage(whole: PixelImage, { crop, turn, invert }: Adjustment): Adjusted {
  const [left, top, right, bottom] = (crop ?? [0, 0, 1, 1]).map((share) => Math.min(1, Math.max(0, share))) as [
    number,
    number,
    number,
    number,
  ];
  const x0 = Math.min(whole.width - 1, Math.floor(left * whole.width));
  const y0 = Math.min(whole.height - 1, Math.floor(top * whole.height));
  const width = Math.max(1, Math.round(right * whole.width) - x0);
  const height = Math.max(1, Math.round(bottom * whole.height) - y0);
  const sideways = turn === 90 || turn === 270;
  const image: PixelImage = {
    width: sideways ? height : width,
    height: sideways ? width : height,
    data: new Uint8ClampedArray(width * height * 4),
  };
  const back = turnBack(turn, width, height);
  for (let y = 0; y < image.height; y++) {
    for (let x = 0; x < image.width; x++) {
      const from = back({ x: x + 0.5, y: y + 0.5 });
      const source = ((y0 + Math.floor(from.y)) * whole.width + x0 + Math.floor(from.x)) * 4;
      const target = (y * image.width + x) * 4;
      for (let channel = 0; channel < 3; channel++) {
        const value = whole.data[source + channel] ?? 0;
        image.data[target + channel] = invert ? 255 - value : value;
      }
      image.data[target + 3] = 255;
    }
  }
  return {
    image,
    toWhole: (point) => {
      const inCrop = back(point);
      return { x: inCrop.x + x0, y: inCrop.y + y0 };
    },
  };
}

/** A point of the turned picture → the same point before turning; `width` and `height` are those before turning. */
function turnBack(turn: Adjustment['turn'], width: number, height: number): (point: Point) => Point {
  if (turn === 90) return ({ x, y }) => ({ x: y, y: height - x });
  if (turn === 180) return ({ x, y }) => ({ x: width - x, y: height - y });
  if (turn === 270) return ({ x, y }) => ({ x: width - y, y: x });
  return (point) => point;
}
