import type { Telling } from '../../case';
import type { Finding } from '../../check/types';
import type { Weight } from '../../evidence';
import { chosenLanguage, sayFinding, saySource, sayTellings, sayWeight, strings } from '../../words';
import { useCaseRoom } from './case-room';
import { FindingActions } from './FindingActions';
import { SetAsideForm } from './SetAside';

interface Props {
  finding: Finding;
  weight: Weight;
  /** Of an agreement: why it could have come out otherwise. */
  tells?: readonly Telling[];
  open?: boolean;
}

/**
 * One finding: its statement at once; how hard it is, what it rests on, its ordinary reason, what would clear it up, its
 * source and what can be done one step behind; how sure it is one more, where it rests on evidence.
 */
export function FindingCard({ finding, weight, tells = [], open = false }: Props) {
  const said = sayFinding(finding, chosenLanguage());
  const room = useCaseRoom();
  const hardness = strings.findings.hardness[finding.kind];
  return (
    <details class={`finding finding-${finding.kind}`} data-check={finding.check} data-kind={finding.kind} open={open}>
      <summary>
        <span class="finding-statement">{said.statement}</span>{' '}
        {hardness === '' ? null : <span class="finding-hardness">{hardness}</span>}
      </summary>
      <dl>
        <dt>{strings.findings.basis}</dt>
        {said.basis.map((line) => (
          <dd key={line}>{line}</dd>
        ))}
        {tells.length > 0 && <dt>{strings.findings.tells}</dt>}
        {sayTellings(tells, chosenLanguage()).map((line) => (
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
        <dd>{saySource(finding.source, chosenLanguage())}</dd>
      </dl>
      <FindingActions finding={finding} />
      <div class="row finding-more">
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
        {room?.setAside && finding.kind !== 'agreement' && <SetAsideForm finding={finding} onAside={room.setAside} />}
      </div>
    </details>
  );
}
