/** Light, surfaces, eye and camera by wavelength, 380 to 730 nm in steps of 5: what drawn colour patches are made with. */
export const waves = Array.from({ length: 71 }, (_, at) => 380 + at * 5);
export type Spectrum = readonly number[];

const bell = (wave: number, middle: number, left: number, right = left): number =>
  Math.exp(-0.5 * ((wave - middle) / (wave < middle ? left : right)) ** 2);

/**
 * The eye, CIE 1931 2°. Source: C. Wyman, P.-P. Sloan, P. Shirley, "Simple Analytic Approximations to the CIE XYZ Color
 * Matching Functions", Journal of Computer Graphics Techniques 2(2), 2013.
 */
export const eye: readonly Spectrum[] = [
  waves.map(
    (w) => 1.056 * bell(w, 599.8, 37.9, 31) + 0.362 * bell(w, 442, 16, 26.7) - 0.065 * bell(w, 501.1, 20.4, 26.2),
  ),
  waves.map((w) => 0.821 * bell(w, 568.8, 46.9, 40.5) + 0.286 * bell(w, 530.9, 16.3, 31.1)),
  waves.map((w) => 1.217 * bell(w, 437, 11.8, 36) + 0.681 * bell(w, 459, 26, 13.8)),
];

const glow = (kelvin: number): Spectrum =>
  waves.map((w) => 1e14 / ((w / 100) ** 5 * (Math.exp(1.4388e7 / (w * kelvin)) - 1)));
const daylight = (kelvin: number): Spectrum => {
  // A black body with the notch of ozone and water left out and the ultraviolet that air takes.
  return glow(kelvin).map(
    (power, at) => power * (1 - 0.35 * bell(waves[at]!, 385, 25)) * (1 + 0.08 * bell(waves[at]!, 460, 18)),
  );
};
const led = (blue: number, yellow: number, width: number, ratio: number): Spectrum =>
  waves.map((w) => bell(w, blue, 10) + ratio * bell(w, yellow, width, width * 1.15));
const tube: Spectrum = waves.map(
  (w) =>
    0.5 * bell(w, 436, 5) +
    0.9 * bell(w, 545, 6) +
    0.85 * bell(w, 611, 6) +
    0.3 * bell(w, 488, 9) +
    0.16 * bell(w, 585, 22) +
    0.04,
);

export const lamps: Readonly<Record<string, Spectrum>> = {
  daylight: daylight(6000),
  shade: daylight(7800),
  evening: daylight(4300),
  tungsten: glow(2856),
  led: led(452, 565, 48, 0.9),
  tube,
};

const sum = (...parts: Spectrum[]): number =>
  waves.reduce((total, _, at) => total + parts.reduce((product, part) => product * part[at]!, 1), 0);

/** XYZ of a surface under a lamp, the lamp's own Y being 1. */
export const seen = (surface: Spectrum, lamp: Spectrum): number[] => {
  const whole = sum(lamp, eye[1]!);
  return eye.map((part) => sum(surface, lamp, part) / whole);
};

/** Three sensors, as phones have them: no weighted sum of what an eye sees. */
export const camera = (shift: number): readonly Spectrum[] => [
  waves.map((w) => bell(w, 600 + shift, 34, 38) + 0.06 * bell(w, 450, 30)),
  waves.map((w) => bell(w, 535 + shift * 0.6, 40, 42)),
  waves.map((w) => bell(w, 462 - shift * 0.4, 26, 32)),
];

export const sensed = (surface: Spectrum, lamp: Spectrum, sensors: readonly Spectrum[]): number[] =>
  sensors.map((sensor) => sum(surface, lamp, sensor));

/** A surface of smooth colour: a ground and two broad humps or edges. */
export function surface(draw: { between(a: number, b: number): number; share(): number }): Spectrum {
  const ground = draw.between(0.03, 0.35);
  const humps = [0, 1].map(() => ({
    at: draw.between(400, 700),
    wide: draw.between(45, 110),
    high: draw.between(-0.2, 0.5),
  }));
  const edge = {
    at: draw.between(480, 640),
    steep: draw.between(12, 45),
    high: draw.share() < 0.6 ? draw.between(0.05, 0.5) : 0,
  };
  return waves.map((w) => {
    const humped = humps.reduce((total, { at, wide, high }) => total + high * bell(w, at, wide), ground);
    return Math.min(0.88, Math.max(0.015, humped + edge.high / (1 + Math.exp((edge.at - w) / edge.steep))));
  });
}
