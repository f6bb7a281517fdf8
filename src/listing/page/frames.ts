import { attribute } from './dom';
import type { Snapshot } from './snapshot';

const textName = /desc|detail|beschreib|content|item|text|iframe-?body/i;
const otherName = /ads?\b|advert|captcha|pay|track|map|video|player|chat|social|like|consent|cookie|analytics/i;

/**
 * Whether a frame of another site may hold words of the listing: it (or what holds it) is named so, or it is large and
 * the page shows no description of its own.
 */
export function isTextFrame(snapshot: Snapshot, at: number, described: boolean): boolean {
  const frame = snapshot.elements[at];
  if (frame?.shown !== 'shown') return false;
  const holder = snapshot.elements[frame.parent];
  const names = [frame, holder].map((one) =>
    one ? ['class', 'id', 'title', 'name'].map((name) => attribute(one.element, name) ?? '').join(' ') : '',
  );
  const own = `${names[0]} ${attribute(frame.element, 'src') ?? ''}`;
  if (otherName.test(own)) return false;
  if (textName.test(names.join(' '))) return true;
  return !described && Number.parseInt(attribute(frame.element, 'height') ?? '', 10) >= 200;
}
