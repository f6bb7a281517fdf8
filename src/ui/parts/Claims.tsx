import type { Claim } from '../../claim/types';
import { kit, strings } from '../../words';
import { claimWords } from '../claim-words';
import { groupBy } from '../group-by';
import { sizeStatements } from '../size-words';

/** Leaves a claim out: it is not of this piece, or was read wrong. */
type OnStrike = (claim: Claim) => void;

/** What the seller states, with the words that it stands in. The same statement in two places stands here once. */
export function Claims({ claims, onStrike }: { claims: Claim[]; onStrike?: OnStrike | undefined }) {
  const open = claims.filter(({ kind }) => kind === 'not-placed');
  const rows = groupBy(
    claims.filter((claim) => !open.includes(claim)),
    (claim) => strings.claims.kinds[claim.kind],
  );
  return (
    <>
      {rows.length === 0 && <p class="muted">{strings.claims.none}</p>}
      {rows.length > 0 && <ClaimRows rows={rows} onStrike={onStrike} />}
      {open.length > 0 && <NotPlaced claims={open} folded={onStrike !== undefined} />}
    </>
  );
}

/** What is said of nothing that could be told, folded where there is work to do and open where it is only read. */
function NotPlaced({ claims, folded }: { claims: Claim[]; folded: boolean }) {
  const said = [...new Set(claims.map(claimWords))];
  return (
    <details class="not-placed" open={!folded}>
      <summary>{strings.claims.notPlaced(said.length)}</summary>
      <p class="muted">{strings.claims.says.notPlacedNote}</p>
      <ul>
        {said.map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
    </details>
  );
}

interface RowsProps {
  rows: [kind: string, said: Claim[]][];
  onStrike?: OnStrike | undefined;
}

function ClaimRows({ rows, onStrike }: RowsProps) {
  return (
    <table class="claims">
      <tbody>
        {rows.map(([kind, said]) => (
          <tr key={kind}>
            <th scope="row">{kind}</th>
            <td>
              {statementsOf(said).map(([statement, places]) => (
                <Statement key={statement} statement={statement} places={places} onStrike={onStrike} />
              ))}
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Sizes are read by the row: their side may stand in their order only. */
function statementsOf(claims: Claim[]): [statement: string, claims: Claim[]][] {
  const sizes = claims.filter((claim) => claim.kind === 'measure');
  return sizes.length > 0 ? sizeStatements(sizes) : groupBy(claims, claimWords);
}

interface StatementProps {
  statement: string;
  places: Claim[];
  onStrike?: OnStrike | undefined;
}

function Statement({ statement, places, onStrike }: StatementProps) {
  const quotes = [...new Set(places.map(({ words }) => words.trim()))].filter((words) => addsTo(statement, words));
  return (
    <div>
      {statement}
      {quotes.map((words) => (
        <q key={words} class="muted">
          {words}
        </q>
      ))}
      {takenByOf(places).map((why) => (
        <small key={why} class="muted">
          {why}
        </small>
      ))}
      {onStrike && (
        <button
          type="button"
          class="small"
          aria-label={strings.byHand.leaveOutNamed(statement)}
          onClick={() => places.forEach(onStrike)}
        >
          {strings.byHand.leaveOut}
        </button>
      )}
    </div>
  );
}

/** By what numbers of the text were taken for codes, each way once. */
function takenByOf(claims: readonly Claim[]): string[] {
  const { takenBy } = strings.claims.says;
  return [
    ...new Set(
      claims.flatMap((claim) => {
        if (claim.kind !== 'code' || !claim.takenBy) return [];
        const { by, words } = claim.takenBy;
        return [takenBy[by](by === 'layout' ? words : kit.quote(words))];
      }),
    ),
  ];
}

/** Words that only repeat the statement, or are an address or an enumeration of the page's data, tell a buyer nothing. */
function addsTo(statement: string, words: string): boolean {
  const plain = (text: string) => text.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
  return !/^https?:|^\w*[a-z][A-Z]\w*$/.test(words) && !plain(statement).includes(plain(words));
}
