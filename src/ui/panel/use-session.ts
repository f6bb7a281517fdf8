import { useEffect, useMemo, useState } from 'preact/hooks';
import { browser } from '../../bridge/browser';
import { receive } from '../../bridge/receive';
import { succeed } from '../../problem';
import { browserPorts } from './ports';
import { createSession, type Session } from './session';
import { blankState, type PanelState } from './state';

/** One session for one tab, alive as long as the panel: it starts reading at once and hears when the tab moves on. */
export function useSession(tabId: number): [PanelState, Session] {
  const [state, publish] = useState<PanelState>(blankState);
  const session = useMemo(() => createSession(tabId, browserPorts(), publish), [tabId]);
  useEffect(() => {
    session.read();
    const onUpdated = (updatedId: number, { status, url }: { status?: string; url?: string }) => {
      if (updatedId !== tabId) return;
      if (status === 'loading' || url !== undefined) session.pageLeft();
      if (status === 'complete') session.pageArrived();
    };
    browser.tabs.onUpdated.addListener(onUpdated);
    const endAnswers = receive('panel', {
      'tab.granted': async (granted) => {
        if (granted.tabId === tabId) session.renewed(granted.at);
        return succeed({});
      },
    });
    return () => {
      browser.tabs.onUpdated.removeListener(onUpdated);
      endAnswers();
    };
  }, [tabId, session]);
  return [state, session];
}
