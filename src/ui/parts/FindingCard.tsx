import type { Finding } from '../../check/types';
import type { Weight } from '../../evidence';
import { chosenLanguage, sayFinding, sayWeight, strings } from '../../words';
import { Kind } from './Kind';

/**
 * One finding: its statement at once; basis, innocent explanation, what settles it and source one step behind; how
 * its weight is derived one more, where it rests on evidence. Under a heading that names the kind, `quiet` leaves the
 * word out.
 */
export function FindingCard({
  finding,
  weight,
  open = false,
  quiet = false,
}: {
  finding: Finding;
  weight: Weight;
  open?: boolean;
  quiet?: boolean;
}) {
  const said = sayFinding(finding, chosenLanguage());
  return (
    <details
      class={`finding finding-${finding.kind} ${quiet ? 'finding-quiet' : ''}`}
      data-check={finding.check}
      data-kind={finding.kind}
      open={open}
    >
      <summary>
        {quiet ? null : <Kind kind={finding.kind} />}
        <span class="finding-statement">{said.statement}</span>
      </summary>
      <dl>
        <dt>{strings.findings.basis}</dt>
        {said.basis.map((line) => (
          <dd key={line}>{line}</dd>
        ))}
        {finding.kind === 'agreement' ? null : (
          <>
            <dt>{strings.findings.innocent}</dt>
            <dd>{said.innocent}</dd>
            <dt>{strings.findings.settles}</dt>
            <dd>{said.settles}</dd>
          </>
        )}
        <dt>{strings.findings.source}</dt>
        <dd>
          {finding.source.text}
          {finding.source.kind === 'memory' && ` (${strings.sources.memory})`}
        </dd>
      </dl>
      {weight.standing === 'bare' ? null : (
        <details class="quiet">
          <summary>{strings.findings.weight}</summary>
          <ul>
            {sayWeight(weight, chosenLanguage()).map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
    </details>
  );
}
