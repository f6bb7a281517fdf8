import type { Case } from '../../case';
import { type Change, changesSince } from '../../check';
import type { Claim } from '../../claim/types';
import type { Price } from '../../listing/types';
import { kit, strings } from '../../words';
import { claimWords, priceWords } from '../claim-words';
import { sizeStatements } from '../size-words';

/** More sentences of a description than this are counted only. */
const mostSentences = 5;

/** What a saved listing says otherwise than at the look before, or that it says the same; nothing at the first look. */
export function Changes({ kase }: { kase: Case }) {
  if (!kase.previous) return null;
  const day = kit.day(kase.previous.readAt);
  const changes = changesSince(kase.previous, kase.listing, kase.claims);
  if (changes.length === 0) return <p class="changes-none muted">{strings.changes.none(day)}</p>;
  return (
    <section class="changes" aria-labelledby="changes-title">
      <h2 id="changes-title">{strings.changes.title(day)}</h2>
      <ul>
        {changes.map((change) => (
          <li key={change.what === 'claim' ? change.kind : change.what} data-change={change.what}>
            {changeWords(change)}
            {change.what === 'description' && (
              <>
                <Sentences title={strings.changes.gone} sentences={change.gone} />
                <Sentences title={strings.changes.added} sentences={change.added} />
              </>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}

function changeWords(change: Change): string {
  const words = strings.changes;
  switch (change.what) {
    case 'price':
      return change.now === null
        ? words.noPrice(priceWords(change.before))
        : words.price(priceWords(change.before), priceWords(change.now), shareOf(change.before, change.now));
    case 'title':
      return words.heading(kit.quote(change.before), change.now && kit.quote(change.now));
    case 'seller':
      return words.seller(kit.quote(change.before), change.now && kit.quote(change.now));
    case 'description':
      return change.gone.length + change.added.length === 0 ? words.noDescription : words.description;
    case 'photos': {
      const { gone, added, of, now } = change;
      if (added === null) return words.photosNumber(of, now);
      return [gone > 0 && words.photosGone(gone, of), added.length > 0 && words.photosAdded(added)]
        .filter(Boolean)
        .join(' ');
    }
    case 'claim': {
      const kind = strings.claims.kinds[change.kind];
      const [gone, added] = [saidIn(change.gone), saidIn(change.added)];
      if (added === '') return words.claimGone(kind, gone);
      return gone === '' ? words.claimAdded(kind, added) : words.claim(kind, gone, added);
    }
  }
}

function saidIn(claims: readonly Claim[]): string {
  const sizes = claims.filter((claim) => claim.kind === 'measure');
  const said = sizes.length > 0 ? sizeStatements(sizes).map(([statement]) => statement) : claims.map(claimWords);
  return said.length === 0 ? '' : kit.list([...new Set(said)]);
}

/** By how much a price fell or rose; null across currencies and for ranges. */
function shareOf(before: Price, now: Price): { less: boolean; by: string } | null {
  const [was, is] = [before, now].map(({ minor, exponent }) => minor / 10 ** exponent) as [number, number];
  const comparable = before.currency !== null && before.currency === now.currency && was > 0;
  if (!comparable || before.minorTo !== undefined || now.minorTo !== undefined) return null;
  const share = Math.abs(is / was - 1);
  return share < 0.005 ? null : { less: is < was, by: kit.percent(share) };
}

function Sentences({ title, sentences }: { title: string; sentences: readonly string[] }) {
  if (sentences.length === 0) return null;
  const rest = sentences.length - mostSentences;
  return (
    <p class="hint">
      {title}{' '}
      {sentences.slice(0, mostSentences).map((sentence) => (
        <span key={sentence}>
          <q>{sentence}</q>{' '}
        </span>
      ))}
      {rest > 0 && strings.changes.more(rest)}
    </p>
  );
}
