import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Session } from './session';
import type { PanelState } from './state';
import { keepTabSessions, type TabSession } from './tab-sessions';

let sessionOf: ((tabId: number) => TabSession) | null = null;

/** The session of a tab, with its state; begun when the tab is shown for the first time. */
export function useSession(tabId: number): [PanelState, Session] {
  const tab = useMemo(() => {
    sessionOf ??= keepTabSessions();
    return sessionOf(tabId);
  }, [tabId]);
  const [state, publish] = useState<PanelState>(tab.state);
  useEffect(() => {
    // What was published between the first drawing and this.
    publish(tab.state());
    return tab.subscribe(publish);
  }, [tab]);
  return [state, tab.session];
}
