import type { NotLookedAt as Rest } from '../../watch';
import { chosenLanguage, nameOfCheck, strings } from '../../words';
import { CannotTell } from '../parts/CannotTell';
import { saidProblem, sentence } from '../parts/ProblemNote';

const words = strings.dossier;

/** What the document cannot speak of, and why: unread is never fine. */
export function NotLookedAt({ rest, photoCount }: { rest: Rest; photoCount: number }) {
  const { unread, neverOpened, tooWeak, copied, problems, checks, failed } = rest;
  const missing = unread.reduce((sum, { photos }) => sum + photos.length, neverOpened.length);
  return (
    <section aria-labelledby="dossier-not-read">
      <h2 id="dossier-not-read">{strings.notRead.title}</h2>
      {missing > 0 && <p>{strings.photos.notRead(missing, photoCount)}:</p>}
      <ul>
        {failed.map(({ check, why }) => (
          <li key={check}>{strings.findings.failed(nameOfCheck(check, chosenLanguage()), why)}</li>
        ))}
        {unread.map(({ photos, problem }) => (
          <li key={photos.join()}>
            {strings.photos.numbered(photos)}: {sentence(saidProblem(problem).what)}
          </li>
        ))}
        {neverOpened.length > 0 && (
          <li>
            {strings.photos.numbered(neverOpened)}: {words.neverOpened}
          </li>
        )}
        {tooWeak.length > 0 && (
          <li>
            {strings.photos.numbered(tooWeak)}: {words.tooWeak}
          </li>
        )}
        {copied.length > 0 && (
          <li>
            {strings.photos.numbered(copied)}: {strings.copies.notJudged(copied.length)}
          </li>
        )}
        {problems.map(saidProblem).map(({ code, where, what }) => (
          <li key={`${code} ${where}`}>{sentence(what)}</li>
        ))}
        <li>{strings.head.never}</li>
      </ul>
      {checks.length > 0 && (
        <>
          <h3>{words.cannotTell}</h3>
          <CannotTell checks={checks} />
        </>
      )}
    </section>
  );
}
