import { decodeText } from '../../src/code';
import { type KnownCode, learnSystem } from '../../src/code/teacher';
import { builtInMakers } from '../../src/maker';
import type { MakerFile } from '../../src/maker/types';
import { chanceFrom, pick, pickText } from '../reference/number-systems';

const letters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';
const seed = 20_251_125;

/** Makers like Ondrasse, each with plants of its own. */
function manyMakers(count: number): MakerFile[] {
  const chance = chanceFrom(seed);
  const model = builtInMakers[0]!;
  return Array.from({ length: count }, (_, index) => ({
    ...model,
    maker: `Maker ${index}`,
    plants: model.plants.map((plant) => ({ ...plant, code: pickText(chance, letters, 2) })),
  }));
}

/** Runs for about half a second after one run to warm up; runs per second. */
function rate(run: () => void): number {
  run();
  const started = performance.now();
  let runs = 0;
  while (performance.now() - started < 500) {
    run();
    runs++;
  }
  return (runs * 1000) / (performance.now() - started);
}

const two = (number: number) => String(number).padStart(2, '0');

/** Codes of two plant letters with month and year interleaved. */
function knownCodes(count: number): KnownCode[] {
  const chance = chanceFrom(seed);
  return Array.from({ length: count }, () => {
    const [year, month] = [1990 + Math.floor(chance() * 17), 1 + Math.floor(chance() * 12)];
    const [m, y] = [two(month), two(year % 100)];
    const [plant, place] = pick(chance, [
      ['KV', 'BE'],
      ['HJ', 'FR'],
      ['ZM', 'ES'],
    ]) as [string, string];
    return { code: `${plant}${m[0]}${y[0]}${m[1]}${y[1]}`, reads: `${year}-${m}, ${place}` };
  });
}

/** Decode rate by the number of maker files on hand, and the teacher's time by the number of examples, as ratios. */
export async function bench(): Promise<void> {
  console.log('Decoding one typed code (rates as shares of the first line):\n');
  console.log('| maker files | the maker is known | tried under all | fits nothing, nearest sought |');
  console.log('| ---: | ---: | ---: | ---: |');
  let first: number | null = null;
  for (const count of [1, 100, 1000]) {
    const makers = manyMakers(count);
    const code = `${makers[0]!.plants[0]!.code}0915`;
    const known = rate(() => decodeText(code, { makers, maker: 'Maker 0', now: '2026-11-25' }));
    const all = rate(() => decodeText(code, { makers, maker: null, now: '2026-11-25' }));
    const nothing = rate(() => decodeText('7?Q9915', { makers, maker: null, now: '2026-11-25' }));
    first ??= known;
    const share = (value: number) => (value / first!).toPrecision(2);
    console.log(`| ${count} | ${share(known)} | ${share(all)} | ${share(nothing)} |`);
  }
  console.log('\nTeacher, two letters and four digits (times as multiples of the first line):\n');
  console.log('| known codes | time | layouts that remain |');
  console.log('| ---: | ---: | ---: |');
  let least: number | null = null;
  for (const count of [3, 6, 12, 25, 50, 100, 200]) {
    const examples = knownCodes(count);
    const time = 1 / rate(() => learnSystem(examples));
    least ??= time;
    console.log(`| ${count} | ${(time / least).toPrecision(2)} | ${learnSystem(examples).remaining.length} |`);
  }
}
