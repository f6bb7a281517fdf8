import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { draw, type Folder, folders, type Mutant } from '../mutation/draw';
import { argued, staleArguments } from '../mutation/equivalent';
import { Judge, type Verdict } from '../mutation/judge';
import { allSteps, type Known, learn, stepsFor } from '../mutation/plan';
import { Tester } from '../mutation/pool';
import { importersOf, testsOf, unfit } from '../mutation/reach';
import type { Switched } from '../mutation/switches';

export const onlyWhenNamed = true;

/**
 * Folders of tests that take long, or share no process with others, and look at other parts of the program: what only
 * they would notice counts as alive.
 */
const leftOut = /^tests\/unit\/(stamp|photo|reader|cli|packaging|market|layout|browser|ui)\//;

/** After so many changes for which the program is read anew, it is read anew without one. */
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
    /**
     * Of their tests, as many as take so many seconds unchanged, and none that takes half of them alone; what only
     * slower ones would notice counts as alive.
     */
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

/** Each worker takes from the same list until it is empty. */
async function shared<T>(testers: readonly Tester[], list: T[], work: (one: T, worker: number) => Promise<void>) {
  await Promise.all(
    testers.map(async (_, worker) => {
      for (let one = list.shift(); one !== undefined; one = list.shift()) await work(one, worker);
    }),
  );
}

export async function bench(): Promise<void> {
  const start = performance.now();
  const seed = Number(values.seed);
  const chosen = folders.filter((folder) => !values.folder || values.folder.includes(folder));
  const drawn = draw(chosen, Number(values.count), seed).filter(
    ({ path }) => !values.file || path.includes(values.file),
  );
  console.log(
    `${drawn.length} changes drawn with seed ${seed} from ${chosen.join(', ')}; ${values.workers} processes.`,
  );
  for (const stale of staleArguments()) console.log(`An argued change is not there any more: ${stale}`);
  const equal = drawn.filter((mutant) => argued(mutant));
  const tried = drawn.filter((mutant) => !argued(mutant));
  const importers = importersOf();
  const all = new Set(testFiles());
  const near = (path: string, tests: Parameters<typeof testsOf>[2]) =>
    testsOf(path, importers, tests).slice(0, Number(values.near));
  const files = [...new Set(tried.flatMap(({ path }) => near(path, all)))];

  const folder = mkdtempSync(join(tmpdir(), 'changes-'));
  const setting = { changes: written(folder, tried), count: tried.length, first: files[0] as string };
  const testers = await Promise.all(Array.from({ length: Number(values.workers) }, () => Tester.open(setting)));
  try {
    await judgeAll(testers, files, tried);
  } finally {
    for (const tester of testers) tester.close();
    rmSync(folder, { recursive: true });
  }

  async function judgeAll(testers: readonly Tester[], files: readonly string[], tried: readonly Mutant[]) {
    const most = Number(values.seconds) * 1000;
    const known = new Map<string, Known>();
    const judges = testers.map((tester) => new Judge(tester, known));
    await shared(testers, [...files], async (file, worker) => {
      const told = await learn(testers[worker] as Tester, file, most / 2);
      if (typeof told === 'string') console.log(`Not used, as it fails beside others in one process: ${file}, ${told}`);
      else {
        known.set(file, told);
        judges[worker]?.ranUnchanged(file, Object.keys(told.times));
      }
    });
    const begun = performance.now();
    const learned = ((begun - start) / 1000).toFixed(0);
    console.log(`${known.size} of ${files.length} test files pass unchanged beside others, twice, in ${learned} s.\n`);

    const times = new Map([...known.values()].map(({ file, ms }) => [file, ms]));
    const nearest = (path: string) => near(path, times).map((file) => known.get(file) as Known);
    const once = new Set([...known.values()].flatMap((one) => [...one.once]));
    const verdicts = new Map<number, Verdict>();
    const inTime = () => performance.now() - start < Number(values.minutes) * 60_000;
    const tell = (at: number, verdict: Verdict) => {
      verdicts.set(at, verdict);
      if (verdict !== 'noticed') console.log(`${verdict} ${lineAbout(tried[at] as Mutant)}`);
    };
    const waiting: number[] = [];
    await shared(testers, [...tried.keys()], async (at, worker) => {
      if (!inTime()) return;
      const verdict = await (judges[worker] as Judge).warm(at + 1, stepsFor(at + 1, nearest(pathOf(at)), most));
      if (verdict === 'kept' || (verdict === 'alive' && once.has(at + 1))) waiting.push(at);
      else tell(at, verdict);
    });
    const warm = performance.now();
    let count = 0;
    const made = waiting.length;
    await shared(testers, waiting, async (at, worker) => {
      if (!inTime()) return;
      const [judge, steps] = [judges[worker] as Judge, allSteps(nearest(pathOf(at)), most)];
      tell(at, await judge.anew(at + 1, steps));
      if (count++ % controlEvery === 0) await judge.control(steps);
    });

    const controls = judges.reduce((sum, judge) => sum + judge.controls, 0);
    const lost = judges.flatMap((judge) => judge.lost);
    console.log(`\n${controls} runs in between changed nothing, of which ${lost.length} failed. ${lost.join('; ')}`);
    if (lost.length > 0) {
      console.log('What fails without a change makes every figure below void.');
      process.exitCode = 1;
    }
    const of = (verdict: Verdict) => tried.filter((_, at) => verdicts.get(at) === verdict);
    console.log(`${of('hung').length} changes hung the tests or ended their process, and count as noticed.`);
    if (verdicts.size < tried.length) console.log(`${verdicts.size} of ${tried.length} changes were tried in time.`);
    const seen = tried.filter((_, at) => verdicts.has(at));
    report(chosen, seen, [...of('alive'), ...of('void')], equal);
    const each = (from: number, to: number, changes: number) =>
      (((to - from) * testers.length) / 1000 / Math.max(1, changes)).toFixed(1);
    console.log(
      `\n${((performance.now() - start) / 60_000).toFixed(1)} minutes. Seconds a change and process: ` +
        `${each(start, performance.now(), seen.length)} in all; ${each(begun, warm, seen.length)} where the change is ` +
        `turned on in a program that was read, ${each(warm, performance.now(), made)} for the ${made} for which it is read anew.`,
    );
  }
  function pathOf(at: number): string {
    return (tried[at] as Mutant).path;
  }
}

/** The changes of each file, for the processes that hold them. */
function written(folder: string, tried: readonly Mutant[]): string {
  const changes: Record<string, Switched[]> = {};
  for (const [at, { path, start, end, text, operator }] of tried.entries())
    changes[path] = [...(changes[path] ?? []), { id: at + 1, start, end, text, operator }];
  const file = join(folder, 'changes.json');
  writeFileSync(file, JSON.stringify(changes));
  return file;
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
