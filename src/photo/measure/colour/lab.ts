/** L, a, b of CIE 1976 under D65, 2°. */
export type Lab = readonly [number, number, number];
/** Red, green and blue light of sRGB, 0 to 1. */
export type Light = readonly [number, number, number];

/** One of 256 steps of sRGB → light. Source: IEC 61966-2-1. */
export function lightOf(step: number): number {
  const share = step / 255;
  return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
}

/** White of sRGB: CIE D65 by its chromaticity 0.3127, 0.3290. */
const white = [0.3127 / 0.329, 1, (1 - 0.3127 - 0.329) / 0.329] as const;

/** Source: IEC 61966-2-1 for the primaries; CIE 15:2004, 8.2.1 for L, a, b. */
export function labOf([red, green, blue]: Light): Lab {
  const x = 0.4123907993 * red + 0.3575843394 * green + 0.1804807884 * blue;
  const y = 0.2126390059 * red + 0.7151686788 * green + 0.0721923154 * blue;
  const z = 0.0193308187 * red + 0.1191947798 * green + 0.9505321522 * blue;
  const [fx, fy, fz] = [root(x / white[0]), root(y / white[1]), root(z / white[2])];
  return [116 * fy - 16, 500 * (fx - fy), 200 * (fy - fz)];
}

const root = (share: number): number => (share > 216 / 24389 ? Math.cbrt(share) : ((24389 / 27) * share + 16) / 116);
