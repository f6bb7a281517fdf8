import type { GreyImage } from '../../photo';

/** Mean 0 and deviation 1, held between -4 and 4; nearly even ground is not blown up. */
export function evenOut({ data }: GreyImage): Float32Array {
  let sum = 0;
  for (const value of data) sum += value;
  const mean = sum / data.length;
  let squares = 0;
  for (const value of data) squares += (value - mean) ** 2;
  const deviation = Math.max(4, Math.sqrt(squares / data.length));
  return data.map((value) => Math.min(4, Math.max(-4, (value - mean) / deviation)));
}
