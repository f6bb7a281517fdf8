import { type Case, type Correction, findMeant, isOfCorrection, setAsideIn } from '../../case';
import { photoNumber } from '../../check';
import { chosenLanguage, sayFinding, strings } from '../../words';
import { markWords } from '../bench/mark-words';
import { nameOfSeen } from '../seen-words';
import { saidProblem, sentence } from './ProblemNote';

/** Everything that the buyer set, added or left out: each says what became of it, and can be taken back. */
export function Corrections({ kase, onUndo }: { kase: Case; onUndo?: ((id: string) => void) | undefined }) {
  // A finding that is set aside stands with its reason in a part of its own.
  const aside = new Set(setAsideIn(kase).map(({ correction }) => correction.id));
  const corrections = kase.corrections.filter(({ id }) => !aside.has(id));
  if (corrections.length === 0) return null;
  return (
    <section aria-labelledby="by-you-title">
      <h2 id="by-you-title">{strings.byHand.title}</h2>
      <ul class="corrections">
        {corrections.map((correction) => {
          const words = wordsOf(correction, kase);
          const unmet = kase.skipped.find((problem) => isOfCorrection(problem) && problem.where === correction.id);
          return (
            <li key={correction.id}>
              {words}{' '}
              {onUndo && (
                <button
                  type="button"
                  class="small"
                  aria-label={strings.byHand.undoNamed(words)}
                  onClick={() => onUndo(correction.id)}
                >
                  {strings.byHand.undo}
                </button>
              )}
              {unmet && (
                <p class="problem">
                  {sentence(saidProblem(unmet).what)} <span class="muted">{saidProblem(unmet).remedy}</span>
                </p>
              )}
            </li>
          );
        })}
      </ul>
    </section>
  );
}

function wordsOf(correction: Correction, kase: Case): string {
  const words = strings.byHand;
  if (correction.of === 'claim') {
    const { target, to } = correction;
    if (!target && to?.kind === 'maker') return words.maker(to.maker);
    if (target && !to) return words.claimStruck(target.words);
    return target ? words.claimSet(target.words, to?.words ?? '') : words.claimAdded(to?.words ?? '');
  }
  if (correction.of === 'finding')
    return words.aside(sayFinding(correction.target, chosenLanguage()).statement, correction.reason);
  if (correction.of === 'piece') return correction.to === null ? words.onePiece : words.piece(correction.to);
  const photo = photoOf(correction, kase);
  if (correction.of === 'mark') return strings.bench.ofMark(photo, markWords(correction.mark));
  if (correction.of === 'part') return words.part(photo);
  const { target, to } = correction;
  const value = (of: unknown) => (typeof of === 'string' || typeof of === 'number' ? String(of) : '');
  if (to?.what === 'piece-of-stamp') return words.stampOn(photo, value(to.value));
  if (to?.what === 'shows-part') return words.shows(photo, strings.partTags.name(value(to.value)));
  if (to?.what === 'code')
    return target ? words.codeSet(value(target.was), value(to.value)) : words.code(value(to.value));
  if (!to)
    return target?.what === 'stamp-line'
      ? words.lineStruck(photo, value(target.was))
      : words.seenStruck(photo, nameOfSeen(target?.what ?? ''));
  return words.seenSet(photo, nameOfSeen(to.what));
}

function photoOf(
  correction: Extract<Correction, { of: 'seen' | 'part' | 'mark' }>,
  { listing, photos }: Case,
): number | null {
  const id = correction.photo && findMeant(correction.photo, listing.photos, photos);
  return id === null ? null : photoNumber(listing, id);
}
