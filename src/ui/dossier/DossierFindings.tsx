import type { Dossier, DossierKind, NumberedFinding } from '../../watch';
import { chosenLanguage, sayFinding, saySource, sayTellings, sayWeight, strings } from '../../words';

const words = strings.findings;
/** Asked for when they are shown, in the language chosen then. */
const headings: Record<DossierKind, () => string> = {
  contradiction: () => words.contradictions,
  doubt: () => words.doubts,
  gap: () => words.gaps,
  agreement: () => words.agreements,
};

/** Every finding, by kind and numbered, with all that it rests on in the open. */
export const DossierFindings = ({ groups }: { groups: Dossier['findings'] }) =>
  groups.length === 0 ? null : (
    <section aria-labelledby="dossier-findings">
      <h2 id="dossier-findings">{words.title}</h2>
      {groups.map(({ kind, findings }) => (
        <section key={kind} aria-labelledby={`dossier-${kind}`}>
          <h3 id={`dossier-${kind}`}>{headings[kind]()}</h3>
          {findings.map((one) => (
            <NumberedCard key={one.finding.id} one={one} />
          ))}
        </section>
      ))}
    </section>
  );

/** An agreement asks nothing and needs no excuse; what a finding's weight comes from stands where it rests on evidence. */
function NumberedCard({ one: { number, finding, weight, tells } }: { one: NumberedFinding }) {
  const agrees = finding.kind === 'agreement';
  const said = sayFinding(finding, chosenLanguage());
  return (
    <article class={`finding finding-${finding.kind}`} data-check={finding.check} data-kind={finding.kind}>
      <h4>{strings.dossier.number(number, said.statement)}</h4>
      <dl>
        <Lines name={words.basis} lines={said.basis} />
        <Lines name={words.tells} lines={sayTellings(tells, chosenLanguage())} />
        {agrees ? null : <Lines name={words.innocent} lines={[said.innocent]} />}
        {agrees ? null : <Lines name={words.settles} lines={[said.settles]} />}
        <Lines name={words.source} lines={[saySource(finding.source, chosenLanguage())]} />
        {weight.standing === 'bare' ? null : (
          <Lines name={words.weight} lines={[sayWeight(weight, chosenLanguage()).join(' ')]} />
        )}
      </dl>
    </article>
  );
}

function Lines({ name, lines }: { name: string; lines: readonly string[] }) {
  if (lines.length === 0) return null;
  return (
    <>
      <dt>{name}</dt>
      {lines.map((line) => (
        <dd key={line}>{line}</dd>
      ))}
    </>
  );
}
