import { looseListing } from '../../case';
import { inventedMakers, type MakerFile } from '../../maker';
import { fail, succeed } from '../../problem';
import { finishedMakers } from '../../store/maker-files';
import { browserPorts } from '../panel/ports';
import { createSession, type Session } from '../panel/session';
import type { SessionPorts } from '../panel/session-ports';
import type { PanelState } from '../panel/state';
import { gone, type LoosePhoto } from './photo-of-file';

export interface LooseSession {
  session: Session;
  /** Reads these photos too. */
  add(photos: readonly LoosePhoto[]): void;
  /** Reads by the rules of this maker, by its name; empty where nobody knows whose they are. */
  under(maker: string): void;
}

/** No tab has this number: nothing of a page is asked for. */
const noTab = -1;

/** The session's ways where no page is read: the same reader and the same case, of what the buyer brings. */
export const portsWithoutPage = (
  own: Pick<SessionPorts, 'readPage' | 'fetchPhoto'> & Partial<SessionPorts>,
): SessionPorts => ({
  ...browserPorts(),
  lookBack: () => ({ at: async () => null, end: () => undefined }),
  mayRead: async () => true,
  ...own,
});

/** Reads codes and photos without a listing. The invented makers speak only where one of them is asked for by name. */
export function openLoose(publish: (state: PanelState) => void): LooseSession {
  let maker = '';
  const photos: LoosePhoto[] = [];
  const ports = portsWithoutPage({
    async readPage() {
      const listing = looseListing({ maker, photos: photos.map(({ id }) => id), readAt: new Date().toISOString() });
      return succeed({ listing, incognito: false, picks: [] });
    },
    async fetchPhoto(_, photoId) {
      const photo = photos.find(({ id }) => id === photoId);
      return photo ? photo.bytes() : fail(gone(photoId));
    },
    makers: async () => [...inventedUnder(maker), ...(await finishedMakers())],
  });
  const session = createSession(noTab, ports, publish);
  return {
    session,
    add(more) {
      photos.push(...more);
      session.readFields();
    },
    under(name) {
      maker = name;
      session.readFields();
    },
  };
}

const inventedUnder = (name: string): MakerFile[] =>
  name === '' ? [] : inventedMakers().filter(({ maker }) => maker === name);
