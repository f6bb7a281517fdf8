import { useEffect, useState } from 'preact/hooks';
import { type FileOrigin, onOrigins, readOrigins } from '../../../store/file-origins';

/** Where the buyer's files are from, by the file; it follows what any page of the extension writes. */
export function useOrigins(): ReadonlyMap<string, FileOrigin> {
  const [origins, setOrigins] = useState<ReadonlyMap<string, FileOrigin>>(new Map());
  useEffect(() => {
    const show = async () => setOrigins(await readOrigins());
    show();
    return onOrigins(show);
  }, []);
  return origins;
}
