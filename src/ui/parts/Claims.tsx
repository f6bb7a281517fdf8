import type { Claim } from '../../claim/types';
import { claimWords } from '../claim-words';
import { strings } from '../strings';

/** What the seller states, with the words that it stands in. */
export const Claims = ({ claims }: { claims: Claim[] }) => (
  <section aria-labelledby="claims-title">
    <h2 id="claims-title">{strings.claims.title}</h2>
    {claims.length === 0 ? (
      <p class="muted">{strings.claims.none}</p>
    ) : (
      <table class="claims">
        <tbody>
          {claims.map((claim) => (
            <tr key={claim.id}>
              <th scope="row">{strings.claims.kinds[claim.kind]}</th>
              <td>
                {claimWords(claim)}
                {sameWords(claimWords(claim), claim.words) ? null : <q class="muted">{claim.words}</q>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    )}
  </section>
);

/** Words that only repeat the statement are not said twice. */
const sameWords = (statement: string, words: string): boolean => {
  const plain = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
  return plain(statement) === plain(words) || words.trim() === '';
};
