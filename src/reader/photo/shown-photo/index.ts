import type { InputOf, OutputOf } from '../../../message/protocol';
import type { Disturbance, NotShown, Result, Told } from '../../../problem';
import { pixelsOf, whyAltered } from './as-shown';
import type { Box } from './box';
import { findPictures, smallestSide } from './find-pictures';
import { type FreeView, freeView, viewport } from './free-view';
import { type PutBack, rememberScroll } from './scrolled';

/** What the page script does for a picture of a photo: show it free, say where it stands, and put the page back. */

/** Elements with the photo that are tried, the largest first. */
const mostTried = 3;
/** Frames after which what was scrolled into view is in the browser's picture too: laid out, painted, put together. */
const framesToPaint = 4;
const framesToHear = 2;
/** A hidden page draws no frames; a busy one draws them late. */
const frameMs = 250;
/** An image that waits to be seen is given this long to come; one that is on its way anyway had its time. */
const lazyMs = 3_000;
const underwayMs = 1_000;
/** From this share of the photo on it counts as shown whole: what rounding and rounded corners take. */
const wholeShare = 0.97;
/** Less of a photo than this is not read in its place. */
const leastShare = 0.4;

type Refused = Extract<Result<never>, { ok: false }>;

interface Shown {
  element: HTMLElement;
  view: Box;
  natural: { width: number; height: number } | null;
  address: string;
  /** What happened to the page since. */
  disturbed: Disturbance | null;
  end: AbortController;
  putBack: PutBack;
}
let shown: Shown | null = null;

/** Brings the photo into free view and says where it stands. */
export async function showPhoto({ urls }: InputOf<'photo.show'>): Promise<Result<OutputOf<'photo.show'>>> {
  await unshowPhoto();
  if (isHidden()) return hidden;
  let problem: Refused = notShown('not-there');
  for (const element of findPictures(urls).slice(0, mostTried)) {
    const putBack = rememberScroll(element);
    const found = await bringIntoView(element, urls);
    if ('ok' in found) {
      putBack();
      problem = found;
      continue;
    }
    shown = { element, view: found.box, natural: naturalOf(element), ...watch(element), putBack };
    const { box, share } = found;
    const { x, y } = viewport();
    const scale = window.visualViewport?.scale ?? 1;
    const largest = element instanceof HTMLImageElement ? await pixelsOf(element) : null;
    return {
      ok: true,
      value: {
        ...box,
        x: box.x - x,
        y: box.y - y,
        // The browser's picture holds the scrollbars too.
        viewport: { width: innerWidth / scale, height: innerHeight / scale },
        part: share < wholeShare || (largest === null && partOfBackground(element)),
        isLargest: element instanceof HTMLImageElement && element.currentSrc === urls[0],
        largest,
      },
    };
  }
  return problem;
}

/** Whether the photo that was shown stands where it stood, as free as it was, with the page in front all the time. */
export async function photoStands(): Promise<Result<OutputOf<'photo.stands'>>> {
  // The user's scrolling is drawn before the page hears of it.
  await frames(framesToHear);
  const why = shown === null ? 'gone' : whyMoved(shown);
  return { ok: true, value: { why } };
}

/** Puts the page back where the user had it. */
export async function unshowPhoto(): Promise<Result<OutputOf<'photo.unshow'>>> {
  shown?.end.abort();
  shown?.putBack();
  shown = null;
  return { ok: true, value: {} };
}

async function bringIntoView(element: HTMLElement, urls: readonly string[]): Promise<FreeView | Refused> {
  const scroll = (block: ScrollLogicalPosition) =>
    element.scrollIntoView({ block, inline: 'center', behavior: 'instant' });
  scroll('center');
  if (element instanceof HTMLImageElement && !(await arrives(element, urls))) return notShown('not-there');
  const altered = whyAltered(element);
  if (altered !== null) return notShown(altered);
  let best: { block: ScrollLogicalPosition; view: FreeView } | null = null;
  let last: ScrollLogicalPosition = 'center';
  // A bar that stays at the top, or at the bottom, leaves a photo free at the other end of the window.
  for (const block of ['center', 'end', 'start'] as const) {
    last = block;
    scroll(block);
    await frames(framesToPaint);
    const view = freeView(element, naturalOf(element));
    if (view && view.share > (best?.view.share ?? 0)) best = { block, view };
    if (view && view.share >= wholeShare) break;
  }
  if (isHidden()) return hidden;
  if (best === null || best.view.share < leastShare) return covered;
  if (best.block === last) return smallCheck(best.view);
  scroll(best.block);
  await frames(framesToPaint);
  const view = freeView(element, naturalOf(element));
  return view === null ? covered : smallCheck(view);
}

const smallCheck = (view: FreeView): FreeView | Refused =>
  Math.min(view.box.width, view.box.height) < smallestSide ? notShown('too-small') : view;

/** Waits until an image shows the photo; one that failed or is still on its way shows its frame only. */
async function arrives(image: HTMLImageElement, urls: readonly string[]): Promise<boolean> {
  const isThere = () =>
    image.complete && image.naturalWidth > 0 && (urls.includes(image.currentSrc) || urls.includes(image.src));
  const waits = image.loading === 'lazy' || !urls.includes(image.currentSrc);
  const end = performance.now() + (waits ? lazyMs : underwayMs);
  while (!isThere() && performance.now() < end) {
    if (isHidden()) return false;
    await frames(1);
  }
  // The browser decodes a picture only when it comes into view, beside its painting: until then there is a white hole.
  await Promise.race([image.decode().catch(() => {}), new Promise((end) => setTimeout(end, lazyMs))]);
  return isThere();
}

/** Hears what moves the photo or hides the page from now on, also when all stands as before in the end. */
function watch(element: Element): Pick<Shown, 'address' | 'disturbed' | 'end'> {
  const end = new AbortController();
  const { signal } = end;
  const note = (what: Disturbance) => {
    if (shown) shown.disturbed ??= what;
  };
  document.addEventListener('visibilitychange', () => note('other-tab'), { signal });
  window.addEventListener('pagehide', () => note('other-page'), { signal });
  window.addEventListener('resize', () => note('resized'), { signal });
  const onScroll = ({ target }: Event) => {
    if (target instanceof Node && target.contains(outermost(element))) note('moved');
  };
  document.addEventListener('scroll', onScroll, { signal, capture: true });
  const stood = element.getBoundingClientRect();
  const eachFrame = () => {
    if (signal.aborted) return;
    if (distance(element.getBoundingClientRect(), stood) > mostShift) note('moved');
    requestAnimationFrame(eachFrame);
  };
  requestAnimationFrame(eachFrame);
  return { address: location.href, disturbed: null, end };
}

/** CSS pixels; less is rounding. */
const mostShift = 0.5;
const distance = (a: Box, b: Box): number =>
  Math.max(...(['x', 'y', 'width', 'height'] as const).map((side) => Math.abs(a[side] - b[side])));

/** What stands for an element in the document: itself, or the host of the shadow trees that it is in. */
function outermost(element: Element): Element {
  const root = element.getRootNode();
  return root instanceof ShadowRoot ? outermost(root.host) : element;
}

function whyMoved({ element, view, natural, address, disturbed }: Shown): Disturbance | null {
  if (disturbed !== null) return disturbed;
  if (isHidden()) return 'other-tab';
  if (location.href !== address) return 'other-page';
  const now = element.isConnected ? freeView(element, natural) : null;
  if (now === null) return 'taken-off';
  return distance(now.box, view) > mostShift ? 'moved' : null;
}

const naturalOf = (element: HTMLElement) =>
  element instanceof HTMLImageElement ? { width: element.naturalWidth, height: element.naturalHeight } : null;

/** A background is drawn whole only when the page says so. */
const partOfBackground = (element: HTMLElement) => getComputedStyle(element).backgroundSize !== 'contain';

const isHidden = () => document.visibilityState !== 'visible';

async function frames(count: number): Promise<void> {
  for (let frame = 0; frame < count; frame += 1) {
    await new Promise<void>((next) => {
      const late = setTimeout(next, frameMs);
      requestAnimationFrame(() => {
        clearTimeout(late);
        next();
      });
    });
  }
}

const refuse = (problem: Told): Refused => ({ ok: false, problem });

const notShown = (why: NotShown) => refuse({ code: 'photo-not-shown', where: 'page', data: { why } });
const covered = refuse({ code: 'photo-covered', where: 'page' });
const hidden = refuse({ code: 'capture-disturbed', where: 'page', data: { why: 'in-background' } });
