import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const axeSource = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Violation {
  rule: string;
  where: string[];
}

/** What axe-core finds against WCAG 2.2 A and AA, target size included. Our own policy allows no injected script tag. */
export async function violations(page: Page): Promise<Violation[]> {
  await page.evaluate(axeSource);
  return page.evaluate(async () => {
    const { axe } = globalThis as unknown as {
      axe: { run(options: object): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }> };
    };
    const found = await axe.run({
      runOnly: { type: 'tag', values: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'] },
      rules: { 'target-size': { enabled: true } },
    });
    return found.violations.map(({ id, nodes }) => ({ rule: id, where: nodes.map(({ html }) => html.slice(0, 160)) }));
  });
}

/** What of a page stands over the window's right edge, and so would have to be scrolled to sideways. */
export const overTheEdge = (page: Page): Promise<string[]> =>
  page.evaluate(() =>
    [...document.body.querySelectorAll('*')]
      .filter(
        (element) => element.getBoundingClientRect().right > innerWidth + 1 && !element.closest('.visually-hidden'),
      )
      .map((element) => `${element.tagName}.${element.className}`),
  );

/** Words that their own box cuts off: letters that stand outside of what the box shows, sideways or below. */
export function cutWords(page: Page): Promise<string[]> {
  return page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('body *')].flatMap((one) => {
      if (one.matches('textarea, select, option, img, canvas, svg, svg *') || one.closest('.visually-hidden'))
        return [];
      if (!one.checkVisibility() || one.textContent?.trim() === '') return [];
      const { overflowX, overflowY } = getComputedStyle(one);
      const isCut =
        (overflowX !== 'visible' &&
          overflowX !== 'auto' &&
          overflowX !== 'scroll' &&
          one.scrollWidth > one.clientWidth + 1) ||
        (overflowY !== 'visible' &&
          overflowY !== 'auto' &&
          overflowY !== 'scroll' &&
          one.scrollHeight > one.clientHeight + 1);
      return isCut ? [`${one.tagName.toLowerCase()}.${one.className} ${one.textContent.trim().slice(0, 60)}`] : [];
    }),
  );
}
