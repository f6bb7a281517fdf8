import type { Light } from './lab';

/**
 * Light of sRGB → the cones' answers by which Bradford adapts, and back.
 * Source: K. M. Lam's transform as in CIE 159:2004 and ICC.1:2022, annex E, times the primaries of IEC 61966-2-1.
 */
const toCones = [
  [0.4226580415, 0.4913566408, 0.0273644972],
  [0.0556908, 0.9615562081, 0.023189375],
  [0.0213792411, 0.0876439216, 0.980743433],
] as const;
const fromCones = [
  [2.538447974, -1.2934825679, -0.0402432469],
  [-0.1460003651, 1.1166224074, -0.0223285198],
  [-0.0422883757, -0.07159007, 1.0225073097],
] as const;

type Rows = typeof toCones | typeof fromCones;
const times = (rows: Rows, [red, green, blue]: Light): Light => [
  rows[0][0] * red + rows[0][1] * green + rows[0][2] * blue,
  rows[1][0] * red + rows[1][1] * green + rows[1][2] * blue,
  rows[2][0] * red + rows[2][1] * green + rows[2][2] * blue,
];

/** Light as it would be were `white` neutral and gave back `givesBack` of all light. */
export function adapted(light: Light, white: Light, givesBack: number): Light {
  const [own, card, even] = [times(toCones, light), times(toCones, white), times(toCones, [1, 1, 1])];
  const cone = (at: 0 | 1 | 2): number => (own[at] / Math.max(1e-4, card[at])) * even[at] * givesBack;
  return times(fromCones, [cone(0), cone(1), cone(2)]);
}
