/**
 * Failures by their code in one language: what went wrong, and what the user can do. `detail` where only the failure's
 * own words say which value or place it is.
 */
export type ProblemWords = Record<string, readonly [what: string, remedy: string, detail?: 'detail']>;
