import type { HandMeasure } from './hand/hand-types';

/** A measure in the photo's own pixels, `scale` of which are one that was measured in: large photos are measured smaller. */
export function inPixelsOf<M extends Pick<HandMeasure, 'value' | 'uncertainty' | 'unit'>>(
  scale: number,
  measure: M,
): M {
  const { value, uncertainty, unit } = measure;
  const by = unit === 'px' ? scale : unit === 'mm-per-px' ? 1 / scale : 1;
  if (by === 1 || typeof value !== 'number') return measure;
  return { ...measure, value: value * by, uncertainty: (uncertainty ?? 0) * by };
}
