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

export const struckTags: ReadonlySet<string> = new Set(['del', 's', 'strike']);
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
