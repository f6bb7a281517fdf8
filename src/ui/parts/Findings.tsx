import { type Case, type WeighedFinding, weighedFindings } from '../../case';
import type { FindingKind } from '../../check/types';
import { chosenLanguage, sayReason, strings } from '../../words';
import { FindingCard } from './FindingCard';

const ofKind = (kase: Case, ...kinds: FindingKind[]): WeighedFinding[] =>
  weighedFindings(kase).filter(({ finding }) => kinds.includes(finding.kind));

/** What stands against each other, open and on top. */
export function Against({ kase }: { kase: Case }) {
  const against = ofKind(kase, 'contradiction', 'doubt');
  if (against.length === 0) return null;
  return (
    <section aria-labelledby="against-title">
      <h2 id="against-title">{strings.findings.against}</h2>
      {against.map(({ finding, weight }) => (
        <FindingCard key={finding.id} finding={finding} weight={weight} open={finding.kind === 'contradiction'} />
      ))}
    </section>
  );
}

/** What is missing, what agrees, and which checks cannot tell: further down, folded. */
export function RestOfFindings({ kase }: { kase: Case }) {
  const gaps = ofKind(kase, 'gap');
  const agreements = ofKind(kase, 'agreement');
  const unable = kase.outcomes.flatMap((outcome) => (outcome.outcome === 'cannot-tell' ? [outcome] : []));
  return (
    <>
      {gaps.length > 0 && (
        <section aria-labelledby="gaps-title">
          <h2 id="gaps-title">{strings.findings.gaps}</h2>
          {gaps.map(({ finding, weight }) => (
            <FindingCard key={finding.id} finding={finding} weight={weight} quiet />
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
          {agreements.map(({ finding, weight }) => (
            <FindingCard key={finding.id} finding={finding} weight={weight} quiet />
          ))}
        </details>
      )}
      {unable.length > 0 && (
        <details class="quiet">
          <summary>{strings.findings.cannotTell(unable.length)}</summary>
          <ul>
            {unable.map(({ check, why }) => (
              <li key={check}>
                {check.replaceAll('-', ' ')}: {sayReason(why, chosenLanguage())}
              </li>
            ))}
          </ul>
        </details>
      )}
    </>
  );
}
