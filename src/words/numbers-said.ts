import type { CheckData } from '../check';
import type { Kit } from './kit';

type Data = CheckData['measured-against-file'];

/** A pitch is told in hundredths of a millimetre, all else in tenths; none where they are none. */
const short = (value: number, of: Data['is']['of'] | Data['file'][number]['of'], kit: Kit): string => {
  const decimals = of === 'stitch-pitch' ? 2 : 1;
  const rounded = Number(value.toFixed(decimals));
  return kit.number(rounded, Number.isInteger(rounded) ? 0 : decimals);
};

/** "9 ± 0.5"; of a colour "L* 41, a* 12, b* 20 (CIEDE2000 ± 4)". */
export function valueSaid(is: Data['is'], kit: Kit): string {
  const within = `± ${short(is.within, is.of, kit)}`;
  if (is.of !== 'colour') return `${short(is.value, is.of, kit)} ${within}`;
  const [l, a, b] = is.lab.map((one) => short(one, is.of, kit));
  return `L* ${l}, a* ${a}, b* ${b} (CIEDE2000 ${within})`;
}

/** "10 to 12", or "5" where both ends are the same; of a colour each axis. */
export function rangeSaid(file: Data['file'][number], to: string, kit: Kit): string {
  const range = (least: number, most: number) =>
    [...new Set([short(least, file.of, kit), short(most, file.of, kit)])].join(` ${to} `);
  if (file.of !== 'colour') return range(file.least, file.most);
  return `L* ${range(...file.lightness)}, a* ${range(...file.greenRed)}, b* ${range(...file.blueYellow)}`;
}
