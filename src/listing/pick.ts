import { finder } from '@medv/finder';
import { invoke, isElement, parentElement, property, tagOf } from './page/dom';
import type { Pick, PickField } from './pick-types';

/** Class and id names that a build or a listing's number made: they would not hold on the site's next page. */
const isPassing = (name: string): boolean =>
  /\d{3,}/.test(name) ||
  /^(css|sc|jss|emotion|svelte|_)[-_]?\w*\d/i.test(name) ||
  /[A-Za-z]\d[A-Za-z]\d/.test(name) ||
  name.length > 40;

const steadyAttributes = /^(itemprop|property|data-testid|data-test|data-qa|role|name)$/;

/** A selector for an element that is likely to find the same field on the site's other listings; null if none is unique. */
export function selectorFor(element: Element): string | null {
  const root = property<Document>(element, 'ownerDocument').documentElement;
  const options = {
    root,
    idName: (name: string) => !isPassing(name),
    className: (name: string) => !isPassing(name),
    attr: (name: string, value: string) => steadyAttributes.test(name) && value.length < 60 && !/\d{3,}/.test(value),
    timeoutMs: 300,
  };
  try {
    return finder(element, options);
  } catch {
    return null;
  }
}

/** What the picker says on the page; the caller gives it in the user's language. */
export interface PickWords {
  /** "Click the price. Arrow keys widen or narrow, Enter takes it, Escape ends." */
  invite: string;
}

const outline =
  'position:fixed;pointer-events:none;z-index:2147483647;outline:3px solid #b4442c;outline-offset:1px;background:rgba(180,68,44,.12)';
const banner =
  'position:fixed;z-index:2147483647;left:50%;top:12px;transform:translateX(-50%);padding:8px 14px;border-radius:6px;' +
  'background:#222;color:#fff;font:14px/1.4 system-ui,sans-serif;pointer-events:none';

/**
 * Lets the user point at a field on the page, by mouse or keyboard. The page itself sees none of the clicks meanwhile.
 * Gives the choice, or null when the user or `signal` ends it, or when the element has no selector of its own.
 */
export function pickOnPage(
  document: Document,
  field: PickField,
  words: PickWords,
  signal: AbortSignal,
): Promise<Pick | null> {
  const host = document.createElement('div');
  const shadow = host.attachShadow({ mode: 'closed' });
  const box = document.createElement('div');
  const text = document.createElement('div');
  box.style.cssText = outline;
  text.style.cssText = banner;
  text.setAttribute('role', 'status');
  text.textContent = words.invite;
  shadow.append(box, text);
  document.documentElement.append(host);
  let current: Element | null = null;
  const ended = new AbortController();

  const show = (element: Element | null) => {
    current = element;
    const area = element && invoke<DOMRect>(element, 'getBoundingClientRect');
    if (area)
      Object.assign(box.style, {
        left: `${area.left}px`,
        top: `${area.top}px`,
        width: `${area.width}px`,
        height: `${area.height}px`,
      });
  };
  const stop = (event: Event) => {
    event.preventDefault();
    event.stopImmediatePropagation();
  };
  const targetOf = (event: Event): Element | null =>
    isElement(event.target as Node | null) ? (event.target as Element) : null;

  return new Promise<Pick | null>((resolve) => {
    const end = (element: Element | null) => {
      ended.abort();
      host.remove();
      const selector = element && selectorFor(element);
      resolve(selector ? { field, selector } : null);
    };
    const options = { capture: true, signal: ended.signal };
    const view = document.defaultView ?? document;
    view.addEventListener('pointermove', (event) => show(targetOf(event)), options);
    for (const name of ['pointerdown', 'pointerup', 'mousedown', 'mouseup']) view.addEventListener(name, stop, options);
    view.addEventListener(
      'click',
      (event) => {
        stop(event);
        end(targetOf(event));
      },
      options,
    );
    view.addEventListener(
      'keydown',
      (event) => {
        const { key } = event as KeyboardEvent;
        if (!['Escape', 'Enter', 'ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight'].includes(key)) return;
        stop(event);
        if (key === 'Escape') end(null);
        else if (key === 'Enter') end(current);
        else show(stepFrom(current ?? document.body, key));
      },
      options,
    );
    signal.addEventListener('abort', () => end(null), { signal: ended.signal });
  });
}

/** The element that an arrow key leads to: up to the parent, down to the first child, sideways to a neighbour. */
function stepFrom(element: Element, key: string): Element {
  const name = {
    ArrowUp: 'parentElement',
    ArrowDown: 'firstElementChild',
    ArrowLeft: 'previousElementSibling',
    ArrowRight: 'nextElementSibling',
  }[key];
  const next = key === 'ArrowUp' ? parentElement(element) : property<Element | null>(element, name ?? '');
  return next && tagOf(next) !== 'html' ? next : element;
}
