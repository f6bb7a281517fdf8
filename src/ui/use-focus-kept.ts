import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';

const canTakeFocus = 'button:not(:disabled), input:not(:disabled), select, textarea, a[href], summary';

/**
 * Keeps the keyboard's place: when the control that has the focus goes away, the focus goes on to one that is left in
 * the same part of the screen, not to the top of the document. `next` selects which, the best first; where none of them
 * is there, the first control takes it. The ref belongs on an element around them all.
 */
export function useFocusKept<E extends HTMLElement>(...next: readonly string[]): RefObject<E | null> {
  const room = useRef<E>(null);
  const last = useRef<Element | null>(null);
  useEffect(() => {
    const follow = ({ target }: FocusEvent) => {
      last.current = target instanceof Element && room.current?.contains(target) ? target : null;
    };
    const leave = ({ target }: FocusEvent) => {
      // A control that goes away is left as well, but is no longer there when this is asked.
      queueMicrotask(() => {
        if (last.current === target && (target as Element).isConnected) last.current = null;
      });
    };
    document.addEventListener('focusin', follow);
    document.addEventListener('focusout', leave);
    return () => {
      document.removeEventListener('focusin', follow);
      document.removeEventListener('focusout', leave);
    };
  }, []);
  useLayoutEffect(() => {
    if (!last.current || last.current.isConnected || document.activeElement !== document.body) return;
    last.current = null;
    for (const selector of [...next, canTakeFocus]) {
      const control = room.current?.querySelector<HTMLElement>(selector);
      if (control) return control.focus();
    }
  });
  return room;
}
