import { chance } from './random';

/** One thread of a row, from hole to hole, and how much of its tone is left by wear. */
export interface Thread {
  from: number;
  to: number;
  left: number;
}
/** The threads of a row of so many places. */
export type Sewing = (places: number) => Thread[];

export const sound: Sewing = (places) => Array.from({ length: places }, (_, at) => ({ from: at, to: at + 1, left: 1 }));

/** All are there, and rubbed off by up to a half, each for itself. */
export const worn =
  (seed: number): Sewing =>
  (places) => {
    const draw = chance(seed * 17 + 5);
    return sound(places).map((thread) => ({ ...thread, left: draw.between(0.5, 1) }));
  };

/** One to three stitches are missing inside the row: left out, side by side or apart, or passed over by a loose thread. */
export const skipped =
  (seed: number): Sewing =>
  (places) => {
    const draw = chance(seed * 13 + 7);
    let missing = draw.whole(1, Math.max(1, Math.min(3, Math.floor(places / 5))));
    let threads = sound(places);
    while (missing > 0) {
      const many = draw.whole(1, missing);
      const isLoose = draw.share() < 0.5;
      const reach = isLoose ? many + 1 : many;
      const from = draw.whole(1, places - 1 - reach);
      const near = threads.filter((thread) => thread.to >= from && thread.from <= from + reach);
      // Two places of the kind lie apart.
      if (near.length < reach + 2 || near.some((thread) => thread.to - thread.from > 1)) continue;
      threads = threads.filter((thread) => thread.to <= from || thread.from >= from + reach);
      if (isLoose) threads.push({ from, to: from + reach, left: 1 });
      missing -= many;
    }
    return threads.sort((a, b) => a.from - b.from);
  };
