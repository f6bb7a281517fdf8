import type { Point } from '../../photo';

/** How a picture lies in the element that it shares with what lies on it: both in shares, of the picture and of the element. */
export interface PhotoOnScreen {
  toScreen: (point: Point) => Point;
  toPhoto: (point: Point) => Point;
  /** Shares of the element that a press of an arrow key goes, and that it goes with Shift. */
  step: { across: number; down: number };
  stride: { across: number; down: number };
}

const same = (point: Point): Point => point;

/** A picture that fills the element. */
export const plainly: PhotoOnScreen = {
  toScreen: same,
  toPhoto: same,
  step: { across: 0.002, down: 0.002 },
  stride: { across: 0.02, down: 0.02 },
};
