import { closedShadowRoot } from '../../../browser/closed-shadow-root';
import { areaOf } from './box';

/** Elements looked through for shadow trees and backgrounds, when no plain image shows the photo. */
const mostElements = 20_000;
/** The smallest side, in CSS pixels, of a picture on the page that is worth cutting out. */
export const smallestSide = 80;

/**
 * Elements that show, or will show once they are in view, a photo under one of its addresses, the largest first: a
 * gallery has the same photo small in its strip, and often hidden for small windows.
 */
export function findPictures(urls: readonly string[]): HTMLElement[] {
  const images = [...document.getElementsByTagName('img')].filter((image) => names(image, urls));
  const found: HTMLElement[] = images.some(isWorthIt) ? images : [...images, ...findElsewhere(urls)];
  return found.filter(isWorthIt).sort((a, b) => sizeOf(b) - sizeOf(a));
}

const sizeOf = (element: Element) => areaOf(element.getBoundingClientRect());

function isWorthIt(element: HTMLElement): boolean {
  const { width, height } = element.getBoundingClientRect();
  return Math.min(width, height) >= smallestSide && element.checkVisibility({ visibilityProperty: true });
}

/** Whether an image shows one of the addresses, or keeps one for when it comes into view. */
function names(image: HTMLImageElement, urls: readonly string[]): boolean {
  if (urls.includes(image.currentSrc) || urls.includes(image.src)) return true;
  if (!image.complete || image.naturalWidth === 0 || image.loading === 'lazy' || image.currentSrc === '') {
    if (addressesIn(image.srcset).some((address) => urls.includes(address))) return true;
  }
  return [...image.attributes].some(
    ({ name, value }) => /^data-/.test(name) && addressesIn(value).some((address) => urls.includes(address)),
  );
}

/** Addresses in an attribute that holds one, or a list of candidates. */
const addressesIn = (value: string): string[] =>
  value
    .slice(0, 4000)
    .split(/,?\s+/)
    .flatMap((word) =>
      word !== '' && URL.canParse(word, document.baseURI) ? [new URL(word, document.baseURI).href] : [],
    );

/** Images in shadow trees, and elements with the photo as their background. */
function findElsewhere(urls: readonly string[]): HTMLElement[] {
  const found: HTMLElement[] = [];
  const scopes: (Document | ShadowRoot)[] = [document];
  let left = mostElements;
  for (const scope of scopes) {
    for (const element of scope.querySelectorAll('*')) {
      left -= 1;
      if (left < 0) return found;
      if (!(element instanceof HTMLElement)) continue;
      if (scope !== document && element instanceof HTMLImageElement && names(element, urls)) found.push(element);
      else if (backgroundOf(element).some((address) => urls.includes(address))) found.push(element);
      const tree = closedShadowRoot(element);
      if (tree) scopes.push(tree);
    }
  }
  return found;
}

/** Addresses of the backgrounds that an element is drawn with, whether its own attribute or a style sheet sets them. */
const backgroundOf = (element: HTMLElement): string[] =>
  element.offsetWidth < smallestSide
    ? []
    : Array.from(
        getComputedStyle(element).backgroundImage.matchAll(/url\("([^"]*)"\)/g),
        ([, address = '']) => address,
      );
