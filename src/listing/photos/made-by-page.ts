import { attributeText, property } from '../page/dom';
import type { PhotoSource } from './photo-set';

/** Most photos of this kind that one listing takes, and the least side in pixels that is no icon. */
export const mostMade = 12;
const leastSide = 80;

/** Whether an image shows a picture that the page's own scripts made. */
export const isMadeByPage = (image: Element): boolean => attributeText(image, 'src').startsWith('blob:');

/**
 * A picture that the page made: its source (an address that holds in this page only, and only while it is open),
 * 'no-photo' when it is as small as an icon, 'absent' where the page does not show it: saved, or still loading.
 */
export function madePhoto(image: Element): PhotoSource | 'no-photo' | 'absent' {
  const address = attributeText(image, 'src');
  const width = property<number>(image, 'naturalWidth');
  const height = property<number>(image, 'naturalHeight');
  if (!/^blob:https?:\/\/[^\s]{1,300}$/.test(address) || !(width > 0 && height > 0)) return 'absent';
  return Math.min(width, height) >= leastSide ? { address, width, height } : 'no-photo';
}
