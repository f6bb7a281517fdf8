import { useState } from 'preact/hooks';
import type { Proposal, ProposalKind } from '../../../take';
import { kit, strings } from '../../../words';
import { entryWords } from './entry-words';

const words = strings.take;
const order = Object.keys(words.kinds) as ProposalKind[];

interface Props {
  proposals: readonly Proposal[];
  /** The maker whose proposals are shown. */
  of: string | null;
  ticked: ReadonlySet<number>;
  onChange: (places: readonly number[], on: boolean) => void;
  /** Shows a proposal's words on their page, and says whether they are there; null where no tab shows it. */
  show: ((proposal: Proposal) => Promise<boolean>) | null;
}

const allWords = { table: words.all, list: words.allOfList, definition: words.allOfList, prose: words.allOfText };

/** Proposals of one maker by kind, and by the table, list or passage that they stand in, each ticked whole or one by one. */
export function Proposals({ proposals, of, ticked, onChange, show }: Props) {
  const own = proposals.flatMap((proposal, at) => (proposal.maker === of ? [{ proposal, at }] : []));
  return (
    <>
      {order.map((kind) => {
        const entries = own.filter(({ proposal }) => proposal.kind === kind);
        const blocks = [...new Set(entries.map(({ proposal }) => proposal.at.block))];
        return (
          entries.length > 0 && (
            <div key={kind}>
              <h4>{words.kinds[kind]}</h4>
              {blocks.map((block) => (
                <Block
                  key={block}
                  entries={entries.filter(({ proposal }) => proposal.at.block === block)}
                  ticked={ticked}
                  onChange={onChange}
                  show={show}
                />
              ))}
            </div>
          )
        );
      })}
    </>
  );
}

interface BlockProps extends Pick<Props, 'ticked' | 'onChange' | 'show'> {
  entries: readonly { proposal: Proposal; at: number }[];
}

function Block({ entries, ticked, onChange, show }: BlockProps) {
  const places = entries.map(({ at }) => at);
  const chosen = places.filter((at) => ticked.has(at)).length;
  const { form } = entries[0]!.proposal.at;
  return (
    <div class="take-block">
      {entries.length > 1 && (
        <label class="take-all">
          <input
            type="checkbox"
            checked={chosen === places.length}
            indeterminate={chosen > 0 && chosen < places.length}
            onChange={({ currentTarget }) => onChange(places, currentTarget.checked)}
          />{' '}
          {allWords[form](entries.length)}
        </label>
      )}
      <ul class="take-list">
        {entries.map(({ proposal, at }) => (
          <li key={at} class="take-entry">
            <label>
              <input
                type="checkbox"
                checked={ticked.has(at)}
                onChange={({ currentTarget }) => onChange([at], currentTarget.checked)}
              />{' '}
              <span>{entryWords(proposal)}</span>
            </label>
            {proposal.doubts.length > 0 && (
              <p class="take-doubt">{kit.sentence(kit.list(proposal.doubts.map((doubt) => words.doubts[doubt])))}</p>
            )}
            <p class="muted take-words">{kit.quote(proposal.words)}</p>
            {show && <ShowOnPage of={entryWords(proposal)} show={() => show(proposal)} />}
          </li>
        ))}
      </ul>
    </div>
  );
}

/** Leads to the words on their page; where they are gone it says so. */
function ShowOnPage({ of, show }: { of: string; show: () => Promise<boolean> }) {
  const [lost, setLost] = useState(false);
  return (
    <p class="take-show">
      <button
        type="button"
        class="small"
        aria-label={words.showOnPageOf(of)}
        onClick={async () => setLost(!(await show()))}
      >
        {words.showOnPage}
      </button>{' '}
      <span role="status" class="muted hint">
        {lost && words.notOnPage}
      </span>
    </p>
  );
}
