import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { Case } from '../../case';
import type { Finding } from '../../check';
import type { WantedWords } from '../../reader/page/select-words';
import type { MessageDraft } from '../message/use-message';

/** What the parts of a case can lead to, as far as the screen can: the words on the page, a photo, the message. */
export interface CaseActions {
  /** Shows a claim's words on the page; false when they are no longer there. */
  showWords?: (wanted: WantedWords) => Promise<boolean>;
  lookAt?: (photoId: string) => void;
  /** Sets a finding aside, with the buyer's reason. */
  setAside?: (finding: Finding, reason: string) => void;
}

export interface CaseRoom extends CaseActions {
  kase: Case;
  draft: MessageDraft;
}

/** Null where findings are shown by themselves. */
export const CaseRoomContext = createContext<CaseRoom | null>(null);
export const useCaseRoom = (): CaseRoom | null => useContext(CaseRoomContext);
