/** Smooth noise of one seed, −1 to 1: values on a grid, blended between. */
export function smoothNoise(seed: number): (x: number, y: number) => number {
  const at = (x: number, y: number): number => {
    let mixed = Math.imul(x, 374761393) ^ Math.imul(y, 668265263) ^ Math.imul(seed, 2246822519);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 1274126177);
    return (((mixed ^ (mixed >>> 16)) >>> 0) / 4294967295) * 2 - 1;
  };
  const ease = (share: number): number => share * share * (3 - 2 * share);
  return (x, y) => {
    const [left, top] = [Math.floor(x), Math.floor(y)];
    const [across, down] = [ease(x - left), ease(y - top)];
    const upper = at(left, top) * (1 - across) + at(left + 1, top) * across;
    const lower = at(left, top + 1) * (1 - across) + at(left + 1, top + 1) * across;
    return upper * (1 - down) + lower * down;
  };
}
