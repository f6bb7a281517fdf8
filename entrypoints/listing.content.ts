import { defineContentScript } from 'wxt/utils/define-content-script';
import { answerInPage } from '../src/bridge/answer-in-page';
import { browser } from '../src/bridge/browser';
import { fetchInPage, showPhoto, unshowPhoto } from '../src/bridge/page-photos';
import { type Pick, type PickField, pickOnPage, readPage } from '../src/listing';

/** The name under which this script's earlier copy in the same page is found and ended. */
const earlier = Symbol.for('tellstamp.page-script');
type Scope = typeof globalThis & { [earlier]?: AbortController };

/** The page's own work goes on between two slices of ours. */
const givePageItsTurn = () => new Promise<void>((resume) => setTimeout(resume, 0));

/** Chrome shows closed shadow roots to a content script; Firefox gives the element a property of its own. */
function closedShadowRoot(element: Element): ShadowRoot | null {
  const { dom } = browser as unknown as { dom?: { openOrClosedShadowRoot(element: Element): ShadowRoot | null } };
  if (dom) return dom.openOrClosedShadowRoot(element);
  return (element as Element & { openOrClosedShadowRoot?: ShadowRoot | null }).openOrClosedShadowRoot ?? null;
}

export default defineContentScript({
  registration: 'runtime',
  matches: [],
  main() {
    const scope = globalThis as Scope;
    scope[earlier]?.abort();
    const running = new AbortController();
    scope[earlier] = running;
    let picking = new AbortController();
    answerInPage(
      {
        'listing.read': async ({ picks, frameTexts }: { picks: Pick[]; frameTexts: Record<string, string> }) => {
          const now = new Date().toISOString();
          const pageAsSeen = { view: window, closedShadowRoot, pause: givePageItsTurn, frameTexts };
          return { ok: true, value: await readPage(document, { url: location.href, now, picks, ...pageAsSeen }) };
        },
        'field.pick': async ({ field, invite }: { field: PickField; invite: string }) => {
          picking.abort();
          picking = new AbortController();
          const signal = AbortSignal.any([running.signal, picking.signal]);
          return { ok: true, value: await pickOnPage(document, field, { invite }, signal) };
        },
        'field.endPick': async () => {
          picking.abort();
          return { ok: true, value: {} };
        },
        'photo.fetchInPage': fetchInPage,
        'photo.show': showPhoto,
        'photo.unshow': unshowPhoto,
      },
      running.signal,
    );
  },
});
