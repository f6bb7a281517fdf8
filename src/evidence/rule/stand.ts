import { placesAgree } from '../../place';
import { type Span, spanHolds, spansMeet, widenSpan } from '../../span';
import { hardReachOf, reachOf } from '../room';
import type { Amount, Dating, Evidence } from '../types';
import type { Informs, Rule } from './types';

/** How two statements stand to each other. */
export interface Stand {
  /** They share a date, a place or an amount; they do so only with the room that they are given; they do not. */
  relation: 'agrees' | 'within-room' | 'conflicts';
  /** Of a conflict: it cannot be, if both are true. Else it is unlikely. */
  hard: boolean;
  /** Of an agreement: why it could have come out otherwise; null where it hardly could. */
  informs: Informs | null;
  /** Of an agreement: it counts where several agree. */
  narrows: boolean;
  /** Of dates: which of the two allows none that the other does not allow. */
  inside: 'left' | 'right' | 'both' | null;
  /** Of amounts: the most that the left one is of the right one. */
  share: number | null;
}

export const meet = (a: readonly Span[], b: readonly Span[]): boolean =>
  a.some((one) => b.some((other) => spansMeet(one, other)));

const qualityOf = (piece: Evidence) => ('quality' in piece ? piece.quality : null);
const amountsOf = (piece: Evidence): readonly Amount[] => ('amounts' in piece ? piece.amounts : []);

/** An amount of each, of the same thing in the same unit; null where there is none. */
function likeAmounts(left: Evidence, right: Evidence): [Amount, Amount] | null {
  for (const one of amountsOf(left)) {
    const other = amountsOf(right).find(({ of, unit }) => of === one.of && unit === one.unit);
    if (other) return [one, other];
  }
  return null;
}

/** Whether a statement says anything of what the rule is over. */
export function speaks({ over }: Rule, piece: Evidence): boolean {
  if (over === 'date') return piece.spans.length > 0;
  if (over === 'quality') return qualityOf(piece) !== null;
  return over === 'place' ? piece.places.length > 0 : amountsOf(piece).length > 0;
}

/** Whether the two are of different facts, or of one code where the rule is of one, and of the same thing. */
export function comparable(rule: Rule, left: Evidence, right: Evidence): boolean {
  if (rule.ofOneCode) return left.from.id === right.from.id && ownTimeOf(rule, left) !== null;
  if (left.basis === right.basis) return false;
  if (rule.over === 'quality') return qualityOf(left)?.of === qualityOf(right)?.of;
  return rule.over === 'date' || rule.over === 'place' || likeAmounts(left, right) !== null;
}

const ownTimeOf = ({ ofOneCode }: Rule, code: Evidence) =>
  (ofOneCode && (code as Partial<Dating>).ownTime?.[ofOneCode]) ?? null;

const none = { hard: false, informs: null, narrows: false, inside: null, share: null } as const;

/** By the rule alone, without what else the listing says. */
export function standOf(rule: Rule, left: Evidence, right: Evidence): Stand {
  const agrees = (more: Partial<Stand> = {}): Stand => {
    const informs = rule.informs(left, right);
    const narrows = rule.narrows?.(left, right) ?? informs !== null;
    return { ...none, relation: 'agrees', informs, narrows, ...more };
  };
  const conflicts = (hard: boolean, more: Partial<Stand> = {}): Stand => ({
    ...none,
    relation: 'conflicts',
    hard: hard && (rule.hardWhen?.(left, right) ?? true),
    ...more,
  });
  const bothHard = left.strength === 'hard' && right.strength === 'hard';
  const own = ownTimeOf(rule, left);
  if (own !== null) return own === 'within' ? agrees() : conflicts(bothHard && own === 'beyond');
  if (rule.over === 'place') {
    const shared = left.places.some((one) => right.places.some((other) => placesAgree(one, other)));
    return shared ? agrees() : conflicts(bothHard);
  }
  const [one, other] = [qualityOf(left), qualityOf(right)];
  if (one && other) {
    const same = rule.alike ?? ((a, b) => a === b);
    return one.is.some((a) => other.is.some((b) => same(a, b))) ? agrees() : conflicts(bothHard);
  }
  const like = likeAmounts(left, right);
  if (like) {
    const [one, other] = like;
    const share = one.most / other.least;
    const { leastShare } = rule;
    const fits = leastShare === undefined ? one.most >= other.least && other.most >= one.least : !(share < leastShare);
    return fits ? agrees({ share }) : conflicts(bothHard, { share });
  }
  if (meet(left.spans, right.spans)) return agrees({ inside: insideOf(left.spans, right.spans) });
  const days = rule.room?.(left, right) ?? 0;
  const around = left.spans.map((span) => widenSpan(span, { before: days, after: days }));
  if (!rule.asSaid && (meet(reachOf(left), reachOf(right)) || meet(around, right.spans)))
    return { ...none, relation: 'within-room' };
  const [a, b] = [hardReachOf(left), hardReachOf(right)];
  return conflicts(a !== null && b !== null && !meet(a, b));
}

function insideOf(left: readonly Span[], right: readonly Span[]): Stand['inside'] {
  const isIn = (inner: readonly Span[], outer: readonly Span[]) =>
    inner.every((span) => outer.some((one) => spanHolds(one, span)));
  const [first, second] = [isIn(left, right), isIn(right, left)];
  return first && second ? 'both' : first ? 'left' : second ? 'right' : null;
}
