import type { PixelImage } from '../../src/photo/types';
import { chance } from './random';
import { camera, lamps, type Spectrum, seen, sensed, surface, waves } from './spectra';

export interface ColourScene {
  image: PixelImage;
  lamp: string;
  /** L, a, b under D65 of the two patches, and CIEDE2000 of nothing: the reader works that out. */
  labs: [number[], number[]];
  /** Boxes in the photo: both patches and the white card. */
  patches: [number[][], number[][]];
  white: number[][];
}

const d65: Spectrum = lamps.daylight!;
/** XYZ → linear sRGB. Source: IEC 61966-2-1. */
const toRed = [
  [3.2409699419, -1.5373831776, -0.4986107603],
  [-0.9692436363, 1.8759675015, 0.0415550574],
  [0.0556300797, -0.2039769589, 1.0569715142],
];
const times = (rows: readonly (readonly number[])[], of: readonly number[]): number[] =>
  rows.map((row) => row.reduce((total, part, at) => total + part * of[at]!, 0));

/** What a camera's maker does: white to grey, then the matrix that fits a chart best, one for daylight and one for tungsten. */
function developed(sensors: readonly Spectrum[], by: Spectrum): number[][] {
  const draw = chance(77);
  const grey = sensed(
    waves.map(() => 1),
    by,
    sensors,
  );
  const charts = Array.from({ length: 60 }, () => surface(draw));
  const [inputs, wanted] = [
    charts.map((chart) => sensed(chart, by, sensors).map((part, at) => part / grey[at]!)),
    charts.map((chart) => times(toRed, adaptedD65(seen(chart, d65)))),
  ];
  return [0, 1, 2].map((channel) =>
    solve(
      inputs,
      wanted.map((row) => row[channel]!),
    ),
  );
}

const whiteXyz = [0.95047, 1, 1.08883];
/** The drawn daylight is not quite D65: what is seen under it counts as under D65. */
const adaptedD65 = (xyz: number[]): number[] => {
  const own = seen(
    waves.map(() => 1),
    d65,
  );
  return xyz.map((part, at) => (part / own[at]!) * whiteXyz[at]!);
};

function solve(inputs: number[][], wanted: number[]): number[] {
  // Normal equations of three unknowns whose sum is held to 1 by a heavy row: white stays white.
  const rows = [...inputs.map((row, at) => [...row, wanted[at]!]), [300, 300, 300, 300]];
  const m = [0, 1, 2].map((i) => [0, 1, 2, 3].map((j) => rows.reduce((total, row) => total + row[i]! * row[j]!, 0)));
  for (let i = 0; i < 3; i++) {
    for (let j = 0; j < 3; j++) {
      if (i === j) continue;
      const share = m[j]![i]! / m[i]![i]!;
      for (let k = 0; k < 4; k++) m[j]![k]! -= share * m[i]![k]!;
    }
  }
  return [0, 1, 2].map((i) => m[i]![3]! / m[i]![i]!);
}

const labOfXyz = (xyz: number[]): number[] => {
  const f = xyz.map((part, at) => {
    const share = part / whiteXyz[at]!;
    return share > 0.008856 ? Math.cbrt(share) : 7.787 * share + 16 / 116;
  });
  return [116 * f[1]! - 16, 500 * (f[0]! - f[1]!), 200 * (f[1]! - f[2]!)];
};

const step = (light: number): number =>
  255 * (light <= 0.0031308 ? 12.92 * light : 1.055 * Math.max(0, light) ** (1 / 2.4) - 0.055);

/** Two patches and a card on a table under one of six lamps, with the camera's own guess of the white left partly wrong. */
export function colourScene(seed: number, lampName: string): ColourScene {
  const draw = chance(seed);
  const sensors = camera(draw.between(-8, 8));
  const matrix = developed(sensors, lampName === 'tungsten' ? lamps.tungsten! : d65);
  const lamp = lamps[lampName]!;
  const first = surface(draw);
  const near = surface(draw);
  const mix = draw.between(0, 1) ** 2;
  const second = first.map((part, at) => part * (1 - mix) + near[at]! * mix);
  const tint = draw.between(0.86, 0.98);
  const cardSurface = waves.map(() => tint);
  const grey = sensed(
    waves.map(() => 1),
    lamp,
    sensors,
  );
  const day = sensed(
    waves.map(() => 1),
    d65,
    sensors,
  );
  // A phone takes most of a lamp's colour out, and leaves some.
  const left = draw.between(0, 0.4);
  const gains = grey.map((part, at) => 1 / (part ** (1 - left) * (day[at]! * (grey[1]! / day[1]!)) ** left));
  const exposure = draw.between(0.55, 0.86);
  const seenBy = (of: Spectrum): number[] =>
    times(
      matrix,
      sensed(of, lamp, sensors).map((part, at) => part * gains[at]!),
    ).map((part) => part * exposure);
  const [width, height] = [300, 200];
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  const areas: [number, number, number, number, Spectrum][] = [
    [0, 0, width, height, waves.map(() => 0.3)],
    [30, 40, 110, 160, first],
    [120, 40, 200, 160, second],
    [215, 40, 280, 160, cardSurface],
  ];
  const slope = draw.between(-0.02, 0.02);
  const grain = draw.between(0.5, 3);
  for (const [x0, y0, x1, y1, of] of areas) {
    const light = seenBy(of);
    const weave = draw.between(0.0, 0.08);
    for (let y = y0; y < y1; y++) {
      for (let x = x0; x < x1; x++) {
        const shade = (1 + slope * (x / width - 0.5)) * (1 + weave * draw.normal() * 0.5);
        light.forEach((part, channel) => {
          data[(y * width + x) * 4 + channel] = step(part * shade) + grain * draw.normal();
        });
      }
    }
  }
  const box = (at: number): number[][] => [
    [areas[at]![0] + 10, areas[at]![1] + 10],
    [areas[at]![2] - 10, areas[at]![3] - 10],
  ];
  return {
    image: { width, height, data },
    lamp: lampName,
    labs: [labOfXyz(adaptedD65(seen(first, d65))), labOfXyz(adaptedD65(seen(second, d65)))],
    patches: [box(1), box(2)],
    white: box(3),
  };
}
