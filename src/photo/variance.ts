/** The variance of some values, in the square of their unit; NaN of none. */
export function varianceOf(values: Float32Array): number {
  let sum = 0;
  let squares = 0;
  for (let at = 0; at < values.length; at++) {
    const value = values[at]!;
    sum += value;
    squares += value * value;
  }
  const mean = sum / values.length;
  return Math.max(0, squares / values.length - mean * mean);
}
