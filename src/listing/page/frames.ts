import { attributeText, property } from './dom';
import type { Snapshot } from './snapshot';

const textName = /desc|detail|beschreib|content|item|text|iframe-?body/i;
const otherName =
  /(?<![a-z])ads?(?![a-z])|advert|captcha|pay|track|map|video|player|chat|social|like|consent|cookie|analytics/i;

/** Widths of the usual advertisements, in CSS pixels. Common practice, no source. */
const advertWidths = new Set([120, 160, 300, 320, 336, 728, 970]);

/**
 * Whether a frame of another site may hold words of the listing: it (or what holds it) is named so, or it is large and
 * the page shows no description of its own.
 */
export function isTextFrame(snapshot: Snapshot, at: number, described: boolean): boolean {
  const frame = snapshot.elements[at];
  if (frame?.shown !== 'shown') return false;
  const holder = snapshot.elements[frame.parent];
  const names = [frame, holder].map((one) =>
    one ? ['class', 'id', 'title', 'name'].map((name) => attributeText(one.element, name)).join(' ') : '',
  );
  const own = `${names[0]} ${attributeText(frame.element, 'src')}`;
  if (otherName.test(own)) return false;
  if (textName.test(names.join(' '))) return true;
  const side = (name: string) => Number.parseInt(attributeText(frame.element, name), 10);
  return !described && side('height') >= 200 && !advertWidths.has(side('width'));
}

/** The document of a frame of the page's own origin; null for any other. */
export function frameDocument(element: Element): Document | null {
  try {
    return property<Document | null>(element, 'contentDocument') ?? null;
  } catch {
    return null;
  }
}
