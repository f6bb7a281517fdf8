import type { Clock } from '../../../src/ui/panel/read-photos';

/** A clock that stands still until the test moves it. */
export class HandClock implements Clock {
  private time = 0;
  private waiting: { at: number; call: () => void }[] = [];

  now(): number {
    return this.time;
  }

  wake(afterMs: number, call: () => void): () => void {
    const entry = { at: this.time + afterMs, call };
    this.waiting.push(entry);
    return () => {
      this.waiting = this.waiting.filter((other) => other !== entry);
    };
  }

  /** Lets so many milliseconds go by, and everything happen that happens in them. */
  async pass(ms: number): Promise<void> {
    const end = this.time + ms;
    for (;;) {
      await settled();
      const next = this.waiting.filter(({ at }) => at <= end).sort((a, b) => a.at - b.at)[0];
      if (!next) break;
      this.waiting = this.waiting.filter((other) => other !== next);
      this.time = Math.max(this.time, next.at);
      next.call();
    }
    this.time = end;
    await settled();
  }
}

/** All that follows at once from what has happened is done. */
const settled = () => new Promise<void>((turn) => setTimeout(turn, 0));
