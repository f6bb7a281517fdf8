import type { Case } from '../../case';
import { strings } from '../strings';
import { sentence } from './ProblemNote';

/** What was not read or not done, said once, with the reason. */
export function NotRead({ kase }: { kase: Case }) {
  const numberOf = (photoId: string) => kase.listing.photos.findIndex(({ id }) => id === photoId) + 1;
  const unread = kase.photos.flatMap((photo) => (photo.state === 'unread' ? [photo] : []));
  const isPhoto = (where: string) => unread.some(({ photoId }) => where.includes(photoId));
  const others = kase.skipped.filter(({ where }) => !isPhoto(where));
  if (unread.length === 0 && others.length === 0) return null;
  return (
    <section class="not-read" aria-labelledby="not-read-title">
      <h2 id="not-read-title">{strings.notRead.title}</h2>
      {unread.length > 0 && <p>{strings.photos.notRead(unread.length, kase.listing.photos.length)}:</p>}
      <ul>
        {unread.map(({ photoId, problem }) => (
          <li key={photoId}>
            {strings.photos.alone(numberOf(photoId))}: {problem.what}. <span class="muted">{problem.remedy}</span>
          </li>
        ))}
        {others.map(({ code, where, what, remedy }) => (
          <li key={`${code} ${where}`}>
            {sentence(what)} <span class="muted">{remedy}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
