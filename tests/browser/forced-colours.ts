import type { Page } from 'playwright-core';

/** What forced colours leave of a control; colours of its own are gone in them. */
export interface Faint {
  control: string;
  lacks: string;
}

/**
 * Controls that would be seen no more as such in forced colours, or whose focus would not be: a button or field without
 * a border, a link in running text without a line under it, a focused one without an outline, a pressed one that
 * differs from its neighbours by colour alone.
 */
export function faintControls(page: Page): Promise<Faint[]> {
  return page.evaluate(() => {
    const faint: { control: string; lacks: string }[] = [];
    const seen = [
      ...document.querySelectorAll<HTMLElement>('button, input, select, textarea, summary, a[href], [tabindex]'),
    ].filter((one) => one.checkVisibility() && one.getClientRects().length > 0 && one.tabIndex >= 0);
    for (const one of seen) {
      const control = `${one.tagName.toLowerCase()}.${one.className} ${(one.getAttribute('aria-label') ?? one.textContent).trim().slice(0, 40)}`;
      const style = getComputedStyle(one);
      const isBox = one.matches(
        'button, select, textarea, input:not([type=checkbox], [type=radio], [type=range], [type=file])',
      );
      const bordered = Number.parseFloat(style.borderBottomWidth) > 0 && style.borderBottomStyle !== 'none';
      const underlined = style.textDecorationLine.includes('underline');
      if (isBox && !bordered && !underlined) faint.push({ control, lacks: 'a border' });
      if (one.matches('a[href]') && !bordered && !underlined && one.querySelector('img') === null)
        faint.push({ control, lacks: 'a line under it' });
      if (!(one as HTMLButtonElement).disabled) {
        one.focus({ focusVisible: true } as FocusOptions);
        const focused = getComputedStyle(one);
        if (focused.outlineStyle === 'none' || Number.parseFloat(focused.outlineWidth) < 1)
          faint.push({ control, lacks: 'an outline when it has the focus' });
      }
      if (one.getAttribute('aria-pressed') === 'true') {
        const look = (of: Element) => {
          const { borderBottomWidth, borderBottomStyle, fontWeight, textDecorationLine } = getComputedStyle(of);
          return [borderBottomWidth, borderBottomStyle, fontWeight, textDecorationLine].join(' ');
        };
        const other = one.parentElement?.querySelector('[aria-pressed=false]');
        if (other && look(other) === look(one)) faint.push({ control, lacks: 'a sign that it is pressed, but colour' });
      }
    }
    return faint;
  });
}
