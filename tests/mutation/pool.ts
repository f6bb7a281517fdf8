import { type ChildProcess, fork } from 'node:child_process';
import { createServer, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { resolve } from 'node:path';
import type { Answer, Order } from './order';

/** A file of changes, how many they are, and a test file to begin with. */
export interface Setting {
  changes: string;
  count: number;
  first: string;
}

/** One process that runs test files; one that hangs or dies is replaced with the next order. */
export class Tester {
  /** Raised when a process ends: what was read or kept in it is gone. */
  life = 0;
  private process: ChildProcess | null = null;
  private waiting: ServerResponse | null = null;
  private arrived: (answer: Answer | null) => void = () => {};

  private constructor(
    private readonly setting: Setting,
    private readonly server: Server,
  ) {}

  static async open(setting: Setting): Promise<Tester> {
    const server = createServer();
    const tester = new Tester(setting, server);
    server.on('request', (request, response) => {
      let text = '';
      request.setEncoding('utf8');
      request.on('data', (part: string) => {
        text += part;
      });
      request.on('end', () => {
        tester.waiting = response;
        tester.arrived(JSON.parse(text) as Answer | null);
      });
    });
    await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
    return tester;
  }

  /** Runs an order; one that is not answered after so many milliseconds is told as gone. */
  async run(order: Order, longest: number): Promise<Answer> {
    if (this.process === null) await this.start();
    const answer = await this.told(() => {
      this.waiting?.end(JSON.stringify(order));
      this.waiting = null;
    }, longest);
    if (answer) return answer;
    this.stop();
    return { failed: [], why: 'gone', ms: longest, times: {}, turns: 0, reached: { whole: [], tests: {} }, gone: true };
  }

  /** Ends the process; the next order starts another. */
  stop(): void {
    try {
      // A group of its own, so that what it started ends with it.
      if (this.process?.pid !== undefined) process.kill(-this.process.pid, 'SIGKILL');
    } catch {
      // It had ended already.
    }
    this.process = null;
    this.waiting = null;
    this.life += 1;
  }

  close(): void {
    this.stop();
    this.server.closeAllConnections();
    this.server.close();
  }

  private async start(): Promise<void> {
    const { port } = this.server.address() as AddressInfo;
    const { changes, count, first } = this.setting;
    await this.told(() => {
      this.process = fork(resolve(import.meta.dirname, 'worker.ts'), {
        execArgv: ['--import', 'tsx'],
        stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
        detached: true,
        env: {
          ...process.env,
          MUTATION_ADDRESS: `http://127.0.0.1:${port}/`,
          MUTATION_FILE: changes,
          MUTATION_CHANGES: String(count),
          MUTATION_FIRST: first,
        },
      });
    }, 120_000);
    if (this.waiting === null) throw new Error('The process that runs tests did not start.');
  }

  /** What arrives after `begin`; null where nothing does in time or the process ends before. */
  private told(begin: () => void, longest: number): Promise<Answer | null> {
    return new Promise((done) => {
      const finish = (answer: Answer | null) => {
        clearTimeout(timer);
        this.process?.off('exit', lost);
        this.arrived = () => {};
        done(answer);
      };
      const lost = () => finish(null);
      const timer = setTimeout(lost, longest);
      this.arrived = finish;
      begin();
      this.process?.once('exit', lost);
    });
  }
}
