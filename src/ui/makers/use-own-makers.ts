import { useCallback, useEffect, useState } from 'preact/hooks';
import type { Draft } from '../../maker';
import { type OwnMakerFile, readOwnMakers, removeOwnMaker, writeOwnMaker } from '../../store/maker-files';

/** The user's maker files; each change is written at once, and the screen shows it without waiting for the disk. */
export function useOwnMakers() {
  const [files, setFiles] = useState<OwnMakerFile[] | null>(null);
  const show = useCallback(async () => setFiles(await readOwnMakers()), []);
  useEffect(() => {
    show();
  }, [show]);
  return {
    files,
    write(id: string, draft: Draft): void {
      const changed = { id, draft, changedAt: new Date().toISOString() };
      setFiles((present) => {
        const others = (present ?? []).filter((file) => file.id !== id);
        return present?.some((file) => file.id === id)
          ? present.map((file) => (file.id === id ? changed : file))
          : [changed, ...others];
      });
      writeOwnMaker(id, draft);
    },
    async remove(id: string): Promise<void> {
      await removeOwnMaker(id);
      await show();
    },
  };
}
