/** A rectangle in CSS pixels of the viewport. */
export interface Box {
  x: number;
  y: number;
  width: number;
  height: number;
}

export interface Size {
  width: number;
  height: number;
}

export const areaOf = ({ width, height }: Size): number => Math.max(0, width) * Math.max(0, height);

export function meet(a: Box, b: Box): Box {
  const [x, y] = [Math.max(a.x, b.x), Math.max(a.y, b.y)];
  const width = Math.max(0, Math.min(a.x + a.width, b.x + b.width) - x);
  const height = Math.max(0, Math.min(a.y + a.height, b.y + b.height) - y);
  return { x, y, width, height };
}

/** The box inside border and padding: only there an image is drawn. `rect` is the element's box as it stands on the screen. */
export function contentBox(
  rect: Box,
  style: Pick<CSSStyleDeclaration, 'getPropertyValue'>,
  /** How much larger the element stands on the screen than it was laid out, by a transform. */
  grown: { across: number; down: number },
): Box {
  const px = (name: string) => Number.parseFloat(style.getPropertyValue(name)) || 0;
  const edge = (side: string) => px(`border-${side}-width`) + px(`padding-${side}`);
  const [left, right] = [edge('left') * grown.across, edge('right') * grown.across];
  const [top, bottom] = [edge('top') * grown.down, edge('bottom') * grown.down];
  return {
    x: rect.x + left,
    y: rect.y + top,
    width: Math.max(0, rect.width - left - right),
    height: Math.max(0, rect.height - top - bottom),
  };
}

/**
 * Where the whole picture lies that is drawn into `content`: larger than it where the page cuts the picture, smaller
 * where it leaves bars. CSS Images Module Level 3, object-fit and object-position.
 */
export function pictureBox(content: Box, natural: Size, fit: string, position: string): Box {
  const scale = scaleOf(content, natural, fit);
  if (scale === null) return content;
  const [width, height] = [natural.width * scale, natural.height * scale];
  const [across = '50%', down = '50%'] = position.trim().split(/\s+/);
  return {
    x: content.x + placed(across, content.width - width),
    y: content.y + placed(down, content.height - height),
    width,
    height,
  };
}

function scaleOf(content: Size, natural: Size, fit: string): number | null {
  if (natural.width <= 0 || natural.height <= 0) return null;
  const [across, down] = [content.width / natural.width, content.height / natural.height];
  if (fit === 'contain') return Math.min(across, down);
  if (fit === 'cover') return Math.max(across, down);
  if (fit === 'none') return 1;
  return fit === 'scale-down' ? Math.min(1, across, down) : null;
}

/** What is no plain length or percentage (calc) counts as the middle. */
function placed(position: string, room: number): number {
  const value = Number.parseFloat(position);
  if (/^-?[\d.]+px$/.test(position)) return value;
  return /^-?[\d.]+%$/.test(position) ? (room * value) / 100 : room / 2;
}
