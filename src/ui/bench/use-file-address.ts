import { useEffect, useMemo, useState } from 'preact/hooks';
import { drawnAnew } from '../../reader/drawn-anew';

/** An address inside this document for a picture that browsers show, as long as it is shown. */
export function useAddressOf(picture: Blob | null): string | null {
  const address = useMemo(() => (picture ? URL.createObjectURL(picture) : null), [picture]);
  useEffect(() => () => (address ? URL.revokeObjectURL(address) : undefined), [address]);
  return address;
}

/** The same for a photo's bytes, of a drawing where browsers show no such file. Null until it is known which. */
export function useFileAddress(photo: Blob | null): string | null {
  const [shown, setShown] = useState<{ of: Blob; as: Blob } | null>(null);
  useEffect(() => {
    if (photo === null) return;
    const ended = new AbortController();
    const keep = (as: Blob) => {
      if (!ended.signal.aborted) setShown({ of: photo, as });
    };
    // What cannot be drawn is shown as it is, which the browser says with its own sign.
    drawnAnew(photo, ended.signal).then(
      (drawn) => keep(drawn ?? photo),
      () => keep(photo),
    );
    return () => ended.abort();
  }, [photo]);
  return useAddressOf(photo !== null && shown?.of === photo ? shown.as : null);
}

/** The same for a photo at an address inside this document. */
export function useShownAddress(address: string | null): string | null {
  const [fetched, setFetched] = useState<{ from: string; photo: Blob | null } | null>(null);
  const own = fetched?.from === address ? fetched : null;
  useEffect(() => {
    if (address === null) return;
    let current = true;
    const keep = (photo: Blob | null) => current && setFetched({ from: address, photo });
    fetch(address)
      .then((answer) => answer.blob())
      .then(keep, () => keep(null));
    return () => {
      current = false;
    };
  }, [address]);
  const file = useFileAddress(own?.photo ?? null);
  // One that is gone is left to the browser, which says so.
  return own !== null && own.photo === null ? address : file;
}
