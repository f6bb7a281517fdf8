import { useState } from 'preact/hooks';
import type { Finding } from '../../check/types';
import type { Claim } from '../../claim/types';
import type { Listing } from '../../listing/types';
import { strings } from '../../words';
import { numberOf } from '../number-of';
import { useCaseRoom } from './case-room';

const words = strings.message;
/** More words or photos of one finding than these would bury the finding. */
const mostShown = 3;
const longestLabel = 40;

/** Where a finding leads: its words on the page, its photos, and its question in the message. */
export function FindingActions({ finding }: { finding: Finding }) {
  const room = useCaseRoom();
  const [lost, setLost] = useState(false);
  if (room === null) return null;
  const { kase, draft, showWords, lookAt } = room;
  const claims = kase.claims.filter((claim) => finding.claims.includes(claim.id) && fieldOf(claim) !== null);
  const said = [...new Map(claims.map((claim) => [claim.words, claim])).values()].slice(0, mostShown);
  const photos = finding.photos.filter((id) => kase.listing.photos.some((photo) => photo.id === id));
  const questions = draft.questions.filter(({ settles }) => settles.includes(finding.id));
  const isAsked = questions.some(({ id }) => draft.isAsked(id));
  const show = async (claim: Claim) => {
    const field = fieldOf(claim);
    if (field !== null && showWords)
      setLost(!(await showWords({ words: claim.words, field, around: around(kase.listing, field, claim) })));
  };
  if (questions.length === 0 && (!showWords || said.length === 0) && (!lookAt || photos.length === 0)) return null;
  return (
    <>
      <div class="row finding-actions">
        {showWords &&
          said.map((claim) => (
            <button key={claim.id} type="button" class="small" onClick={() => show(claim)}>
              {words.showWords(short(claim.words))}
            </button>
          ))}
        {lookAt &&
          photos.slice(0, mostShown).map((id) => (
            <button key={id} type="button" class="small" onClick={() => lookAt(id)}>
              {words.photoOf(numberOf(kase, id))}
            </button>
          ))}
        {questions.length > 0 && (
          <button
            type="button"
            class="small"
            aria-pressed={isAsked}
            onClick={() => {
              for (const { id } of questions) draft.tick(id, !isAsked);
            }}
          >
            {words.inMessage}
          </button>
        )}
      </div>
      <p role="status" class="muted hint">
        {lost && words.notOnPage}
      </p>
    </>
  );
}

/** The field of the page in which a claim's words are seen; null where only its data say it. */
const fieldOf = ({ at: { field } }: Claim): 'title' | 'description' | null =>
  field === 'title' || field === 'description' ? field : null;

/** The words with some of what stands around them, so that the right place is found where they stand twice. */
function around(listing: Listing, field: 'title' | 'description', { at }: Claim): string {
  const text = listing[field][0]?.value ?? '';
  return text.slice(Math.max(0, at.start - 24), at.end + 24);
}

const short = (text: string) => {
  const line = text.replace(/\s+/g, ' ').trim();
  return line.length > longestLabel ? `${line.slice(0, longestLabel - 1).trimEnd()}…` : line;
};
