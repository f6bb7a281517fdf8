import type * as z from 'zod';
import type { Problem } from '../../problem';

type Issue = z.core.$ZodIssue;

/**
 * Why something is no record of its form: `newer` when it has all that the form asks for and more, for then a later build
 * wrote it; `damaged` when something is missing or of another kind. The place and the first reason are named.
 */
export function faultOf(issues: readonly Issue[]): { state: 'newer' | 'damaged'; problem: Problem } {
  const damage = issues.find((issue) => !isMore(issue));
  if (damage) return { state: 'damaged', problem: problemOf('record-damaged', wordsOf(damage)) };
  const [more] = issues;
  return { state: 'newer', problem: problemOf('record-newer', more ? wordsOf(more) : 'it says more') };
}

/** Of a choice between forms it is enough that one of them fits but for what it does not know. */
const isMore = (issue: Issue): boolean =>
  issue.code === 'unrecognized_keys' ||
  (issue.code === 'invalid_union' && issue.errors.some((form) => form.length > 0 && form.every(isMore)));

/** Of a choice between forms the one that fits best tells the place. */
function wordsOf(issue: Issue, within: readonly PropertyKey[] = []): string {
  const path = [...within, ...issue.path];
  if (issue.code === 'invalid_union') {
    const [best] = issue.errors.map((form) => form.filter((one) => !isMore(one))).sort((a, b) => a.length - b.length);
    if (best?.[0]) return wordsOf(best[0], path);
  }
  return `${path.join('.') || 'record'}: ${issue.message}`;
}

/** `record-damaged` says in its words what is wrong where; of the others the code tells all. */
type StandingCode =
  | 'record-newer'
  | 'record-damaged'
  | 'record-none'
  | 'record-not-raised'
  | 'look-missing'
  | 'look-spoilt';

export const problemOf = (code: StandingCode, what: string): Problem => ({
  code,
  where: 'watch list',
  what,
  remedy:
    code === 'record-newer'
      ? 'Update the extension; until then the record is shown and not changed.'
      : 'The record is kept as it is: export it and report what it says.',
});
