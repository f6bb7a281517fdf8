import { readdirSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { parseArgs } from 'node:util';
import { draw, type Folder, folders, type Mutant } from '../mutation/draw';
import { argued, staleArguments } from '../mutation/equivalent';
import { isVoid, type Job, type Result, runJobs } from '../mutation/pool';
import { importersOf, testsOf, unfit } from '../mutation/reach';

export const onlyWhenNamed = true;

/**
 * Folders of tests that take long, or share no process with others, and look at other parts of the program: what only
 * they would notice counts as alive.
 */
const leftOut = /^tests\/unit\/(stamp|photo|reader|cli|packaging|market|layout|browser|ui)\//;

/** After so many changes one run changes nothing, to see that what is noticed is the change. */
const controlEvery = 15;

const { values } = parseArgs({
  args: process.argv.slice(2),
  allowPositionals: true,
  options: {
    seed: { type: 'string', default: '14' },
    count: { type: 'string', default: '640' },
    folder: { type: 'string', multiple: true },
    file: { type: 'string' },
    /** So many of the test files that can reach a change, the nearest first; what only others would notice counts as alive. */
    near: { type: 'string', default: '20' },
    /** Of these, as many as take so many seconds unchanged; what only slower ones would notice counts as alive. */
    seconds: { type: 'string', default: '30' },
    workers: { type: 'string', default: String(availableParallelism()) },
    /** After so long no further change is tried; those tried are as random a draw as all. */
    minutes: { type: 'string', default: '60' },
  },
});

function testFiles(): string[] {
  return ['tests/unit', 'tests/reference']
    .flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((path) => `${folder}/${path}`))
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => /\.test\.tsx?$/.test(path) && !leftOut.test(path) && unfit(path) === null)
    .sort();
}

/**
 * Test files that pass unchanged when many share a process, with the milliseconds that each takes; the rest are named
 * and not used.
 */
async function soundTests(all: string[], workers: number): Promise<Map<string, number>> {
  // bail stops at a first failure, so each round runs what is left after what failed.
  let left = all;
  for (let round = 0; round < 10; round++) {
    const start = performance.now();
    const parts = Array.from({ length: workers }, (_, part) => left.filter((_, at) => at % workers === part));
    const results: Result[] = [];
    const jobs = parts.filter((tests) => tests.length > 0).map((tests, id): Job => ({ id, change: null, tests }));
    await runJobs(jobs, workers, (result) => results.push(result));
    const broken = results.flatMap((result) => result.broken);
    if (broken.length > 0) throw new Error(`The unchanged tests do not run: ${broken.join('; ')}`);
    const failed = results.flatMap((result) => result.failed);
    if (failed.length === 0) {
      const seconds = ((performance.now() - start) / 1000).toFixed(0);
      console.log(`${left.length} of ${all.length} test files pass unchanged beside others, in ${seconds} s.`);
      const times = new Map(results.flatMap((result) => Object.entries(result.times)));
      return new Map(left.map((path) => [path, times.get(path) ?? 0]));
    }
    console.log(`Not used, as it fails beside others in one process: ${failed.join(', ')}`);
    left = left.filter((path) => !failed.includes(path));
  }
  throw new Error('The unchanged tests do not pass.');
}

export async function bench(): Promise<void> {
  const seed = Number(values.seed);
  const chosen = folders.filter((folder) => !values.folder || values.folder.includes(folder));
  const drawn = draw(chosen, Number(values.count), seed).filter(
    ({ path }) => !values.file || path.includes(values.file),
  );
  const start = performance.now();
  console.log(
    `${drawn.length} changes drawn with seed ${seed} from ${chosen.join(', ')}; ${values.workers} processes.`,
  );
  for (const stale of staleArguments()) console.log(`An argued change is not there any more: ${stale}`);
  const equal = drawn.filter((mutant) => argued(mutant));
  const tried = drawn.filter((mutant) => !argued(mutant));
  const importers = importersOf();
  const near = (path: string, tests: Parameters<typeof testsOf>[2]) =>
    testsOf(path, importers, tests).slice(0, Number(values.near));
  const all = new Set(testFiles());
  const times = await soundTests([...new Set(tried.flatMap(({ path }) => near(path, all)))], Number(values.workers));
  const tests = (path: string) => inTime(near(path, times), times, Number(values.seconds) * 1000);
  const jobs = tried.map((mutant, id): Job => ({ id, change: mutant, tests: tests(mutant.path) }));
  const begun = performance.now();
  const alive: Mutant[] = [];
  const reachable = jobs.filter((job) => job.tests.length > 0);
  const controls = reachable.filter((_, at) => at % controlEvery === 0).map((job): Job => ({ ...job, change: null }));
  const queue = reachable.flatMap((job, at) => [
    job,
    ...(at % controlEvery === 0 ? [controls[at / controlEvery] as Job] : []),
  ]);
  const lost: string[] = [];
  let again: Job[] = [];
  const hung: Mutant[] = [];
  const judged = new Set<number>();
  const told = (result: Result, job: Job) => {
    if (job.change !== null) judged.add(job.id);
    const mutant = tried[job.id] as Mutant;
    const noticed = result.failed.length > 0 || result.broken.length > 0;
    if (isVoid(result)) again.push(job);
    else if (job.change === null && noticed)
      lost.push(`${mutant.path}: ${[...result.failed, ...result.broken].join(', ')}`);
    else if (job.change !== null && !noticed) {
      alive.push(mutant);
      console.log(lineAbout(mutant));
    }
  };
  await runJobs(queue, Number(values.workers), told, () => performance.now() - start > Number(values.minutes) * 60_000);
  const retried = again;
  again = [];
  await runJobs(retried, 1, told);
  for (const job of again)
    if (job.change === null) lost.push('a run that changed nothing broke twice');
    else hung.push(tried[job.id] as Mutant);
  console.log(
    `\n${controls.length} runs in between changed nothing, of which ${lost.length} failed. ${lost.join('; ')}`,
  );
  if (lost.length > 0) {
    console.log('What fails without a change makes every figure below void.');
    process.exitCode = 1;
  }
  console.log(`${hung.length} changes broke the run twice (it hung or its process died) and count as noticed.`);
  for (const mutant of hung) console.log(lineAbout(mutant));
  const unreached = jobs.filter((job) => job.tests.length === 0).map(({ id }) => tried[id] as Mutant);
  alive.push(...unreached);
  const seen = [...[...judged].map((id) => tried[id] as Mutant), ...unreached];
  if (seen.length < tried.length) console.log(`${seen.length} of ${tried.length} changes were tried in time.`);
  report(chosen, seen, alive, equal);
  const each =
    ((performance.now() - begun) * Number(values.workers)) / 1000 / Math.max(1, judged.size + controls.length);
  console.log(
    `\n${((performance.now() - start) / 60_000).toFixed(1)} minutes; ${each.toFixed(1)} seconds a change and process.`,
  );
}

/** Test files in their order, without those that would take the whole beyond so many milliseconds. */
function inTime(paths: readonly string[], times: ReadonlyMap<string, number>, most: number): string[] {
  let sum = 0;
  return paths.filter((path) => {
    const own = times.get(path) ?? 0;
    if (sum + own > most) return false;
    sum += own;
    return true;
  });
}

const short = (text: string) => {
  const line = text.replace(/\s+/g, ' ');
  return line.length > 100 ? `${line.slice(0, 70)} … ${line.slice(-25)}` : line;
};
const lineAbout = ({ path, line, column, operator, was, text, stands }: Mutant) =>
  `- ${path}:${line}, ${column} (${operator}) \`${short(was)}\` → \`${short(text)}\`  in  ${short(stands)}`;

function report(chosen: readonly Folder[], tried: Mutant[], alive: Mutant[], equal: Mutant[]): void {
  console.log('\n| folder | drawn | noticed | alive | argued equal | share noticed |');
  console.log('| --- | --: | --: | --: | --: | --: |');
  for (const folder of [...chosen, 'all'] as const) {
    const of = (mutants: Mutant[]) => mutants.filter((one) => folder === 'all' || one.folder === folder).length;
    const [all, living, same] = [of(tried), of(alive), of(equal)];
    const share = all === 0 ? '–' : `${((100 * (all - living)) / all).toFixed(1)} %`;
    console.log(`| ${folder} | ${all + same} | ${all - living} | ${living} | ${same} | ${share} |`);
  }
  console.log('\nAlive:\n');
  for (const mutant of [...alive].sort((a, b) => a.path.localeCompare(b.path) || a.line - b.line))
    console.log(lineAbout(mutant));
}
