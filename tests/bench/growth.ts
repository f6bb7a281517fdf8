import { fillings } from '../growth/fillings';
import { type TextReader, textReaders } from '../growth/text-readers';

const sizes = [10_000, 100_000, 1_000_000] as const;
/** Ten times the text may cost forty times as much before it is called more than linear; its square would cost a hundred. */
const allowed = 40;
const allowedFor = (times: number) => times ** (Math.log(allowed) / Math.log(10));
/** Below this a clock measures noise. */
const floorMs = 2;

/** Processor time in milliseconds, the least of a few runs: noise only ever adds. */
function costMs(read: TextReader, text: string, runs = 1): number {
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
  /** Largest ratio of neighbouring sizes; what costs less than a clock can tell counts as the floor. */
  ratio: number;
}

/**
 * Cost at each size. A ratio that is too large is measured again before it counts. Sizes after one that is too dear are
 * not asked for: the square of a million would take minutes.
 */
function growthOf(read: TextReader, filling: string): Growth {
  const make = fillings[filling] as (length: number) => string;
  const growth: Growth = { filling, costs: [], ratio: 0 };
  read(make(1_000));
  let before = Number.POSITIVE_INFINITY;
  for (const [index, size] of [sizes[0] / 4, ...sizes].entries()) {
    const text = make(size);
    // The first step is a quarter of the smallest size: it shows the square before the square is dear.
    const times = index === 0 ? 1 : index === 1 ? 4 : 10;
    let cost = costMs(read, text);
    const over = () => Number.isFinite(before) && cost / Math.max(floorMs, before) > allowedFor(times);
    if (over()) {
      before = Math.max(before, costMs(read, make(size / times), 3));
      cost = Math.min(cost, costMs(read, text, 2));
    }
    if (index > 0) growth.costs.push(cost);
    if (index > 1) growth.ratio = Math.max(growth.ratio, cost / Math.max(floorMs, before));
    if (over()) {
      growth.ratio = Math.max(growth.ratio, (cost / Math.max(floorMs, before)) ** (Math.log(10) / Math.log(times)));
      break;
    }
    before = cost;
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
