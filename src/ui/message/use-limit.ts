import { useEffect, useState } from 'preact/hooks';
import { keepMessageLimit, readMessageLimit } from '../../store/message-limits';
import { siteOf } from '../../store/site-picks';

/** How many characters the site's box takes. */
export interface MessageLimit {
  most: number | null;
  keep: (most: number | null) => void;
}

/** The limit of the site that an address belongs to, as it was said before; without an address it is kept nowhere. */
export function useMessageLimit(url: string | null): MessageLimit {
  const [most, setMost] = useState<number | null>(null);
  const host = url === null ? '' : siteOf(url);
  useEffect(() => {
    let current = true;
    setMost(null);
    if (host !== '') readMessageLimit(host).then((kept) => current && kept !== null && setMost(kept));
    return () => {
      current = false;
    };
  }, [host]);
  return {
    most,
    keep(now) {
      setMost(now);
      if (host !== '') keepMessageLimit(host, now);
    },
  };
}
