import type { Finding, Reason } from '../check';
import { makerNamed } from './maker-named';
import { setAsideIn } from './set-aside';
import type { Case } from './types';
import { weighedFindings } from './weighed-findings';

/**
 * What the head of a case tells: what speaks against the piece, what is open, what was not looked at. Nothing in it is
 * counted and nothing that fits stands in it: a sum of trifles would read as a pass.
 */
export interface CaseHead {
  /** Contradictions and doubts, the heaviest first. */
  against: Finding[];
  /** Gaps, the heaviest first. */
  open: Finding[];
  /** Whether the buyer set aside something that speaks against the piece: it stands below, and is not gone. */
  aside: boolean;
  /** Whether the buyer measured something on the photos. */
  measured: boolean;
  notLookedAt: {
    /** Places on the page, from 1, of the photos without a reading. */
    photos: number[];
    /** Checks that broke, by name. */
    failed: string[];
    /** The maker as the listing states it where no file on it is there; an empty text where none is stated. */
    withoutFile: string | null;
    /** Why other checks could not tell, the reason of most checks first. */
    reasons: Reason[];
  };
}

/** Told by the head in their own way. */
const toldApart = new Set(['no-maker-file', 'photos-not-read', 'no-photos', 'first-look']);

export function headOf(kase: Case): CaseHead {
  const findings = weighedFindings(kase).map(({ finding }) => finding);
  const read = new Set(kase.photos.flatMap((photo) => (photo.state === 'read' ? [photo.photoId] : [])));
  return {
    against: findings.filter(({ kind }) => kind === 'contradiction' || kind === 'doubt'),
    open: findings.filter(({ kind }) => kind === 'gap'),
    aside: setAsideIn(kase).some(({ finding: { kind } }) => kind === 'contradiction' || kind === 'doubt'),
    measured: kase.observations !== undefined,
    notLookedAt: {
      photos: kase.listing.photos.flatMap(({ id }, index) => (read.has(id) ? [] : [index + 1])),
      failed: kase.outcomes.flatMap((outcome) => (outcome.outcome === 'failed' ? [outcome.check] : [])),
      withoutFile: kase.maker === null ? makerNamed(kase) : null,
      reasons: reasonsOf(kase),
    },
  };
}

/** "2 of 5 photos …", where each check counts those that it needs: said once, of the most. */
const outOf = ({ data }: Reason): number => (typeof data.of === 'number' ? data.of : 0);
const aboutSomeOf = (why: Reason): boolean => outOf(why) > 0;

function reasonsOf({ outcomes }: Case): Reason[] {
  const shared = new Map<string, { reason: Reason; checks: number }>();
  for (const { why } of outcomes.filter((outcome) => outcome.outcome === 'cannot-tell')) {
    if (toldApart.has(why.reason)) continue;
    const key = aboutSomeOf(why) ? why.reason : JSON.stringify(why);
    const before = shared.get(key);
    const reason = before && outOf(before.reason) >= outOf(why) ? before.reason : why;
    shared.set(key, { reason, checks: (before?.checks ?? 0) + 1 });
  }
  return [...shared.values()].sort((a, b) => b.checks - a.checks).map(({ reason }) => reason);
}
