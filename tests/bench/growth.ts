import { fillings } from '../growth/fillings';
import { type TextReader, textReaders } from '../growth/text-readers';

const sizes = [10_000, 100_000, 1_000_000] as const;
/** Ten times the text may cost forty times as much before it is called more than linear; its square would cost a hundred. */
const allowed = 40;
/** Below this a clock measures noise. */
const floorMs = 2;

/** Processor time in milliseconds, the least of a few runs: noise only ever adds. */
function costMs(read: TextReader, text: string, runs: number): number {
  let least = Number.POSITIVE_INFINITY;
  for (let run = 0; run < runs; run += 1) {
    const begun = process.cpuUsage();
    read(text);
    least = Math.min(least, process.cpuUsage(begun).user / 1000);
  }
  return least;
}

interface Growth {
  filling: string;
  costs: number[];
  /** Largest ratio of neighbouring sizes. */
  ratio: number;
}

/** Whether a text grown from five thousand characters fourfold already shows the square: then the sizes would take minutes. */
function growsLikeTheSquare(read: TextReader, make: (length: number) => string): number | null {
  const [small, large] = [make(5_000), make(20_000)];
  read(small);
  const cost = costMs(read, large, 1);
  if (cost < 40) return null;
  const ratio = Math.min(cost, costMs(read, large, 2)) / Math.max(floorMs / 2, costMs(read, small, 3));
  return ratio > 9 ? ratio : null;
}

/** Cost at each size; a reader that already grew like the square is not asked for the larger sizes. */
function growthOf(read: TextReader, filling: string): Growth {
  const make = fillings[filling] as (length: number) => string;
  const growth: Growth = { filling, costs: [], ratio: 0 };
  const square = growsLikeTheSquare(read, make);
  if (square !== null) return { filling, costs: [], ratio: square ** (Math.log(10) / Math.log(4)) };
  for (const size of sizes) {
    const text = make(size);
    let cost = costMs(read, text, size < sizes[2] ? 3 : 1);
    const before = Math.max(floorMs, growth.costs.at(-1) ?? Number.POSITIVE_INFINITY);
    for (let again = 0; again < 2 && cost / before > allowed; again += 1) cost = Math.min(cost, costMs(read, text, 1));
    growth.costs.push(cost);
    if (Number.isFinite(before)) growth.ratio = Math.max(growth.ratio, cost / before);
    if (growth.ratio > allowed) break;
  }
  return growth;
}

const ms = (cost: number | undefined) => (cost === undefined ? '–' : cost.toFixed(1));

/**
 * How the cost of every text reader grows from ten thousand to a million characters, with every kind of filling. Each
 * row is the reader's worst filling; a ratio over 40 for ten times the text is more than linear and fails the command.
 * Arguments after the bench's name choose readers.
 */
export async function bench(): Promise<void> {
  const wanted = process.env.READERS?.split(',') ?? Object.keys(textReaders);
  const broken: string[] = [];
  console.log(`${wanted.length} readers, ${Object.keys(fillings).length} kinds of filling.\n`);
  console.log(
    '| reader | filling that grows most | 10^4 ms | 10^5 ms | 10^6 ms | largest ratio for ten times the text |',
  );
  console.log('| --- | --- | ---: | ---: | ---: | ---: |');
  for (const name of wanted) {
    const read = textReaders[name];
    if (!read) throw new Error(`No text reader is called ${name}.`);
    const growths = Object.keys(fillings).map((filling) => growthOf(read, filling));
    for (const one of growths)
      if (one.ratio > allowed)
        broken.push(`${name} on ${one.filling}: ratio ${one.ratio.toFixed(0)} (${one.costs.map(ms).join(', ')} ms)`);
    const worst = growths.reduce((a, b) => (b.ratio > a.ratio ? b : a));
    const [small, middle, large] = worst.costs;
    console.log(
      `| ${name} | ${worst.filling} | ${ms(small)} | ${ms(middle)} | ${ms(large)} | ${worst.ratio.toFixed(1)} |`,
    );
  }
  if (broken.length === 0) return console.log(`\nEvery reader is linear: no ratio over ${allowed}.`);
  console.log(`\nMore than linear (${broken.length}):\n${broken.map((line) => `- ${line}`).join('\n')}`);
  process.exitCode = 1;
}
