/** Numbers by chance that a seed repeats (mulberry32). */
export interface Chance {
  share(): number;
  between(least: number, most: number): number;
  whole(least: number, most: number): number;
  normal(): number;
  of<T>(list: readonly T[]): T;
}

export function chance(seed: number): Chance {
  let state = (seed * 2654435761) >>> 0;
  const share = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const between = (least: number, most: number): number => least + (most - least) * share();
  return {
    share,
    between,
    whole: (least, most) => Math.floor(between(least, most + 1)),
    normal: () => Math.sqrt(-2 * Math.log(1 - share())) * Math.cos(2 * Math.PI * share()),
    of: (list) => list[Math.floor(share() * list.length)]!,
  };
}
