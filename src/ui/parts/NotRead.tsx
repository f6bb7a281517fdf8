import { type Case, isOfCorrection } from '../../case';
import { isCopy } from '../../check';
import { chosenLanguage, nameOfCheck, strings } from '../../words';
import { groupBy } from '../group-by';
import { numberOf } from '../number-of';
import { CannotTell } from './CannotTell';
import { Fold } from './Fold';
import { saidProblem, sentence } from './ProblemNote';

/**
 * What was not looked at, said once, with the reason: photos that were not read, checks that failed, and what else could
 * not be told. Photos that are still waiting are not counted here.
 */
export function NotRead({ kase, copiesTold }: { kase: Case; copiesTold: boolean }) {
  const unread = kase.photos.flatMap((photo) => (photo.state === 'unread' ? [photo] : []));
  const reasons = groupBy(unread, ({ problem }) => saidProblem(problem).what);
  // The case sums up its unread photos in one line; here they stand with their numbers instead.
  // What became of the buyer's own corrections stands beside these.
  const others = kase.skipped.filter((problem) => problem.code !== 'photos-not-read' && !isOfCorrection(problem));
  // Said once: where the stamp's own result stands, as long as it does.
  const copies = copiesTold ? [] : kase.photos.filter(isCopy).map(({ photoId }) => numberOf(kase, photoId));
  const failed = kase.outcomes.flatMap((outcome) => (outcome.outcome === 'failed' ? [outcome] : []));
  const unable = kase.outcomes.flatMap((outcome) => (outcome.outcome === 'cannot-tell' ? [outcome] : []));
  return (
    <Fold part="not-looked-at" title={strings.notRead.title} class="not-read">
      {unread.length > 0 && <p>{strings.photos.notRead(unread.length, kase.listing.photos.length)}:</p>}
      <ul>
        {failed.map(({ check, why }) => (
          <li key={check} data-failed={check}>
            {strings.findings.failed(nameOfCheck(check, chosenLanguage()), why)}
          </li>
        ))}
        {reasons.map(([what, photos]) => (
          <li key={what}>
            {strings.photos.numbered(photos.map(({ photoId }) => numberOf(kase, photoId)))}: {sentence(what)}{' '}
            <span class="muted">{photos[0] && saidProblem(photos[0].problem).remedy}</span>
          </li>
        ))}
        {copies.length > 0 && (
          <li>
            {strings.photos.numbered(copies)}: {strings.copies.notJudged(copies.length)}
          </li>
        )}
        {others.map(saidProblem).map(({ code, where, what, remedy }) => (
          <li key={`${code} ${where}`}>
            {sentence(what)} <span class="muted">{remedy}</span>
          </li>
        ))}
        <li>{strings.head.never}</li>
      </ul>
      {unable.length > 0 && (
        <details class="quiet">
          <summary>{strings.findings.cannotTell}</summary>
          <CannotTell checks={unable} />
        </details>
      )}
    </Fold>
  );
}
