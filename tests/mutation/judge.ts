import type { Answer, Order } from './order';
import { whole } from './order';
import { type Known, longestFor, type Step, turnsFor } from './plan';
import type { Tester } from './pool';

/**
 * What became of a change. `hung` counts as noticed: the run hung or its process died, and the unchanged run before it
 * did not. `kept`: what the change made is kept, so that it has to be judged in a program that is read anew. `void`: the
 * tests fail without the change as well, so that nothing can be told.
 */
export type Verdict = 'noticed' | 'alive' | 'hung' | 'kept' | 'void';

export class Judge {
  /** How many runs in between changed nothing, and those that failed. */
  controls = 0;
  lost: string[] = [];
  /** The tests that ran unchanged in this life of the process. */
  private ran = new Map<string, Set<string>>();
  private life = 0;

  constructor(
    private readonly tester: Tester,
    private readonly known: ReadonlyMap<string, Known>,
  ) {}

  /** In a process that has read the program: a change is turned on, and what fails then must pass when it is off. */
  async warm(change: number, steps: readonly Step[]): Promise<Verdict> {
    for (const step of steps) {
      for (let attempt = 0; ; attempt++) {
        if (!(await this.readUnchanged(step))) return 'void';
        const answer = await this.run(step, change, false);
        // A process may die of what came before: it is the change only where a new one dies as well.
        if (answer.gone && attempt > 0) return 'hung';
        if (answer.gone) continue;
        if (answer.failed.length === 0) break;
        this.controls += 1;
        const off = await this.run({ ...step, tests: onlyNamed(answer, step) }, 0, false);
        if (!off.gone && off.failed.length === 0) return 'noticed';
        // Something that an earlier change made was kept: once more in a new process.
        this.tester.stop();
        if (attempt > 0) return 'kept';
      }
    }
    return 'alive';
  }

  /** Where what stands there is made once, as the program is read: the program is read anew with the change on. */
  async anew(change: number, steps: readonly Step[], attempt = 0): Promise<Verdict> {
    this.ran.clear();
    for (const [at, step] of steps.entries()) {
      const answer = await this.run(step, change, at === 0);
      if (answer.gone) return attempt > 0 ? 'hung' : this.anew(change, steps, attempt + 1);
      if (answer.failed.length > 0) return 'noticed';
    }
    return 'alive';
  }

  /** The same without any change: what fails then makes what was told before doubtful. */
  async control(steps: readonly Step[]): Promise<void> {
    this.controls += 1;
    for (const [at, step] of steps.entries()) {
      const answer = await this.run(step, 0, at === 0);
      if (answer.gone || answer.failed.length > 0) {
        this.lose(step, answer);
        this.tester.stop();
        return;
      }
    }
  }

  /** What was read, and kept, by tests that ran in this process already, was made without a change. */
  ranUnchanged(file: string, tests: readonly string[]): void {
    if (this.life !== this.tester.life) this.ran.clear();
    this.life = this.tester.life;
    this.ran.set(file, new Set([...(this.ran.get(file) ?? []), ...tests]));
  }

  private async readUnchanged(step: Step): Promise<boolean> {
    if (this.life !== this.tester.life) this.ran.clear();
    const tests = step.tests.filter((test) => !this.ran.get(step.file)?.has(test));
    if (tests.length === 0) return true;
    this.controls += 1;
    const answer = await this.run({ ...step, tests }, 0, false);
    if (answer.gone || answer.failed.length > 0) {
      this.lose(step, answer);
      this.tester.stop();
      return false;
    }
    this.ranUnchanged(step.file, tests);
    return true;
  }

  private lose({ file }: Step, { failed, why }: Answer): void {
    this.lost.push(`${file}: ${failed.join(', ')} ${why}`);
  }

  private run({ file, tests, ms }: Step, change: number, anew: boolean): Promise<Answer> {
    const known = this.known.get(file);
    const order: Order = { file, tests, known: known?.all ?? null, change, anew, turns: turnsFor(known), stop: true };
    return this.tester.run(order, longestFor(ms));
  }
}

/** The tests that failed, or all of them where it was the file. */
const onlyNamed = ({ failed }: Answer, { tests }: Step): string[] =>
  failed.includes(whole)
    ? tests
    : failed.filter((name) => tests.includes(name)).concat(failed.some((name) => !tests.includes(name)) ? tests : []);
