import { blockTags } from '../structured/block-text';
import { attributeText, hasAttribute, property, select } from './dom';
import { type Look, type Looker, struckTags } from './look';
import { rulesOnScreen } from './screen-rules';

const assistiveName =
  /(^|[\s_-])(sr-only|visually-?hidden|screen-?reader(-text|-only)?|a11y-hidden|offscreen|assistive(-text)?|u-hidden-visually)($|[\s_-])/i;

/**
 * Looks without a browser: tags, attributes, well-known class names, inline styles, and the simple rules of the page's
 * own `<style>` elements that hide or strike something.
 */
export function lookBySource(document: Document): Looker {
  const rules = simpleRules(document);
  const declared = (element: Element): string => {
    const inline = attributeText(element, 'style');
    return `${rules.get(element) ?? ''};${inline}`.toLowerCase();
  };
  return {
    element(element, tag) {
      const style = declared(element);
      const has = (pattern: RegExp): boolean => pattern.test(style);
      let shown: Look['shown'] = 'shown';
      if (hasAttribute(element, 'hidden') || (tag === 'dialog' && !hasAttribute(element, 'open'))) shown = 'hidden';
      else if (has(hiding)) shown = 'hidden';
      else if (has(offPage)) shown = 'assistive';
      else if (has(/(^|[;{\s])(height|width)\s*:\s*0(px)?\s*(;|!|$)/) && has(/overflow\s*:\s*(hidden|clip)/))
        shown = 'hidden';
      else if (assistiveName.test(attributeText(element, 'class'))) shown = 'assistive';
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

/** Names that end like these say something else: the back of an element that turns is often hidden. */
const hiding = /(?<![\w-])(?:display\s*:\s*none|visibility\s*:\s*(hidden|collapse)|opacity\s*:\s*0(\.0\d*)?\s*(;|!|$))/;
const offPage = /(left|top)\s*:\s*-\d{3,}|clip\s*:\s*rect\(\s*[01]|clip-path\s*:\s*inset\(\s*(50|100)%/;

const telling =
  /display|visibility|opacity|text-indent|clip|line-through|font-size\s*:\s*0|white-space|(left|top)\s*:\s*-|height\s*:\s*0|width\s*:\s*0/i;
const maxRules = 400;

function simpleRules(document: Document): Map<Element, string> {
  const found = new Map<Element, string>();
  let read = 0;
  for (const sheet of select(document, 'style')) {
    for (const { selector, body } of rulesOnScreen((property<string>(sheet, 'textContent') ?? '').slice(0, 200_000))) {
      if (selector === '' || selector.length > 300 || body.length > 1000 || !telling.test(body)) continue;
      if (/@|::|:(before|after|hover|focus|not|has)/.test(selector)) continue;
      read += 1;
      if (read > maxRules) return found;
      for (const element of select(document, selector).slice(0, 5_000))
        found.set(element, `${found.get(element) ?? ''};${body}`);
    }
  }
  return found;
}
