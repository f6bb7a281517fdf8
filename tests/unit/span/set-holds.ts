import { meetSets, type Span, unionOf } from '../../../src/span';

/** Whether every day of `inner` is a day of `outer`. */
export const setHolds = (outer: readonly Span[], inner: readonly Span[]): boolean => {
  const met = meetSets(outer, inner);
  const whole = unionOf(inner);
  return (
    met.length === whole.length && met.every((span, at) => span.from === whole[at]!.from && span.to === whole[at]!.to)
  );
};
