/** A seeded stream of numbers in [0, 1): the same seed gives the same photograph on every machine. */
export type Random = () => number;

export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Sum of uniform numbers, near enough to a normal one of mean 0 and deviation 1 for sensor noise. */
export function normalFrom(random: Random): number {
  let sum = 0;
  for (let draw = 0; draw < 6; draw++) sum += random();
  return (sum - 3) * Math.SQRT2;
}

/** Seed of a photograph from its file name, so that adding one photograph changes no other. */
export function seedOf(name: string): number {
  let hash = 2166136261;
  for (const character of name) hash = Math.imul(hash ^ (character.codePointAt(0) ?? 0), 16777619);
  return hash >>> 0;
}

/** Hash of a lattice point to [0, 1). */
export function hashPoint(x: number, y: number, seed: number): number {
  let hash = Math.imul(x | 0, 374761393) ^ Math.imul(y | 0, 668265263) ^ Math.imul(seed | 0, 2246822519);
  hash = Math.imul(hash ^ (hash >>> 13), 1274126177);
  hash ^= hash >>> 16;
  return (hash >>> 0) / 4294967296;
}
