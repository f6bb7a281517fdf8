import { type Case, saysLittle, type WeighedFinding, weighedFindings } from '../../case';
import type { FindingKind } from '../../check/types';
import { strings } from '../../words';
import { FindingCard } from './FindingCard';

const ofKind = (kase: Case, ...kinds: FindingKind[]): WeighedFinding[] =>
  weighedFindings(kase).filter(({ finding }) => kinds.includes(finding.kind));

/** What speaks against the piece, open and on top. */
export function Against({ kase }: { kase: Case }) {
  const against = ofKind(kase, 'contradiction', 'doubt');
  if (against.length === 0) return null;
  return (
    <section aria-labelledby="against-title" data-part="against">
      <h2 id="against-title">{strings.findings.against}</h2>
      {against.map(({ finding, weight }) => (
        <FindingCard key={finding.id} finding={finding} weight={weight} open={finding.kind === 'contradiction'} />
      ))}
    </section>
  );
}

/** What is missing or could not be settled. */
export function StillOpen({ kase }: { kase: Case }) {
  const gaps = ofKind(kase, 'gap');
  if (gaps.length === 0) return null;
  return (
    <section aria-labelledby="gaps-title" data-part="open">
      <h2 id="gaps-title">{strings.findings.gaps}</h2>
      {gaps.map(({ finding, weight }) => (
        <FindingCard key={finding.id} finding={finding} weight={weight} quiet />
      ))}
    </section>
  );
}

/** What fits, folded: first what could have come out otherwise, and apart from it what says little of the piece. */
export function WhatFits({ kase }: { kase: Case }) {
  const agreements = ofKind(kase, 'agreement');
  if (agreements.length === 0) return null;
  const [telling, little] = [false, true].map((says) =>
    agreements.filter(({ finding }) => saysLittle(finding, kase.evidence) === says),
  );
  return (
    <details class="folded">
      <summary>
        <h2>{strings.findings.agreements}</h2>
      </summary>
      {telling && telling.length > 0 && <p class="muted hint">{strings.findings.fitsNote}</p>}
      {telling?.map(({ finding, weight }) => (
        <FindingCard key={finding.id} finding={finding} weight={weight} quiet />
      ))}
      {little && little.length > 0 && (
        <details class="quiet">
          <summary>{strings.findings.little}</summary>
          {little.map(({ finding, weight }) => (
            <FindingCard key={finding.id} finding={finding} weight={weight} quiet />
          ))}
        </details>
      )}
    </details>
  );
}
