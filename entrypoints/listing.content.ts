import { defineContentScript } from 'wxt/utils/define-content-script';
import { answerInPage } from '../src/bridge/answer-in-page';
import { closedShadowRoot } from '../src/bridge/closed-shadow-root';
import { fetchInPage } from '../src/bridge/page-photos';
import { replaceEarlier } from '../src/bridge/replace-earlier';
import { pickOnPage, readPage } from '../src/listing';

/** The page's own work goes on between two slices of ours. */
const givePageItsTurn = () => new Promise<void>((resume) => setTimeout(resume, 0));

export default defineContentScript({
  registration: 'runtime',
  matches: [],
  main() {
    const running = replaceEarlier('page-script');
    let picking = new AbortController();
    answerInPage(
      'page',
      {
        'listing.read': async ({ picks, frameTexts }) => {
          const now = new Date().toISOString();
          const pageAsSeen = { view: window, closedShadowRoot, pause: givePageItsTurn, frameTexts };
          return { ok: true, value: await readPage(document, { url: location.href, now, picks, ...pageAsSeen }) };
        },
        'field.pick': async ({ field, invite }) => {
          picking.abort();
          picking = new AbortController();
          const signal = AbortSignal.any([running, picking.signal]);
          return { ok: true, value: await pickOnPage(document, field, { invite }, signal) };
        },
        'field.endPick': async () => {
          picking.abort();
          return { ok: true, value: {} };
        },
        'photo.fetchInPage': fetchInPage,
      },
      running,
    );
  },
});
