import type * as z from 'zod';
import { type Problem, problem, type RecordFault } from '../../problem';

type Issue = z.core.$ZodIssue;

const listed = 'watch list';

/**
 * Why something is no record of its form: `newer` when it has all that the form asks for and more, for then a later build
 * wrote it; `damaged` when something is missing or of another kind. The place and the first reason are named.
 */
export function faultOf(issues: readonly Issue[]): { state: 'newer' | 'damaged'; problem: Problem } {
  const damage = issues.find((issue) => !isMore(issue));
  if (damage) return { state: 'damaged', problem: problem('record-damaged', listed, placeOfFault([damage])) };
  return { state: 'newer', problem: problem('record-newer', listed, { version: null }) };
}

/** Of a choice between forms it is enough that one of them fits but for what it does not know. */
const isMore = (issue: Issue): boolean =>
  issue.code === 'unrecognized_keys' ||
  (issue.code === 'invalid_union' && issue.errors.some((form) => form.length > 0 && form.every(isMore)));

/** The place and sort of what is wrong; of a choice between forms the one that fits best tells it. */
export function placeOfFault(issues: readonly Issue[], around: readonly PropertyKey[] = []): PlacedFault {
  const [issue] = issues;
  const path = [...around, ...(issue?.path ?? [])];
  if (issue?.code === 'invalid_union') {
    const [best] = issue.errors.map((form) => form.filter((one) => !isMore(one))).sort((a, b) => a.length - b.length);
    if (best?.[0]) return placeOfFault(best, path);
  }
  return { place: path.join('.'), fault: issue ? sortOf(issue) : 'not-possible' };
}

interface PlacedFault {
  place: string;
  fault: RecordFault;
}

function sortOf(issue: Issue): RecordFault {
  switch (issue.code) {
    case 'invalid_type':
      // The library says in its words alone that nothing stands there.
      return /received undefined/.test(issue.message) ? 'missing' : 'wrong-kind';
    case 'too_big':
      return 'too-large';
    case 'too_small':
      return 'too-small';
    case 'unrecognized_keys':
      return 'more';
    default:
      return 'not-possible';
  }
}
