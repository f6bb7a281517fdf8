import { placesAgree } from '../../place';
import { type Span, spansMeet, widenSpan } from '../../span';
import { hardReachOf, reachOf } from '../room';
import type { Evidence } from '../types';
import type { Informs, Rule } from './types';

/** How two statements stand to each other. */
export interface Stand {
  /** They share a date or a place; they do so only with the room that they are given; they do not. */
  relation: 'agrees' | 'within-room' | 'conflicts';
  /** Of a conflict: it cannot be, if both are true. Else it is unlikely. */
  hard: boolean;
  /** Of an agreement: why it could have come out otherwise; null where it hardly could. */
  informs: Informs | null;
  /** Of an agreement: it counts where several agree. */
  narrows: boolean;
}

export const meet = (a: readonly Span[], b: readonly Span[]): boolean =>
  a.some((one) => b.some((other) => spansMeet(one, other)));

const withinRoom: Stand = { relation: 'within-room', hard: false, informs: null, narrows: false };

/** By the rule alone, without what else the listing says. */
export function standOf(rule: Rule, left: Evidence, right: Evidence): Stand {
  const agrees = (): Stand => {
    const informs = rule.informs(left, right);
    return { relation: 'agrees', hard: false, informs, narrows: rule.narrows?.(left, right) ?? informs !== null };
  };
  const conflicts = (hard: boolean): Stand => ({
    relation: 'conflicts',
    hard: hard && (rule.hardWhen?.(left, right) ?? true),
    informs: null,
    narrows: false,
  });
  if (rule.over === 'place') {
    if (left.places.some((one) => right.places.some((other) => placesAgree(one, other)))) return agrees();
    return conflicts(left.strength === 'hard' && right.strength === 'hard');
  }
  if (meet(left.spans, right.spans)) return agrees();
  const days = rule.room?.(left, right) ?? 0;
  const around = left.spans.map((span) => widenSpan(span, { before: days, after: days }));
  if (meet(reachOf(left), reachOf(right)) || meet(around, right.spans)) return withinRoom;
  const [a, b] = [hardReachOf(left), hardReachOf(right)];
  return conflicts(a !== null && b !== null && !meet(a, b));
}
