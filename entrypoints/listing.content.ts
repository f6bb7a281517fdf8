import { defineContentScript } from 'wxt/utils/define-content-script';
import { closedShadowRoot } from '../src/browser/closed-shadow-root';
import { fingerprint, readPage } from '../src/listing';
import { answerInPage } from '../src/message/answer-in-page';
import { thisPage, untilArrived } from '../src/reader/page/page-arrived';
import { replaceEarlier } from '../src/reader/page/replace-earlier';
import { fetchInPage } from '../src/reader/photo/page-photos';

/** The page's own work goes on between two slices of ours. */
const givePageItsTurn = () => new Promise<void>((resume) => setTimeout(resume, 0));

export default defineContentScript({
  registration: 'runtime',
  matches: [],
  main() {
    const running = replaceEarlier('page-script');
    let shown: string | null = null;
    const mark = () => fingerprint(document, location.href);
    answerInPage(
      'page',
      {
        'listing.read': async ({ picks, frameTexts }) => {
          shown = null;
          const stillLoading = !(await untilArrived(thisPage));
          const now = new Date().toISOString();
          const pageAsSeen = { view: window, closedShadowRoot, pause: givePageItsTurn, frameTexts, stillLoading };
          const value = await readPage(document, { url: location.href, now, picks, ...pageAsSeen });
          shown = mark();
          return { ok: true, value };
        },
        'page.stands': async () => ({ ok: true, value: { stands: shown === null || shown === mark() } }),
        'photo.fetchInPage': fetchInPage,
      },
      running,
    );
  },
});
