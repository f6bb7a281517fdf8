import { browser } from './api';

/** Chrome shows closed shadow roots to a content script; Firefox gives the element a property of its own. */
export function closedShadowRoot(element: Element): ShadowRoot | null {
  const { dom } = browser as unknown as { dom?: { openOrClosedShadowRoot(element: Element): ShadowRoot | null } };
  if (dom) return dom.openOrClosedShadowRoot(element);
  return (element as Element & { openOrClosedShadowRoot?: ShadowRoot | null }).openOrClosedShadowRoot ?? null;
}
