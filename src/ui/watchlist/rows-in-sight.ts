/** What of a list is on the screen, in pixels: where the list's top stands in the window, and how high the window is. */
export interface Sight {
  top: number;
  windowHeight: number;
  rowHeight: number;
}

/** Rows beyond each edge that are drawn too, so that the Tab key and a quick scroll find them. */
const beyond = 6;

/**
 * The rows of a list that are to be drawn: those in sight, some beyond, and the one that holds the focus, wherever it
 * was scrolled to (a row that is taken away would take the focus with it).
 */
export function rowsInSight(count: number, { top, windowHeight, rowHeight }: Sight, focused: number | null): number[] {
  const first = Math.floor(-top / rowHeight) - beyond;
  const last = Math.ceil((windowHeight - top) / rowHeight) + beyond;
  const [from, to] = [Math.max(0, Math.min(first, count)), Math.max(0, Math.min(last, count))];
  const inSight = Array.from({ length: Math.max(0, to - from) }, (_, index) => from + index);
  if (focused === null || focused >= count || (focused >= from && focused < to)) return inSight;
  return focused < from ? [focused, ...inSight] : [...inSight, focused];
}

/** The row that a key leads to from row `at`; null for keys that are none of the list's. */
export function rowByKey(key: string, at: number, count: number, page: number): number | null {
  const to = { ArrowDown: at + 1, ArrowUp: at - 1, PageDown: at + page, PageUp: at - page, Home: 0, End: count - 1 }[
    key
  ];
  return to === undefined || count === 0 ? null : Math.max(0, Math.min(count - 1, to));
}
