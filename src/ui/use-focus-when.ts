import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/**
 * The ref of an element that takes the focus each time that `told` becomes another thing that holds: a field that opens, a
 * page that took another's place. Before the next key arrives, so that what is typed at once goes there.
 */
export function useFocusWhen<E extends HTMLElement>(told: unknown): RefObject<E | null> {
  const element = useRef<E>(null);
  useLayoutEffect(() => {
    if (told) element.current?.focus();
  }, [told]);
  return element;
}
