import type { Finding, Outcome } from '../check/types';
import { type Problem, problem } from '../problem';
import { type Correction, mostReasonCharacters, type NewCorrection } from './correction-types';
import { sameData } from './same-data';

type SetAside = Extract<Correction, { of: 'finding' }>;

/** A finding that the buyer set aside, with the correction that did it. */
export interface FindingSetAside {
  finding: Finding;
  correction: SetAside;
}

interface Judged {
  corrections: readonly Correction[];
  outcomes: readonly Outcome[];
}

export const allFindings = (outcomes: readonly Outcome[]): Finding[] =>
  outcomes.flatMap((outcome) => (outcome.outcome === 'speaks' ? outcome.findings : []));

/**
 * The findings that the buyer set aside. What is found otherwise since then stands again: nobody has looked at it and
 * laid it aside.
 */
export const setAsideIn = ({ corrections, outcomes }: Judged): FindingSetAside[] =>
  allFindings(outcomes).flatMap((finding) => {
    const correction = corrections.find((one) => one.of === 'finding' && isOf(one, finding));
    return correction?.of === 'finding' ? [{ finding, correction }] : [];
  });

/** Every finding but those, in the order of the checks. */
export function standingFindings(judged: Judged): Finding[] {
  const aside = new Set(setAsideIn(judged).map(({ finding }) => finding.id));
  return allFindings(judged.outcomes).filter(({ id }) => !aside.has(id));
}

/** The correction that lays a finding aside; null without a reason. */
export function asideFor({ id, check, kind, data }: Finding, reason: string): NewCorrection | null {
  const words = reason.replace(/\s+/g, ' ').trim().slice(0, mostReasonCharacters);
  return words === '' ? null : { of: 'finding', target: { id, check, kind, data }, reason: words };
}

/** Findings that were set aside and are not found any more, or otherwise, once every photo was looked at. */
export const unmetAside = (judged: Judged): Problem[] => {
  const met = new Set(setAsideIn(judged).map(({ correction }) => correction.id));
  return judged.corrections.flatMap((one) =>
    one.of !== 'finding' || met.has(one.id) ? [] : [problem('correction-found-otherwise', one.id)],
  );
};

const isOf = ({ target }: SetAside, { id, kind, data }: Finding): boolean =>
  target.id === id && target.kind === kind && sameData(target.data, data);
