import { type Case, saysLittle, type WeighedFinding, weighedFindings } from '../../case';
import type { FindingKind } from '../../check/types';
import { strings } from '../../words';
import { FindingCard } from './FindingCard';
import { Fold } from './Fold';

const ofKind = (kase: Case, ...kinds: FindingKind[]): WeighedFinding[] =>
  weighedFindings(kase).filter(({ finding }) => kinds.includes(finding.kind));

/** What speaks against the piece, in the open; what cannot both be true with all that it rests on. */
export function Against({ kase }: { kase: Case }) {
  const against = ofKind(kase, 'contradiction', 'doubt');
  if (against.length === 0) return null;
  return (
    <Fold part="against" title={strings.findings.against} open>
      {against.map(({ finding, weight }, at) => (
        <FindingCard key={finding.id} finding={finding} weight={weight} open={at === 0} />
      ))}
    </Fold>
  );
}

/** What is missing or could not be settled. */
export function StillOpen({ kase }: { kase: Case }) {
  const gaps = ofKind(kase, 'gap');
  if (gaps.length === 0) return null;
  return (
    <Fold part="open" title={strings.findings.gaps}>
      {gaps.map(({ finding, weight }) => (
        <FindingCard key={finding.id} finding={finding} weight={weight} />
      ))}
    </Fold>
  );
}

/** What fits: first what could have come out otherwise, and apart from it what says little of the piece. */
export function WhatFits({ kase }: { kase: Case }) {
  const agreements = ofKind(kase, 'agreement');
  if (agreements.length === 0) return null;
  const [telling, little] = [false, true].map((says) =>
    agreements.filter(({ finding }) => saysLittle(finding, kase.evidence) === says),
  );
  return (
    <Fold part="fits" title={strings.findings.agreements}>
      {telling && telling.length > 0 && <p class="muted hint">{strings.findings.fitsNote}</p>}
      {telling?.map(({ finding, weight, tells }) => (
        <FindingCard key={finding.id} finding={finding} weight={weight} tells={tells} />
      ))}
      {little && little.length > 0 && (
        <details class="quiet">
          <summary>{strings.findings.little}</summary>
          {little.map(({ finding, weight, tells }) => (
            <FindingCard key={finding.id} finding={finding} weight={weight} tells={tells} />
          ))}
        </details>
      )}
    </Fold>
  );
}
