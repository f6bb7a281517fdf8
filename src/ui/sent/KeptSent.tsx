import { useRef, useState } from 'preact/hooks';
import type { DossierSent, FileContent } from '../../watch';
import { strings } from '../../words';
import { OwnSize } from '../bench/OwnSize';
import { SentPhotos } from './SentPhotos';

/** Brings a photo that is kept whole, by the name of its file; null where it is not here. */
export type OpenFile = (name: string) => Promise<FileContent | null>;

interface Props {
  sent: readonly DossierSent[];
  /** The names of the files that are kept of them, by photo. */
  files: ReadonlyMap<string, string>;
  openFile: OpenFile;
  onRemove: ((id: string) => void) | undefined;
}

/** The photos of a kept case that came another way than by the page; each opens at its own size below them. */
export function KeptSent({ sent, files, openFile, onRemove }: Props) {
  const room = useRef<HTMLDivElement>(null);
  const [opened, setOpened] = useState<{ id: string; photo: Blob | null } | null>(null);
  const number = sent.find((one) => one.sent.id === opened?.id)?.photo;
  const open = async (id: string) => {
    const name = files.get(id);
    const file = name === undefined ? null : await openFile(name);
    setOpened({ id, photo: file && new Blob([file.bytes as Uint8Array<ArrayBuffer>], { type: file.type }) });
  };
  const close = () => {
    // What was opened from the small picture leads back to it.
    room.current?.querySelector<HTMLElement>(`[data-photo="${opened?.id}"]`)?.focus();
    setOpened(null);
  };
  return (
    <div ref={room}>
      <SentPhotos sent={sent} whole={new Set(files.keys())} onOpen={open} onRemove={onRemove} />
      {opened && number !== undefined && (
        <section class="own-size" aria-label={strings.sent.opened(number)} key={opened.id}>
          {opened.photo ? (
            <OwnSize photo={opened.photo} number={number} />
          ) : (
            <p role="status">{strings.sent.notWhole}</p>
          )}
          <button type="button" class="small" onClick={close}>
            {strings.sent.close}
          </button>
        </section>
      )}
    </div>
  );
}
