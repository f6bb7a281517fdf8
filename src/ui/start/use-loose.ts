import { useEffect, useState } from 'preact/hooks';
import { blankState, type PanelState } from '../panel/state';
import { type LooseSession, openLoose } from './loose-session';

/** Codes and photos without a listing, while the screen stands. */
export function useLoose(): [PanelState, LooseSession] {
  const [state, publish] = useState<PanelState>(blankState);
  const [loose] = useState(() => openLoose(publish));
  useEffect(() => {
    loose.session.readFields();
    return () => loose.session.end();
  }, [loose]);
  return [state, loose];
}
