import { useEffect } from 'preact/hooks';

/** Once the page is at rest, asks the addresses of maker files that the buyer wants looked at once a day. */
export function useDailyLook(atRest: boolean): void {
  useEffect(() => {
    // Loaded only then: nothing that a buyer waits for needs it.
    if (atRest) import('../reader/file/browser-ports').then(({ lookWhereDue }) => lookWhereDue());
  }, [atRest]);
}
