import type { Case } from '../../case';
import { strings } from '../../words';
import { Kind } from './Kind';

const order = ['contradiction', 'doubt', 'gap', 'agreement'] as const;

/** The first line that a buyer reads: how much stands against what. */
export function Summary({ summary }: { summary: Case['summary'] }) {
  const counts = {
    contradiction: summary.contradictions,
    doubt: summary.doubts,
    gap: summary.gaps,
    agreement: summary.agreements,
  };
  const spoken = order.filter((kind) => counts[kind] > 0);
  return (
    <section class="summary" aria-labelledby="summary-title">
      <h2 id="summary-title" class="visually-hidden">
        {strings.summary.title}
      </h2>
      {spoken.length === 0 ? (
        <p>{strings.summary.nothing}</p>
      ) : (
        <ul class="summary-line">
          {spoken.map((kind) => (
            <li key={kind}>
              <Kind kind={kind} number={counts[kind]} />
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
