import type { Claim } from '../../claim/types';
import { strings } from '../../words';
import { claimWords } from '../claim-words';
import { groupBy } from '../group-by';
import { sizeStatements } from '../size-words';

/** What the seller states, with the words that it stands in. The same statement in two places stands here once. */
export function Claims({ claims }: { claims: Claim[] }) {
  const rows = groupBy(claims, (claim) => strings.claims.kinds[claim.kind]);
  return (
    <section aria-labelledby="claims-title">
      <h2 id="claims-title">{strings.claims.title}</h2>
      {rows.length === 0 ? (
        <p class="muted">{strings.claims.none}</p>
      ) : (
        <table class="claims">
          <tbody>
            {rows.map(([kind, said]) => (
              <tr key={kind}>
                <th scope="row">{kind}</th>
                <td>
                  {statementsOf(said).map(([statement, places]) => (
                    <Statement key={statement} statement={statement} places={places} />
                  ))}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
    </section>
  );
}

/** Sizes are read by the row: their side may stand in their order only. */
function statementsOf(claims: Claim[]): [statement: string, claims: Claim[]][] {
  const sizes = claims.filter((claim) => claim.kind === 'measure');
  return sizes.length > 0 ? sizeStatements(sizes) : groupBy(claims, claimWords);
}

function Statement({ statement, places }: { statement: string; places: Claim[] }) {
  const quotes = [...new Set(places.map(({ words }) => words.trim()))].filter((words) => addsTo(statement, words));
  return (
    <div>
      {statement}
      {quotes.map((words) => (
        <q key={words} class="muted">
          {words}
        </q>
      ))}
    </div>
  );
}

/** Words that only repeat the statement, or are an address or an enumeration of the page's data, tell a buyer nothing. */
function addsTo(statement: string, words: string): boolean {
  const plain = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
  return !/^https?:|^\w*[a-z][A-Z]\w*$/.test(words) && !plain(statement).includes(plain(words));
}
