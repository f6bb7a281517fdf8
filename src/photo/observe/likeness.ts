import { likenessOf } from '../likeness/likeness';
import type { GreyImage } from '../types';
import { cropGrey } from '../warp';
import { blur, insideOf } from './margin';
import { defineObserver } from './observer';

/** By it a photo is known again where it was made smaller, packed again, cut, mirrored, or given a border. */
export const likeness = defineObserver({
  id: 'likeness',
  gives: ['likeness'],
  measure(_, { grey }) {
    const value = likenessIn(grey);
    return value === null ? [] : [{ what: 'likeness', value }];
  },
});

/** What a photo is known again by, any even margin left out (`likenessOf`). */
export const likenessIn = (grey: GreyImage): string | null => likenessOf(withoutMargin(grey));

/** What lies inside a margin is too small to be known by. */
const leastSide = 32;

function withoutMargin(grey: GreyImage): GreyImage {
  const inside = insideOf(grey);
  if (inside === null) return grey;
  // Where it was packed after the border was laid, the border spreads into what lies inside.
  const spread = (at: number, edge: number) => (at === edge ? 0 : blur);
  const left = inside.left + spread(inside.left, 0);
  const top = inside.top + spread(inside.top, 0);
  const right = inside.right - spread(inside.right, grey.width);
  const bottom = inside.bottom - spread(inside.bottom, grey.height);
  return right - left < leastSide || bottom - top < leastSide ? grey : cropGrey(grey, left, top, right, bottom);
}
