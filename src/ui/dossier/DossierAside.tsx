import { type Case, setAsideIn } from '../../case';
import { chosenLanguage, sayFinding, strings } from '../../words';

const words = strings.findings.aside;

/** What the buyer set aside, with the reason: named, so that whoever reads the document can judge it otherwise. */
export function DossierAside({ kase }: { kase: Case }) {
  const aside = setAsideIn(kase);
  if (aside.length === 0) return null;
  return (
    <section aria-labelledby="dossier-aside">
      <h2 id="dossier-aside">{words.title}</h2>
      <ul>
        {aside.map(({ finding, correction }) => (
          <li key={correction.id} data-check={finding.check}>
            {sayFinding(finding, chosenLanguage()).statement} {words.because(correction.reason)}
          </li>
        ))}
      </ul>
    </section>
  );
}
