import { type Case, findingsOf } from '../../case';
import type { Finding, FindingKind } from '../../check/types';
import { strings } from '../strings';
import { FindingCard } from './FindingCard';

const ofKind = (findings: Finding[], ...kinds: FindingKind[]) =>
  kinds.flatMap((kind) => findings.filter((finding) => finding.kind === kind));

/** What stands against each other, open and on top. */
export function Against({ kase }: { kase: Case }) {
  const against = ofKind(findingsOf(kase), 'contradiction', 'doubt');
  if (against.length === 0) return null;
  return (
    <section aria-labelledby="against-title">
      <h2 id="against-title">{strings.findings.against}</h2>
      {against.map((finding) => (
        <FindingCard key={finding.id} finding={finding} open={finding.kind === 'contradiction'} />
      ))}
    </section>
  );
}

/** What is missing, what agrees, and which checks cannot tell: further down, folded. */
export function RestOfFindings({ kase }: { kase: Case }) {
  const findings = findingsOf(kase);
  const gaps = ofKind(findings, 'gap');
  const agreements = ofKind(findings, 'agreement');
  const unable = kase.outcomes.flatMap((outcome) => (outcome.outcome === 'cannot-tell' ? [outcome] : []));
  return (
    <>
      {gaps.length > 0 && (
        <section aria-labelledby="gaps-title">
          <h2 id="gaps-title">{strings.findings.gaps}</h2>
          {gaps.map((finding) => (
            <FindingCard key={finding.id} finding={finding} quiet />
          ))}
        </section>
      )}
      {agreements.length > 0 && (
        <details class="folded">
          <summary>
            <h2>
              {strings.findings.agreements} ({agreements.length})
            </h2>
          </summary>
          {agreements.map((finding) => (
            <FindingCard key={finding.id} finding={finding} quiet />
          ))}
        </details>
      )}
      {unable.length > 0 && (
        <details class="quiet">
          <summary>{strings.findings.cannotTell(unable.length)}</summary>
          <ul>
            {unable.map(({ check, why }) => (
              <li key={check}>
                {check.replaceAll('-', ' ')}: {why}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
