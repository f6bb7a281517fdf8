import type { Point } from '../../../src/photo/types';
import type { PanelScene, PanelWish } from '../panel-truth';
import { type Grade, seenBox } from '../photographed';
import { type Chance, chance } from '../random';
import { drawn, held, hex, taken3 } from './svg';

const fine = 3;

/** Petals, stars, rings and strokes as paths, in one repeat from −0.5 to 0.5. */
function motif(draw: Chance, axis: boolean, halfTurn: boolean, inks: [string, string]): string {
  const half: string[] = [];
  for (let at = draw.whole(2, 4); at > 0; at--) {
    const [x, y] = [draw.between(0.03, 0.3), draw.between(-0.32, 0.32)];
    const r = draw.between(0.06, 0.13);
    const ink = draw.share() < 0.65 ? inks[0] : inks[1];
    const turn = draw.between(0, 360);
    const kind = draw.whole(0, 2);
    if (kind === 0)
      half.push(
        `<path d="M0 ${-r}C${r} ${-r * 0.4} ${r} ${r * 0.4} 0 ${r}C${-r * 0.3} ${r * 0.3} ${-r * 0.3} ${-r * 0.3} 0 ${-r}Z" fill="${ink}" transform="translate(${x} ${y}) rotate(${turn})"/>`,
      );
    else if (kind === 1)
      half.push(`<circle cx="${x}" cy="${y}" r="${r * 0.6}" fill="none" stroke="${ink}" stroke-width="${r * 0.45}"/>`);
    else
      half.push(
        `<path d="M${-r} ${r * 0.6}L0 ${-r}L${r * 0.4} ${r * 0.8}Z" fill="${ink}" transform="translate(${x} ${y}) rotate(${turn})"/>`,
      );
  }
  const own = half.join('');
  let whole = axis
    ? `${own}<g transform="scale(-1 1)">${own}</g><rect x="-0.025" y="${draw.between(-0.4, 0)}" width="0.05" height="${draw.between(0.2, 0.4)}" fill="${inks[0]}"/>`
    : `${own}<path d="M-0.34 -0.26L0.06 -0.34L-0.1 0.02L-0.22 0.3Z" fill="${inks[0]}"/>`;
  if (halfTurn) whole += `<g transform="rotate(180)">${whole}</g>`;
  return whole;
}

/** A panel of print as a vector picture. */
export async function secondPanelScene(seed: number, grade: Grade, wish: PanelWish): Promise<PanelScene> {
  const draw = chance(seed * 17 + 9);
  const [width, height] = wish.back ? [920, 580] : [760, 600];
  const wide = wish.back ? 375 : draw.between(430, 590);
  const high = draw.between(350, 450);
  const left = wish.back ? 55 : (width - wide) / 2 + draw.between(-8, 8);
  const top = (height - high) / 2 + draw.between(-8, 8);
  const p = wide / draw.between(wish.back ? 3.2 : 3.5, 10);
  const q = Math.min(high / 3.2, Math.max(high / 12, p * draw.between(0.75, 1.35)));
  const staggered = draw.share() < 0.25;
  const halfTurn = draw.share() < (wish.back ? 0.15 : 0.25);
  const tone = draw.between(70, 185);
  const sign = tone > 128 ? -1 : 1;
  const apart = { clear: draw.between(50, 85), fair: draw.between(30, 60), hard: draw.between(18, 40) }[grade] * sign;
  const tint = [1, draw.between(0.75, 1), draw.between(0.55, 1)] as const;
  const colour = (value: number): string => hex(value * tint[0], value * tint[1], value * tint[2]);
  const inks: [string, string] = [colour(tone + apart), colour(tone + apart * 0.5)];
  const onAxis = draw.share() < 0.5 ? 0 : 0.5;
  const phase = { x: left + wide / 2 + (onAxis + wish.off) * p, y: top + draw.between(0, q) };
  const drawing = motif(draw, wish.axis, halfTurn, inks);
  const stands = draw.share() < 0.5 ? 'turned' : 'upright';
  const step = wish.seam ? draw.of([0, 0.015, 0.04, 0.08, 0.15, 0.3]) * (draw.share() < 0.5 ? -1 : 1) : 0;
  const seamAt = left + wide * draw.between(0.4, 0.6);
  const spread = (x0: number, x1: number, by: Point, id: string): string => {
    const out: string[] = [];
    for (let row = Math.floor((top - by.y) / q) - 1; row <= (top + high - by.y) / q + 1; row++) {
      for (let column = Math.floor((x0 - by.x) / p) - 1; column <= (x1 - by.x) / p + 1; column++) {
        out.push(
          `<use href="#m" transform="translate(${by.x + column * p} ${by.y + row * q}) scale(${p * (staggered ? 0.7 : 1)} ${q * (staggered ? 0.7 : 1)})"/>`,
        );
        if (staggered)
          out.push(
            `<use href="#m" transform="translate(${by.x + (column + 0.5) * p} ${by.y + (row + 0.5) * q}) scale(${p * 0.7} ${q * 0.7})"/>`,
          );
      }
    }
    return `<clipPath id="${id}"><rect x="${x0}" y="${top}" width="${x1 - x0}" height="${high}"/></clipPath><g clip-path="url(#${id})">${out.join('')}</g>`;
  };
  const ground = (x: number): string =>
    `<rect x="${x}" y="${top}" width="${wide}" height="${high}" fill="${colour(tone)}"/>`;
  const parts = [
    `<defs><g id="m">${drawing}</g></defs>`,
    `<rect x="-500" y="-500" width="2400" height="2000" fill="${tone > 128 ? hex(tone - 60, tone - 62, tone - 66) : hex(tone + 70, tone + 68, tone + 60)}"/>`,
    ground(left),
  ];
  if (wish.seam) {
    parts.push(
      spread(left, seamAt, phase, 'a'),
      spread(seamAt, left + wide, { x: phase.x, y: phase.y + step * q }, 'b'),
    );
    parts.push(`<rect x="${seamAt - 1.2}" y="${top}" width="2.4" height="${high}" fill="${colour(tone * 0.55)}"/>`);
  } else parts.push(spread(left, left + wide, phase, 'a'));
  const other = left + wide + 45;
  if (wish.back) {
    const by = { x: other + draw.between(0, p), y: top + draw.between(0, q) };
    const lain = spread(other, other + wide, by, 'c');
    const turned = `<g transform="rotate(180 ${other + wide / 2} ${top + high / 2})">${lain}</g>`;
    parts.push(ground(other), stands === 'turned' ? turned : lain);
  }
  const sheet = await drawn(`<g transform="scale(${fine})">${parts.join('')}</g>`, width * fine, height * fine);
  const camera = held(width, height, grade, draw);
  const image = await taken3(sheet, camera, grade, draw);
  const box = (x: number): PanelScene['corners'] => seenBox(camera, x, top, x + wide, top + high);
  const near = (value: number, every: number): number => value - Math.round(value / every) * every;
  const [column, row] = [Math.round((left + wide / 2 - phase.x) / p), Math.round((top + high / 2 - phase.y) / q)];
  return {
    image,
    corners: box(left),
    repeatX: p / wide,
    repeatY: q / high,
    axis: wish.axis,
    off: near(onAxis + wish.off, 0.5),
    staggered,
    motif: camera.seen({ x: phase.x + column * p, y: phase.y + row * q }),
    motifOff: near(onAxis + wish.off, 1),
    back: wish.back ? { corners: box(other), stands: halfTurn ? null : stands } : null,
    seam: wish.seam
      ? { ends: [camera.seen({ x: seamAt, y: top }), camera.seen({ x: seamAt, y: top + high })], step }
      : null,
  };
}
