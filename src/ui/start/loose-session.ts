import { looseListing } from '../../case';
import { inventedMakers, type MakerFile } from '../../maker';
import { toBase64 } from '../../message/bytes';
import type { PhotoBytes } from '../../message/protocol';
import { fail, type Result, succeed } from '../../problem';
import { mostPhotoBytes } from '../../reader/photo/photo-limits';
import { finishedMakers } from '../../store/maker-files';
import { browserPorts } from '../panel/ports';
import { createSession, type Session } from '../panel/session';
import type { SessionPorts } from '../panel/session-ports';
import type { PanelState } from '../panel/state';

/** A photo that came without a page, and the way to its bytes. */
export interface LoosePhoto {
  id: string;
  bytes(): Promise<Result<PhotoBytes>>;
}

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

/** A file of the buyer's disk. Its name is told to nobody; what it is tell its bytes. */
export const photoOfFile = (file: File): LoosePhoto => ({
  id: crypto.randomUUID(),
  async bytes() {
    if (file.size > mostPhotoBytes) return fail(tooLarge(file.name));
    try {
      return succeed(bytesOf(await file.arrayBuffer(), file.type));
    } catch {
      return fail(gone(file.name));
    }
  },
});

export const bytesOf = (bytes: ArrayBuffer, mediaType: string): PhotoBytes => ({
  base64: toBase64(new Uint8Array(bytes)),
  mediaType,
  came: { way: 'page', fullSize: true },
});

const gone = (where: string) => ({
  code: 'photo-file-gone',
  where,
  what: 'the photo is not there any more',
  remedy: 'Choose the file again.',
});
const tooLarge = (where: string) => ({
  code: 'photo-too-large',
  where,
  what: 'the file is larger than any photo of a marketplace',
  remedy: 'Save the photo smaller, or cut the stamp out of it.',
});
