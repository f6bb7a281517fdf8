import type { HandMeasure } from './hand/hand-types';

/** Very large photos are measured smaller than they are; what is said of them is in their own pixels. */
export function inPixelsOf<M extends Pick<HandMeasure, 'value' | 'uncertainty' | 'unit'>>(
  scale: number,
  measure: M,
): M {
  const { value, uncertainty, unit } = measure;
  const by = unit === 'px' ? scale : unit === 'mm-per-px' ? 1 / scale : 1;
  if (by === 1 || typeof value !== 'number') return measure;
  return { ...measure, value: value * by, uncertainty: (uncertainty ?? 0) * by };
}
