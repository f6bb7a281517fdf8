import type { GreyImage } from '../../photo';

/** A connected patch of pixels above a level: the rectangle around it and the sum of what stands out. */
export interface Patch {
  x0: number;
  y0: number;
  x1: number;
  y1: number;
  area: number;
  strength: number;
}

/** Patches of 8-connected pixels above `level`, in reading order of their first pixels. */
export function patchesAbove(image: GreyImage, level: number): Patch[] {
  const { width, height, data } = image;
  const seen = new Uint8Array(data.length);
  const waiting = new Int32Array(data.length);
  const patches: Patch[] = [];
  for (let start = 0; start < data.length; start++) {
    if (seen[start] === 1 || data[start]! <= level) continue;
    const patch: Patch = { x0: width, y0: height, x1: 0, y1: 0, area: 0, strength: 0 };
    let count = 0;
    waiting[count++] = start;
    seen[start] = 1;
    while (count > 0) {
      const at = waiting[--count]!;
      const column = at % width;
      const row = (at - column) / width;
      patch.x0 = Math.min(patch.x0, column);
      patch.x1 = Math.max(patch.x1, column + 1);
      patch.y0 = Math.min(patch.y0, row);
      patch.y1 = Math.max(patch.y1, row + 1);
      patch.area++;
      patch.strength += data[at]!;
      for (let r = Math.max(0, row - 1); r <= Math.min(height - 1, row + 1); r++) {
        for (let c = Math.max(0, column - 1); c <= Math.min(width - 1, column + 1); c++) {
          const next = r * width + c;
          if (seen[next] === 0 && data[next]! > level) {
            seen[next] = 1;
            waiting[count++] = next;
          }
        }
      }
    }
    patches.push(patch);
  }
  return patches;
}
