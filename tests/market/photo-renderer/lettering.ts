import type { Random } from './random';
import { normalFrom } from './random';
import type { Distance, Segment } from './shapes';
import { strokesShape } from './shapes';
import { glyphs } from './strokes';

/** How a line of lettering is set; lengths in millimetres. */
export interface Setting {
  text: string;
  capHeight: number;
  /** Stroke width as a share of the cap height. */
  weight: number;
  /** Gap between characters as a share of the cap height. */
  spacing: number;
  /** Width of the characters as a share of their drawn width. */
  narrow: number;
  /** Middle of the line. */
  x: number;
  y: number;
  /** Turn in degrees, clockwise. */
  turn: number;
  /** Deviation of each character's place, as a share of the cap height: a hand-set stamp is never perfect. */
  jitter: number;
}

export function letteringSegments(setting: Setting, random: Random): Segment[] {
  const { capHeight, spacing, narrow } = setting;
  const characters = [...setting.text].map((character) => {
    const glyph = glyphs[character];
    if (glyph === undefined) throw new Error(`no glyph for "${character}" in "${setting.text}"`);
    return glyph;
  });
  const widths = characters.map((glyph) => glyph.width * narrow * capHeight);
  const total = widths.reduce((sum, width) => sum + width, 0) + spacing * capHeight * (characters.length - 1);
  const cosine = Math.cos((setting.turn * Math.PI) / 180);
  const sine = Math.sin((setting.turn * Math.PI) / 180);
  const place = (x: number, y: number): [number, number] => [
    setting.x + x * cosine - y * sine,
    setting.y + x * sine + y * cosine,
  ];
  const segments: Segment[] = [];
  let left = -total / 2;
  characters.forEach((glyph, index) => {
    const shiftX = normalFrom(random) * setting.jitter * capHeight;
    const shiftY = normalFrom(random) * setting.jitter * capHeight;
    for (const stroke of glyph.strokes) {
      for (let at = 0; at + 3 < stroke.length; at += 2) {
        const [x0, y0] = place(
          left + shiftX + stroke[at]! * narrow * capHeight,
          (stroke[at + 1]! - 0.5) * capHeight + shiftY,
        );
        const [x1, y1] = place(
          left + shiftX + stroke[at + 2]! * narrow * capHeight,
          (stroke[at + 3]! - 0.5) * capHeight + shiftY,
        );
        segments.push([x0, y0, x1, y1]);
      }
    }
    left += widths[index]! + spacing * capHeight;
  });
  return segments;
}

/** Distance to the lettering's edge, exact near the strokes and capped away from them. */
export function letteringShape(setting: Setting, random: Random): Distance {
  const width = setting.weight * setting.capHeight;
  return strokesShape(letteringSegments(setting, random), width, setting.capHeight / 60, width * 2);
}
