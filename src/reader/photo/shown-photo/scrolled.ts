/** Puts every box back that bringing an element into view may have scrolled. */
export type PutBack = () => void;

/** Remembers where the page and every box around an element stand, shadow trees included. */
export function rememberScroll(element: Element): PutBack {
  const boxes: { box: Element; left: number; top: number }[] = [];
  for (let box: Element | null = element; box; box = around(box)) {
    boxes.push({ box, left: box.scrollLeft, top: box.scrollTop });
  }
  const page = { left: scrollX, top: scrollY };
  return () => {
    for (const { box, left, top } of boxes) {
      if (box.scrollLeft !== left || box.scrollTop !== top) box.scrollTo({ left, top, behavior: 'instant' });
    }
    if (scrollX !== page.left || scrollY !== page.top) scrollTo({ ...page, behavior: 'instant' });
  };
}

/** The element around another as it is drawn: through slots, and from a shadow tree to its host. */
export function around(element: Element): Element | null {
  if (element.assignedSlot) return element.assignedSlot;
  if (element.parentElement) return element.parentElement;
  const root = element.getRootNode();
  return root instanceof ShadowRoot ? root.host : null;
}
