import type { ComponentChildren } from 'preact';
import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { rowByKey, rowsInSight, type Sight } from './rows-in-sight';

interface Props<T extends { id: string }> {
  items: T[];
  label: string;
  draw: (item: T) => ComponentChildren;
  /** The row that gets the focus; each new object is a new wish, null is none. */
  focusOn: { id: string } | null;
}

/** What of a row the arrow keys lead to. */
const target = '[data-row-target]';
const rowAt = (list: HTMLElement | null, index: number) =>
  list?.querySelector<HTMLElement>(`:scope > [data-row="${index}"]`) ?? null;

/**
 * A list of rows of one height, of which only those in sight are in the page. Each says which one it is of how many, so
 * that a screen reader counts the whole list; arrow keys, Page, Home and End lead through all of it.
 */
export function LongList<T extends { id: string }>({ items, label, draw, focusOn }: Props<T>) {
  const list = useRef<HTMLUListElement>(null);
  const [sight, setSight] = useState<Sight>({ top: 0, windowHeight: innerHeight, rowHeight: 120 });
  const [focused, setFocused] = useState<number | null>(null);
  /** A row that is to have the focus as soon as it is drawn. */
  const wanted = useRef<number | null>(null);

  const look = useCallback(() => {
    const top = list.current?.getBoundingClientRect().top ?? 0;
    const first = list.current?.firstElementChild;
    setSight((before) => {
      const rowHeight = first?.getBoundingClientRect().height || before.rowHeight;
      const same = before.top === top && before.windowHeight === innerHeight && before.rowHeight === rowHeight;
      return same ? before : { top, windowHeight: innerHeight, rowHeight };
    });
  }, []);
  useLayoutEffect(look);
  useEffect(() => {
    addEventListener('scroll', look, { passive: true });
    addEventListener('resize', look);
    return () => {
      removeEventListener('scroll', look);
      removeEventListener('resize', look);
    };
  }, [look]);

  const go = useCallback((index: number) => {
    wanted.current = index;
    setFocused(index);
    // Also when it is drawn already: the effect below runs after each drawing.
    setSight((before) => ({ ...before }));
  }, []);
  useLayoutEffect(() => {
    const index = focusOn === null ? -1 : items.findIndex(({ id }) => id === focusOn.id);
    if (index >= 0) go(index);
    // Only a new wish moves the focus, not a list that changes below it.
  }, [focusOn, go]);
  useLayoutEffect(() => {
    const row = wanted.current === null ? null : rowAt(list.current, wanted.current);
    if (!row) return;
    wanted.current = null;
    row.scrollIntoView({ block: 'nearest' });
    row.querySelector<HTMLElement>(target)?.focus({ preventScroll: true });
  });

  const onKeyDown = (event: KeyboardEvent) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const from = event.target as HTMLElement;
    const row = from.matches(target) ? from.closest<HTMLElement>('[data-row]') : null;
    if (!row) return;
    const page = Math.max(1, Math.floor(innerHeight / sight.rowHeight) - 1);
    const to = rowByKey(event.key, Number(row.dataset.row), items.length, page);
    if (to === null) return;
    event.preventDefault();
    go(to);
  };

  return (
    <ul
      ref={list}
      class="long-list"
      aria-label={label}
      style={{ height: `${items.length * sight.rowHeight}px` }}
      onKeyDown={onKeyDown}
      onFocusIn={(event) => {
        const row = (event.target as HTMLElement).closest<HTMLElement>('[data-row]');
        if (row) setFocused(Number(row.dataset.row));
      }}
      onFocusOut={(event) => {
        if (!list.current?.contains(event.relatedTarget as Node | null) && wanted.current === null) setFocused(null);
      }}
    >
      {rowsInSight(items.length, sight, focused).map((index) => {
        const item = items[index] as T;
        return (
          <li
            key={item.id}
            data-row={index}
            aria-posinset={index + 1}
            aria-setsize={items.length}
            style={{ top: `${index * sight.rowHeight}px` }}
          >
            {draw(item)}
          </li>
        );
      })}
    </ul>
  );
}
