import type { Point } from '../../../src/photo/types';

/** Where the phone is held: the plane of the piece is z = 0 and its unit is the millimetre. */
export interface CameraPose {
  /** Pixels. */
  width: number;
  height: number;
  /** Width of the plane that the middle of the picture shows, millimetres. */
  shows: number;
  /** Degrees: turned about the upright axis, tipped about the level axis, rolled in the picture. */
  yaw: number;
  pitch: number;
  roll: number;
  /** Point of the plane in the middle of the picture. */
  aim?: Point;
  /** Bow of the surface: millimetres that a line of 100 mm rises in its middle. */
  bow?: number;
}

/** Pinhole camera: from a picture's pixel to the plane. */
export function planePoint(pose: CameraPose): (u: number, v: number) => Point {
  const angle = (degrees: number) => (degrees * Math.PI) / 180;
  const [sy, cy] = [Math.sin(angle(pose.yaw)), Math.cos(angle(pose.yaw))];
  const [sp, cp] = [Math.sin(angle(pose.pitch)), Math.cos(angle(pose.pitch))];
  const [sr, cr] = [Math.sin(angle(pose.roll)), Math.cos(angle(pose.roll))];
  const focal = pose.width * 1.25;
  const away = (pose.shows * focal) / pose.width;
  // The camera looks along +z from (0, 0, -away), then is carried about the aim by the three turns.
  const turn = (x: number, y: number, z: number): [number, number, number] => {
    const [x1, y1] = [x * cr - y * sr, x * sr + y * cr];
    const [y2, z2] = [y1 * cp - z * sp, y1 * sp + z * cp];
    return [x1 * cy + z2 * sy, y2, -x1 * sy + z2 * cy];
  };
  const eye = turn(0, 0, -away);
  const aim = pose.aim ?? { x: 0, y: 0 };
  const bow = (pose.bow ?? 0) / 2500;
  return (u, v) => {
    const ray = turn(u - pose.width / 2, v - pose.height / 2, focal);
    const reach = -eye[2] / Math.max(ray[2], 1e-3);
    const x = eye[0] + ray[0] * reach + aim.x;
    const y = eye[1] + ray[1] * reach + aim.y;
    return { x, y: y - bow * (x - aim.x) ** 2 };
  };
}
