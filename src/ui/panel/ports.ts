import { buildCase } from '../../case';
import { makersFor } from '../../maker';
import { fromBase64 } from '../../message/bytes';
import { send } from '../../message/send';
import { connectReader } from '../../reader';
import { finishedMakers } from '../../store/maker-files';
import { watchPorts } from '../../store/watch-ports';
import { openWatchList } from '../../watch';
import type { SessionPorts } from './session-ports';

/** The session's ways to the browser. */
export const browserPorts = (): SessionPorts => ({
  readPage: (tabId) => send('page.read', { tabId }),
  fetchPhoto: (tabId, photoId) => send('photo.fetch', { tabId, photoId }),
  reader: connectReader(),
  makers: finishedMakers,
  buildCase: (facts) => buildCase({ ...facts, makers: makersFor(facts.listing.url, facts.makers) }),
  lookBack() {
    const opening = openWatchList(watchPorts);
    const end = async () => {
      const opened = await opening;
      if (opened.ok) opened.value.close();
    };
    return {
      async at(url, incognito) {
        const opened = await opening;
        if (!opened.ok) return null;
        const found = incognito ? null : await opened.value.earlier(url);
        opened.value.close();
        return found?.ok ? found.value : null;
      },
      end,
    };
  },
  async mayRead(tabId) {
    const reply = await send('page.mayRead', { tabId });
    return reply.ok && reply.value.mayRead;
  },
  now: () => new Date().toISOString(),
  clock: {
    now: () => performance.now(),
    wake(afterMs, call) {
      const timer = setTimeout(call, afterMs);
      return () => clearTimeout(timer);
    },
  },
  // The type is not the server's word: nothing but a picture is ever drawn from these addresses.
  keepFile: ({ base64 }) => URL.createObjectURL(new Blob([fromBase64(base64)])),
  dropFile: (address) => URL.revokeObjectURL(address),
});
