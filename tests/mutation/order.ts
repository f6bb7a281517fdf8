/** One test file to run, in a process that holds all changes of the program. */
export interface Order {
  file: string;
  /** The full names of the tests to run; null for all. A name that the unchanged file does not have is run as well. */
  tests: string[] | null;
  /** All full names of the unchanged file, where they are known. */
  known: string[] | null;
  /** The number of the change that is on; 0 for none. */
  change: number;
  /** Whether every module is run anew before, so that what is made once is made under the change. */
  anew: boolean;
  /** How many turns the loops of one test may take together. */
  turns: number;
  /** Whether the first failure is enough. */
  stop: boolean;
}

/** What happened. */
export interface Answer {
  /** Full names of tests that failed; `whole` where the file, a suite or something outside of any test did. */
  failed: string[];
  why: string;
  /** Milliseconds of the whole and of each test that ran. */
  ms: number;
  times: Record<string, number>;
  /** Most turns of one test, or of reading the file. */
  turns: number;
  /** Numbers of the changes whose places were reached: by reading the file and its hooks, and by each test. */
  reached: { whole: number[]; tests: Record<string, number[]> };
  /** The process hung or died. */
  gone?: true;
}

export const whole = 'the file as a whole';
