import { attributeText } from '../page/dom';

const noPhoto =
  'logo|logos|icons?|sprites?|avatars?|profile-?(pic|photo|image)?|badges?|flags?|payments?|cards?-logos?|rating|stars?|banners?|advert(s|isement)?|ads|adserver|doubleclick|beacon|tracking|tracker|pixel|spinner|loader|emojis?(?=/|[-_.]d)|smiley|button|arrow|chevron|social|captcha|qr-?code|watermark|user-?pic|seller-?(logo|photo|image)|shop-?logo';
const notPhotoName = new RegExp(`(^|[\\s_\\-/.])(?:${noPhoto})($|[\\s_\\-/.\\d])`, 'i');
/** A whole folder is called so: in "/bag-with-star-button/1.jpg" the words are those of a title. */
const notPhotoFolder = new RegExp(`/(?:${noPhoto})s?[-_.\\d]*/`, 'i');
const placeholderName =
  /(^|[/_\-.])(blank|placeholder|spacer|transparent|pixel|loading|lazy|empty|dummy|no-?image|noimg|grey|gray|1x1|clear|default-?image|fallback)([_\-.\d]|$)/i;

/** Whether an address is a stand-in that a script replaces later, or a counter of one pixel. */
export function isPlaceholder(address: string): boolean {
  const file = address
    .replace(/[?#].*/s, '')
    .split('/')
    .at(-1) as string;
  return placeholderName.test(file);
}

/** Whether an image's address, text or names say that it is no photo of the piece. */
export function namesNoPhoto(address: string, element: Element | null): boolean {
  const file = address.replace(/^https?:\/\/[^/]+/i, '').replace(/[?#].*/s, '');
  const name = file.slice(file.lastIndexOf('/'));
  if (/\.svg$/i.test(file) || notPhotoName.test(name) || notPhotoFolder.test(file)) return true;
  if (!element) return false;
  const names = `${attributeText(element, 'class')} ${attributeText(element, 'id')} ${attributeText(element, 'role')}`;
  const alt = attributeText(element, 'alt');
  return (
    notPhotoName.test(names) ||
    (alt.length < 30 && /\b(logo|icon|avatar|profile (photo|picture)|advert(isement)?)\b/i.test(alt))
  );
}

const inDesign = 48;

/** Whether the attributes give the image the size of an icon (at most 48 pixels both ways, or one pixel). */
export function isIconSized(width: number | null, height: number | null): boolean {
  if (width !== null && width <= 2) return true;
  if (height !== null && height <= 2) return true;
  return width !== null && height !== null && width <= inDesign && height <= inDesign;
}
