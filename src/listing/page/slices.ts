/** Limits of one reading. What lies beyond is left unread and reported. */
export interface Budget {
  /** Elements and text pieces visited. */
  nodes: number;
  /** Levels of nesting followed in the page and in its data. */
  depth: number;
  /** Milliseconds for the whole reading, pauses included. */
  ms: number;
  /** Milliseconds of work before the page gets its turn. */
  sliceMs: number;
}

export const usualBudget: Budget = { nodes: 60_000, depth: 256, ms: 5_000, sliceMs: 7 };

/**
 * Divides the work into slices, so that the page stays live while it is read. `pause` gives the page its turn; without
 * one (in Node) nothing waits.
 */
export class Slices {
  private readonly begun: number;
  private sliceBegun: number;
  /** Longest stretch of work without a pause, in milliseconds. */
  longestMs = 0;

  constructor(
    private readonly budget: Budget,
    private readonly pause: (() => Promise<void>) | undefined,
    private readonly clock: () => number,
  ) {
    this.begun = this.sliceBegun = clock();
  }

  /** Whether the whole reading has used up its time. */
  get spent(): boolean {
    return this.clock() - this.begun > this.budget.ms;
  }

  get due(): boolean {
    return this.clock() - this.sliceBegun > this.budget.sliceMs;
  }

  /** Lets the page work when the slice is used up. */
  async rest(): Promise<void> {
    const worked = this.clock() - this.sliceBegun;
    this.longestMs = Math.max(this.longestMs, worked);
    if (worked <= this.budget.sliceMs) return;
    if (this.pause) await this.pause();
    this.sliceBegun = this.clock();
  }
}
