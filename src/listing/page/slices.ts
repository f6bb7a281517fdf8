/** Limits of one reading, counted in work and not in time: a busy machine reads the same as an idle one. */
export interface Budget {
  /** Elements and text pieces visited. */
  nodes: number;
  /** Attributes looked at where an element's attributes are gone through one by one. */
  attributes: number;
  /** Characters of texts, attributes and data that are kept to be read. */
  characters: number;
  /** Levels of nesting followed in the page and in its data. */
  depth: number;
  /** Milliseconds of work before the page gets its turn; decides when, never what. */
  sliceMs: number;
}

export const usualBudget: Budget = {
  nodes: 60_000,
  attributes: 600_000,
  characters: 8_000_000,
  depth: 256,
  sliceMs: 7,
};

export type Counted = 'nodes' | 'attributes' | 'characters';

/**
 * Divides the work into slices, so that the page stays live while it is read, and counts it. `pause` gives the page its
 * turn; without one (in Node) nothing waits.
 */
export class Slices {
  private sliceBegun: number;
  private readonly left: Record<Counted, number>;
  private readonly granted = new WeakMap<object, Map<string, number>>();
  /** What was left out so far; of nodes whether any, since those that follow are never counted. */
  readonly skipped: Record<Counted, number> = { nodes: 0, attributes: 0, characters: 0 };
  /** Longest stretch of work without a pause, in milliseconds. */
  longestMs = 0;

  constructor(
    private readonly budget: Budget,
    private readonly pause: (() => Promise<void>) | undefined,
    private readonly clock: () => number,
  ) {
    this.sliceBegun = clock();
    this.left = { nodes: budget.nodes, attributes: budget.attributes, characters: budget.characters };
  }

  /**
   * How many attributes of an element, or characters of one of its attributes, may be looked at. Several steps look at
   * the same ones: they count once. `most` is the limit of this one place.
   */
  takeOf(element: object, part: string, counted: Counted, wanted: number, most: number): number {
    const parts = this.granted.get(element) ?? new Map<string, number>();
    this.granted.set(element, parts);
    const given = parts.get(part) ?? this.take(counted, wanted, most);
    parts.set(part, given);
    return Math.min(given, wanted);
  }

  /** How much of what is wanted may be looked at; the rest counts as skipped. */
  take(counted: Counted, wanted: number, most = wanted): number {
    const given = Math.min(wanted, most, this.left[counted]);
    this.left[counted] -= given;
    this.skipped[counted] += wanted - given;
    return given;
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
