import type { Finding } from '../../check/types';
import { strings } from '../strings';
import { Kind } from './Kind';

/** One finding: its statement at once; basis, innocent explanation, what settles it and source one step behind. */
export const FindingCard = ({ finding, open }: { finding: Finding; open: boolean }) => (
  <details class={`finding finding-${finding.kind}`} data-check={finding.check} data-kind={finding.kind} open={open}>
    <summary>
      <Kind kind={finding.kind} />
      <span class="finding-statement">{finding.statement}</span>
    </summary>
    <dl>
      <dt>{strings.findings.basis}</dt>
      {finding.basis.map((line) => (
        <dd key={line}>{line}</dd>
      ))}
      {finding.kind === 'agreement' ? null : (
        <>
          <dt>{strings.findings.innocent}</dt>
          <dd>{finding.innocent}</dd>
          <dt>{strings.findings.settles}</dt>
          <dd>{finding.settles}</dd>
        </>
      )}
      <dt>{strings.findings.source}</dt>
      <dd>
        {finding.source.kind === 'practice'
          ? finding.source.text
          : `${finding.source.text} (${strings.sources[finding.source.kind]})`}
      </dd>
    </dl>
  </details>
);
