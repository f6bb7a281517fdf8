import type { Box } from './box';
import { around } from './scrolled';

/** Elements that draw something of their own; what a plain element draws, its style and text tell. */
const drawing = /^(img|video|canvas|iframe|embed|object|input|select|textarea|progress|meter|dialog)$/i;
/** Fainter than this nothing is seen. */
const faint = 0.02;

/**
 * Whether an element that lies at a point draws anything there. A link or a shield stretched over a photo, without
 * colour, hides nothing of it.
 */
export function paintsAt(element: Element, x: number, y: number): boolean {
  if (opacityOf(element) < faint) return false;
  if (drawing.test(element.localName)) return true;
  if (element instanceof SVGElement) return !(element instanceof SVGSVGElement);
  const style = getComputedStyle(element);
  if (hasGround(style) || style.backdropFilter !== 'none') return true;
  if (bordersAt(element.getBoundingClientRect(), style, x, y)) return true;
  return groundBeside(element) || textAt(element, style, x, y);
}

/** How much of an element is seen through all that holds it, 0 to 1. */
export function opacityOf(element: Element): number {
  let opacity = 1;
  for (let step: Element | null = element; step; step = around(step)) opacity *= Number(getComputedStyle(step).opacity);
  return opacity;
}

const hasGround = (style: CSSStyleDeclaration) =>
  alphaOf(style.backgroundColor) >= faint || style.backgroundImage !== 'none';

/** The last number of "rgba(…, 0.5)" or "color(… / 0.5)"; 1 where none is given. */
function alphaOf(colour: string): number {
  if (colour === 'transparent') return 0;
  const given = /^rgba\(.*,\s*([\d.]+)\)$|\/\s*([\d.]+)\)$/.exec(colour);
  return given ? Number(given[1] ?? given[2]) : 1;
}

function bordersAt(rect: Box, style: CSSStyleDeclaration, x: number, y: number): boolean {
  const drawn = (side: string) => {
    const kind = style.getPropertyValue(`border-${side}-style`);
    if (kind === 'none' || kind === 'hidden') return 0;
    if (alphaOf(style.getPropertyValue(`border-${side}-color`)) < faint) return 0;
    return Number.parseFloat(style.getPropertyValue(`border-${side}-width`)) || 0;
  };
  return (
    x < rect.x + drawn('left') ||
    x > rect.x + rect.width - drawn('right') ||
    y < rect.y + drawn('top') ||
    y > rect.y + rect.height - drawn('bottom')
  );
}

/** A coloured ground drawn by ::before or ::after, the usual way to darken a photo. Where it lies cannot be asked. */
const groundBeside = (element: Element) =>
  ['::before', '::after'].some((part) => {
    const style = getComputedStyle(element, part);
    return style.content !== 'none' && style.content !== 'normal' && style.position === 'absolute' && hasGround(style);
  });

function textAt(element: Element, style: CSSStyleDeclaration, x: number, y: number): boolean {
  if (alphaOf(style.color) < faint) return false;
  return [...element.childNodes].some((node) => {
    if (node.nodeType !== Node.TEXT_NODE || !node.nodeValue?.trim()) return false;
    const range = document.createRange();
    range.selectNodeContents(node);
    return [...range.getClientRects()].some(
      ({ left, right, top, bottom }) => x >= left && x <= right && y >= top && y <= bottom,
    );
  });
}
