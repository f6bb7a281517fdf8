import { defineContentScript } from 'wxt/utils/define-content-script';
import { pickOnPage } from '../src/listing';
import { answerInPage } from '../src/message/answer-in-page';
import { replaceEarlier } from '../src/reader/page/replace-earlier';

/** Put into a page only when the buyer points at something there. */
export default defineContentScript({
  registration: 'runtime',
  matches: [],
  main() {
    const running = replaceEarlier('pointing');
    let picking = new AbortController();
    answerInPage(
      'pointing',
      {
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
      },
      running,
    );
  },
});
