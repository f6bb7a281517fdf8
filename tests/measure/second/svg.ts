import sharp from 'sharp';
import type { PixelImage, Point } from '../../../src/photo/types';
import type { Grade } from '../photographed';
import type { Chance } from '../random';

/** A drawing laid flat: pixels of a table on which the piece lies, three times as fine as the photo. */
export interface Sheet {
  width: number;
  height: number;
  data: Buffer;
}

/** Draws with a library for vector pictures, nothing of which the first renderer uses. */
export async function drawn(svg: string, width: number, height: number): Promise<Sheet> {
  const data = await sharp(
    Buffer.from(`<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}">${svg}</svg>`),
  )
    .flatten({ background: '#808080' })
    .removeAlpha()
    .raw()
    .toBuffer();
  return { width, height, data };
}

const taken = {
  clear: { yaw: 5, away: 3.2, soft: [0.2, 0.6], grain: [0.5, 2], quality: [90, 96], glare: 0.05 },
  fair: { yaw: 13, away: 2.6, soft: [0.6, 1.2], grain: [2, 4], quality: [72, 88], glare: 0.15 },
  hard: { yaw: 22, away: 2.2, soft: [1, 1.8], grain: [4, 8], quality: [50, 72], glare: 0.3 },
} as const satisfies Record<Grade, unknown>;

/** A camera held over a sheet: turned and tipped by degrees about its middle, `away` sheet widths off. */
export interface Held {
  width: number;
  height: number;
  /** Place on the sheet, in photo pixels of the sheet held straight → the photo. */
  seen(at: Point): Point;
  matrix: number[][];
}

export function held(width: number, height: number, grade: Grade, draw: Chance): Held {
  const rules = taken[grade];
  const [yaw, pitch] = [draw.between(-rules.yaw, rules.yaw), draw.between(-rules.yaw, rules.yaw)].map(
    (d) => (d * Math.PI) / 180,
  ) as [number, number];
  const roll = (draw.between(-4, 4) * Math.PI) / 180;
  const away = rules.away * width;
  const [cy, sy, cp, sp, cr, sr] = [
    Math.cos(yaw),
    Math.sin(yaw),
    Math.cos(pitch),
    Math.sin(pitch),
    Math.cos(roll),
    Math.sin(roll),
  ];
  // Columns of the turned sheet's axes, then the pinhole.
  const axis = (x: number, y: number): [number, number, number] => {
    const [x1, y1] = [x * cr - y * sr, x * sr + y * cr];
    return [x1 * cy, y1 * cp + x1 * sy * sp, away + x1 * sy * cp - y1 * sp];
  };
  const [ux, uy, uz] = axis(1, 0).map((part, at) => part - (at === 2 ? away : 0)) as [number, number, number];
  const [vx, vy, vz] = axis(0, 1).map((part, at) => part - (at === 2 ? away : 0)) as [number, number, number];
  const [mx, my] = [width / 2, height / 2];
  // photo = away · (u·(x−mx) + v·(y−my)) / (away + z), about the middle.
  const matrix = [
    [away * ux + mx * uz, away * vx + mx * vz, away * (mx - ux * mx - vx * my) - mx * (uz * mx + vz * my)],
    [away * uy + my * uz, away * vy + my * vz, away * (my - uy * mx - vy * my) - my * (uz * mx + vz * my)],
    [uz, vz, away - uz * mx - vz * my],
  ];
  const seen = ({ x, y }: Point): Point => {
    const [a, b, c] = matrix.map((row) => row[0]! * x + row[1]! * y + row[2]!) as [number, number, number];
    return { x: a / c, y: b / c };
  };
  return { width, height, seen, matrix };
}

function inverse([p, q, r]: number[][]): number[][] {
  const cross = (a: number[], b: number[]): number[] => [
    a[1]! * b[2]! - a[2]! * b[1]!,
    a[2]! * b[0]! - a[0]! * b[2]!,
    a[0]! * b[1]! - a[1]! * b[0]!,
  ];
  const columns = [cross(q!, r!), cross(r!, p!), cross(p!, q!)];
  const whole = p!.reduce((sum, part, at) => sum + part * columns[0]![at]!, 0);
  return [0, 1, 2].map((row) => columns.map((column) => column[row]! / whole));
}

/** The photo of a sheet: area under each pixel by four looks, a patch of glare, softness, grain, JPEG. */
export async function taken3(sheet: Sheet, camera: Held, grade: Grade, draw: Chance): Promise<PixelImage> {
  const rules = taken[grade];
  const { width, height } = camera;
  const fine = sheet.width / width;
  const back = inverse(camera.matrix);
  const out = Buffer.alloc(width * height * 3);
  const glare = {
    x: draw.between(0, width),
    y: draw.between(0, height),
    wide: draw.between(0.25, 0.6) * width,
    much: draw.between(0, rules.glare) * 150,
  };
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const sum = [0, 0, 0];
      for (const [dx, dy] of [
        [0.25, 0.25],
        [0.75, 0.25],
        [0.25, 0.75],
        [0.75, 0.75],
      ] as const) {
        const [a, b, c] = back.map((row) => row[0]! * (x + dx) + row[1]! * (y + dy) + row[2]!) as [
          number,
          number,
          number,
        ];
        const [sx, sy] = [Math.floor((a / c) * fine), Math.floor((b / c) * fine)];
        const at =
          (Math.min(sheet.height - 1, Math.max(0, sy)) * sheet.width + Math.min(sheet.width - 1, Math.max(0, sx))) * 3;
        for (let channel = 0; channel < 3; channel++) sum[channel]! += sheet.data[at + channel]! / 4;
      }
      const shine = glare.much * Math.exp(-(((x - glare.x) ** 2 + (y - glare.y) ** 2) / glare.wide ** 2));
      for (let channel = 0; channel < 3; channel++)
        out[(y * width + x) * 3 + channel] = Math.min(255, sum[channel]! + shine);
    }
  }
  const soft = await sharp(out, { raw: { width, height, channels: 3 } })
    .blur(Math.max(0.3, draw.between(rules.soft[0], rules.soft[1])))
    .raw()
    .toBuffer();
  const grain = draw.between(rules.grain[0], rules.grain[1]);
  for (let at = 0; at < soft.length; at += 3) {
    const luma = grain * draw.normal();
    for (let channel = 0; channel < 3; channel++)
      soft[at + channel] = Math.max(0, Math.min(255, soft[at + channel]! + luma + grain * 0.4 * draw.normal()));
  }
  const quality = Math.round(draw.between(rules.quality[0], rules.quality[1]));
  const jpeg = await sharp(soft, { raw: { width, height, channels: 3 } })
    .jpeg({ quality, chromaSubsampling: '4:2:0' })
    .toBuffer();
  const data = await sharp(jpeg).ensureAlpha().raw().toBuffer();
  return { width, height, data: new Uint8ClampedArray(data) };
}

export const hex = (red: number, green: number, blue: number): string =>
  `#${[red, green, blue]
    .map((part) =>
      Math.round(Math.max(0, Math.min(255, part)))
        .toString(16)
        .padStart(2, '0'),
    )
    .join('')}`;
