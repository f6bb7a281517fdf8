import { areaOf, type Box, contentBox, meet, pictureBox, type Size } from './box';
import { largestFree } from './largest-free';
import { paintsAt } from './paints';

/** What of a picture is seen with nothing over it. `share` of the whole picture, 0 to 1. */
export interface FreeView {
  box: Box;
  share: number;
}

/** Points along each side of the grid, beside one at either edge. */
const inside = 16;
const fromEdge = 2;

/** The largest part of a picture that is seen and that nothing lies over; null when there is none. */
export function freeView(element: Element, natural: Size | null): FreeView | null {
  const { whole, drawn } = boxesOf(element, natural);
  const seen = meet(drawn, viewport());
  if (areaOf(seen) < 1 || areaOf(whole) < 1) return null;
  const [xs, ys] = [marks(seen.x, seen.width), marks(seen.y, seen.height)];
  const last = inside + 1;
  const isCorner = (column: number, row: number) =>
    (column <= 1 || column >= last - 1) && (row <= 1 || row >= last - 1);
  const free = withEverythingHit(element, () =>
    ys.map((y, row) =>
      xs.map((x, column) => {
        const found = pointOn(element, x, y);
        // A corner that is rounded off shows what lies behind, and is missed by nobody.
        return found === 'free' || (found === 'beside' && isCorner(column, row));
      }),
    ),
  );
  const cells = largestFree(free, xs, ys);
  if (cells === null) return null;
  const left = cells.left === 0 ? seen.x : (xs[cells.left] as number);
  const top = cells.top === 0 ? seen.y : (ys[cells.top] as number);
  const right = cells.right === last ? seen.x + seen.width : (xs[cells.right] as number);
  const bottom = cells.bottom === last ? seen.y + seen.height : (ys[cells.bottom] as number);
  const box = { x: left, y: top, width: right - left, height: bottom - top };
  return { box, share: areaOf(box) / areaOf(whole) };
}

/** The part of the layout that the window shows, without scrollbars. */
export function viewport(): Box {
  const seen = window.visualViewport;
  if (!seen) return { x: 0, y: 0, width: innerWidth, height: innerHeight };
  return { x: seen.offsetLeft, y: seen.offsetTop, width: seen.width, height: seen.height };
}

/** Where the whole picture lies, and the part of it that the element draws. */
function boxesOf(element: Element, natural: Size | null): { whole: Box; drawn: Box } {
  const rect = element.getBoundingClientRect();
  const style = getComputedStyle(element);
  const { offsetWidth, offsetHeight } = element as HTMLElement;
  const grown = {
    across: offsetWidth ? rect.width / offsetWidth : 1,
    down: offsetHeight ? rect.height / offsetHeight : 1,
  };
  const content = contentBox(rect, style, grown);
  if (natural === null) return { whole: content, drawn: content };
  // "none" draws a pixel as large as it was laid out, and a transform makes that larger.
  const laid = { width: natural.width * grown.across, height: natural.height * grown.down };
  const whole = pictureBox(content, laid, style.objectFit, style.objectPosition);
  return { whole, drawn: meet(whole, content) };
}

function marks(start: number, length: number): number[] {
  const steps = Array.from({ length: inside }, (_, step) => start + (length * (step + 0.5)) / inside);
  const edge = Math.min(fromEdge, length / (4 * inside));
  return [start + edge, ...steps, start + length - edge];
}

/** What is at a point: the picture, something over it, or neither, since the page cuts the picture there. */
function pointOn(element: Element, x: number, y: number): 'free' | 'covered' | 'beside' {
  let isThere = true;
  for (const [scope, own] of scopesOf(element)) {
    const found = scope.elementsFromPoint(x, y);
    const at = found.indexOf(own);
    // Where it is not drawn, what holds it lies there and covers nothing.
    const over = at < 0 ? found.filter((one) => !one.contains(own)) : found.slice(0, at);
    // A shadow tree tells of the elements around it too: those are judged in their own.
    if (over.some((one) => one.getRootNode() === scope && paintsAt(one, x, y))) return 'covered';
    isThere &&= at >= 0;
  }
  return isThere ? 'free' : 'beside';
}

/** The document and each shadow tree down to the element, with what stands for the element in each. */
function scopesOf(element: Element): [Document | ShadowRoot, Element][] {
  const scopes: [Document | ShadowRoot, Element][] = [];
  let own = element;
  for (;;) {
    const root = own.getRootNode();
    if (root instanceof ShadowRoot) {
      scopes.unshift([root, own]);
      own = root.host;
    } else {
      if (root instanceof Document) scopes.unshift([root, own]);
      return scopes;
    }
  }
}

/** More specific than what pages write; what is marked important in an element's own attribute stays as it is. */
const everythingIsHit =
  ':is(*, #a#a#a), :is(*, #a#a#a)::before, :is(*, #a#a#a)::after { pointer-events: auto !important }';

/**
 * Lets also those elements be found at a point that the page lets the pointer through, as decoration often is, and
 * photos that are not to be dragged. Nothing happens between: the style is gone before the page or the user can act.
 */
function withEverythingHit<T>(element: Element, look: () => T): T {
  const ends = scopesOf(element).map(([scope]) => addStyle(scope));
  try {
    return look();
  } finally {
    for (const end of ends) end();
  }
}

function addStyle(scope: Document | ShadowRoot): () => void {
  try {
    const sheet = new CSSStyleSheet();
    sheet.replaceSync(everythingIsHit);
    const before = [...scope.adoptedStyleSheets];
    scope.adoptedStyleSheets = [...before, sheet];
    return () => {
      scope.adoptedStyleSheets = before;
    };
  } catch {
    // Firefox gives no sheets of a script of ours to the page's document.
    const style = document.createElement('style');
    (scope instanceof Document ? scope.documentElement : scope).append(style);
    style.sheet?.insertRule(everythingIsHit);
    return () => style.remove();
  }
}
