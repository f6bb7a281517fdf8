import type { Point } from '../../photo';

/** How a photo lies in its stage: turned clockwise by degrees and enlarged around its top left corner, which lies at (x, y). */
export interface View {
  zoom: number;
  turn: number;
  x: number;
  y: number;
}

export interface Size {
  width: number;
  height: number;
}

const [leastZoom, mostZoom] = [0.02, 32];

/** A point of the photo, in its pixels → the stage, in CSS pixels. */
export function toStage({ zoom, turn, x, y }: View, point: Point): Point {
  const { cosine, sine } = angle(turn);
  return {
    x: x + zoom * (cosine * point.x - sine * point.y),
    y: y + zoom * (sine * point.x + cosine * point.y),
  };
}

/** A point of the stage → the photo, in its pixels. */
export function toPhoto({ zoom, turn, x, y }: View, point: Point): Point {
  const { cosine, sine } = angle(turn);
  const [across, down] = [(point.x - x) / zoom, (point.y - y) / zoom];
  return { x: cosine * across + sine * down, y: cosine * down - sine * across };
}

/** The view with another zoom and turn, in which a point of the stage shows what it showed before. */
export function holding(view: View, held: Point, change: Partial<Pick<View, 'zoom' | 'turn'>>): View {
  const at = toPhoto(view, held);
  const zoom = Math.min(mostZoom, Math.max(leastZoom, change.zoom ?? view.zoom));
  const changed = { ...view, zoom, turn: change.turn ?? view.turn };
  const now = toStage(changed, at);
  return { ...changed, x: changed.x + held.x - now.x, y: changed.y + held.y - now.y };
}

export const moved = (view: View, across: number, down: number): View => ({
  ...view,
  x: view.x + across,
  y: view.y + down,
});

/** The whole photo in the middle of the stage, at most at its own size, turned as it was. */
export function fitting(stage: Size, photo: Size, turn = 0): View {
  const { cosine, sine } = angle(turn);
  const [c, s] = [Math.abs(cosine), Math.abs(sine)];
  const [across, down] = [c * photo.width + s * photo.height, s * photo.width + c * photo.height];
  const zoom = Math.max(leastZoom, Math.min(stage.width / across, stage.height / down));
  return centred({ zoom, turn, x: 0, y: 0 }, stage, { x: photo.width / 2, y: photo.height / 2 });
}

/** The view with a point of the photo in the middle of the stage. */
function centred(view: View, stage: Size, point: Point): View {
  const at = toStage({ ...view, x: 0, y: 0 }, point);
  return { ...view, x: stage.width / 2 - at.x, y: stage.height / 2 - at.y };
}

function angle(turn: number): { cosine: number; sine: number } {
  const radians = (turn * Math.PI) / 180;
  return { cosine: Math.cos(radians), sine: Math.sin(radians) };
}
