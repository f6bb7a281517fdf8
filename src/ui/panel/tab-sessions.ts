import { browser } from '../../browser/api';
import { receive } from '../../message/receive';
import { sendToPage } from '../../message/send';
import { succeed } from '../../problem';
import { onOwnMakers } from '../../store/maker-files';
import { browserPorts } from './ports';
import { createSession, type Session } from './session';
import type { SessionPorts } from './session-ports';
import { blankState, type PanelState } from './state';
import { type TabChange, watchPage } from './watch-page';

/** The session of one tab, with the state that it last published. */
export interface TabSession {
  session: Session;
  state(): PanelState;
  /** Tells of every state from now on; what it returns ends that. */
  subscribe(listener: (state: PanelState) => void): () => void;
  end(): void;
}

/** A session holds its tab's photos: of those shown last so many are kept, an older one reads its tab anew. */
const mostKept = 6;
/** A page that changes its address first and its content afterwards has done so by then. */
const askAgainMs = 1_500;

/**
 * The sessions of one document, one for each tab that it has shown: a panel that follows the tab in front finds what
 * was read and typed when the user comes back. Each starts reading at once, hears when its tab moves on, and ends with it.
 */
export function keepTabSessions(ports: SessionPorts = browserPorts(), most = mostKept) {
  const kept = new Map<number, TabSession>();
  const end = (tabId: number) => {
    kept.get(tabId)?.end();
    kept.delete(tabId);
  };
  browser.tabs.onRemoved.addListener(end);
  return function sessionOf(tabId: number): TabSession {
    const found = kept.get(tabId) ?? openTabSession(tabId, ports);
    // The one shown last stands last.
    kept.delete(tabId);
    kept.set(tabId, found);
    for (const [oldest] of kept) {
      if (kept.size <= most) break;
      end(oldest);
    }
    return found;
  };
}

function openTabSession(tabId: number, ports: SessionPorts): TabSession {
  let state = blankState;
  const listeners = new Set<(state: PanelState) => void>();
  const watch = watchPage({
    async stands() {
      const reply = await sendToPage(tabId, 'page.stands', {});
      return reply.ok ? (reply.value.stands ? 'yes' : 'no') : 'gone';
    },
    left: () => session.pageLeft(),
    arrived: () => session.pageArrived(),
    later(call) {
      const timer = setTimeout(call, askAgainMs);
      return () => clearTimeout(timer);
    },
  });
  const session: Session = createSession(tabId, ports, (published) => {
    state = published;
    if (state.moved === 'no' && state.listing !== null) watch.read();
    for (const listener of listeners) listener(published);
  });
  const onUpdated = (updatedId: number, change: TabChange) => {
    if (updatedId === tabId) watch.heard(change);
  };
  browser.tabs.onUpdated.addListener(onUpdated);
  const endAnswers = receive('panel', {
    'tab.granted': async (granted) => {
      if (granted.tabId === tabId) session.renewed(granted.at);
      return succeed({});
    },
  });
  const endMakers = onOwnMakers(() => session.makersChanged());
  session.read();
  return {
    session,
    state: () => state,
    subscribe(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    end() {
      watch.end();
      browser.tabs.onUpdated.removeListener(onUpdated);
      endAnswers();
      endMakers();
      session.end();
    },
  };
}
