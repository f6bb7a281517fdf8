import { blockTags } from '../structured/block-text';
import { attribute, hasAttribute, property, select } from './dom';

/** How an element meets the eye. */
export interface Look {
  /** 'assistive' is text meant for screen readers only; 'hidden' is meant for nobody. */
  shown: 'shown' | 'hidden' | 'assistive';
  struck: boolean;
  block: boolean;
}

/** What is used of a window: computed style, and the address that it shows now. */
export interface PageView {
  location?: { href: string } | undefined;
  getComputedStyle(element: Element): CSSStyleDeclaration;
}

/** `element` is asked for every element, `text` only for those that hold text of their own. */
export interface Looker {
  element(element: Element, tag: string): Look;
  /** `invisible` when the text is too small or pushed off the page; `keepsLines` when its line breaks are shown. */
  text(element: Element, tag: string): { invisible: boolean; keepsLines: boolean };
}

const struckTags: ReadonlySet<string> = new Set(['del', 's', 'strike']);
const assistiveName =
  /(^|[\s_-])(sr-only|visually-?hidden|screen-?reader(-text|-only)?|a11y-hidden|offscreen|assistive(-text)?|u-hidden-visually)($|[\s_-])/i;

/** Looks by computed style, as the browser shows the page. */
export function lookByStyle(view: PageView): Looker {
  return {
    element(element, tag) {
      const style = view.getComputedStyle(element);
      const value = (name: string): string => style.getPropertyValue(name);
      const display = value('display');
      const inline = display.startsWith('inline') || display === 'contents' || display.startsWith('ruby');
      let shown: Look['shown'] = 'shown';
      if (display === 'none' || value('visibility') !== 'visible' || Number(value('opacity')) < 0.05) shown = 'hidden';
      else {
        const position = value('position');
        if ((position === 'absolute' || position === 'fixed') && isOffPage(value)) shown = 'assistive';
        else if (!inline && isSqueezed(value)) shown = 'hidden';
      }
      const struck = struckTags.has(tag) || value('text-decoration-line').includes('line-through');
      return { shown, struck, block: tag === 'br' || !inline };
    },
    text(element) {
      const style = view.getComputedStyle(element);
      const value = (name: string): string => style.getPropertyValue(name);
      return {
        invisible: value('font-size') === '0px' || Number.parseFloat(value('text-indent')) <= -900,
        keepsLines: value('white-space').startsWith('pre') || value('white-space-collapse').startsWith('preserve'),
      };
    },
  };
}

function isOffPage(value: (name: string) => string): boolean {
  const clip = value('clip');
  const far = ['left', 'top', 'right'].some(
    (side) => Math.abs(Number.parseFloat(value(side))) >= 900 && value(side).startsWith('-'),
  );
  const tiny = Number.parseFloat(value('width')) <= 1 && Number.parseFloat(value('height')) <= 1;
  return far || tiny || /rect\((0|1)px,? (0|1)px/.test(clip) || /inset\((50|100)%/.test(value('clip-path'));
}

function isSqueezed(value: (name: string) => string): boolean {
  if (!value('overflow').includes('hidden') && !value('overflow').includes('clip')) return false;
  return value('height') === '0px' || value('width') === '0px';
}

/**
 * Looks without a browser: tags, attributes, well-known class names, inline styles, and the simple rules of the page's
 * own `<style>` elements that hide or strike something.
 */
export function lookBySource(document: Document): Looker {
  const rules = simpleRules(document);
  const declared = (element: Element): string => {
    const inline = attribute(element, 'style') ?? '';
    return `${rules.get(element) ?? ''};${inline}`.toLowerCase();
  };
  return {
    element(element, tag) {
      const style = declared(element);
      const has = (pattern: RegExp): boolean => style.length > 1 && pattern.test(style);
      let shown: Look['shown'] = 'shown';
      if (hasAttribute(element, 'hidden') || (tag === 'dialog' && !hasAttribute(element, 'open'))) shown = 'hidden';
      else if (has(hiding)) shown = 'hidden';
      else if (has(offPage)) shown = 'assistive';
      else if (has(/(^|[;{\s])(height|width)\s*:\s*0(px)?\s*(;|!|$)/) && has(/overflow\s*:\s*(hidden|clip)/))
        shown = 'hidden';
      else if (assistiveName.test(attribute(element, 'class') ?? '')) shown = 'assistive';
      const struck = struckTags.has(tag) || has(/text-decoration[^;]*line-through/);
      const block = tag === 'br' || blockTags.has(tag) || has(/display\s*:\s*(block|flex|grid|table|list-item)/);
      return { shown, struck, block };
    },
    text(element, tag) {
      const style = declared(element);
      return {
        invisible: /font-size\s*:\s*0(px)?\s*(;|!|$)|text-indent\s*:\s*-\d{3,}/.test(style),
        keepsLines: tag === 'pre' || /white-space\s*:\s*(pre|break-spaces)/.test(style),
      };
    },
  };
}

const hiding = /display\s*:\s*none|visibility\s*:\s*(hidden|collapse)|opacity\s*:\s*0(\.0\d*)?\s*(;|!|$)/;
const offPage = /(left|top)\s*:\s*-\d{3,}|clip\s*:\s*rect\(\s*[01]|clip-path\s*:\s*inset\(\s*(50|100)%/;

const telling =
  /display|visibility|opacity|text-indent|clip|line-through|font-size\s*:\s*0|white-space|(left|top)\s*:\s*-|height\s*:\s*0|width\s*:\s*0/i;
const maxRules = 400;

function simpleRules(document: Document): Map<Element, string> {
  const found = new Map<Element, string>();
  let read = 0;
  for (const sheet of select(document, 'style')) {
    for (const rule of withoutComments((property<string>(sheet, 'textContent') ?? '').slice(0, 200_000)).split('}')) {
      const open = rule.lastIndexOf('{');
      const selector = rule.slice(rule.lastIndexOf('{', open - 1) + 1, open).trim();
      const body = rule.slice(open + 1);
      if (open < 1 || selector === '' || selector.length > 300 || body.length > 1000 || !telling.test(body)) continue;
      if (/@|::|:(before|after|hover|focus|not|has)/.test(selector)) continue;
      read += 1;
      if (read > maxRules) return found;
      for (const element of select(document, selector).slice(0, 5_000))
        found.set(element, `${found.get(element) ?? ''};${body}`);
    }
  }
  return found;
}

function withoutComments(sheet: string): string {
  const [first = '', ...parts] = sheet.split('/*');
  return first + parts.map((part) => (part.includes('*/') ? part.slice(part.indexOf('*/') + 2) : '')).join(' ');
}
