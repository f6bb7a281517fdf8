import type { Grade } from '../photographed';
import { chance } from '../random';
import { type Sewing, sound } from '../sewing';
import type { StitchScene } from '../stitch-truth';
import { drawn, held, hex, taken3 } from './svg';

const fine = 3;
const grounds = ['pebbles', 'plain', 'basket', 'herringbone', 'dots', 'checks'] as const;

/** A row of stitches as a vector picture: threads with a light and a dark side, holes, on grounds of their own. */
export async function secondStitchScene(
  seed: number,
  grade: Grade,
  stitched: boolean,
  sewing: Sewing = sound,
): Promise<StitchScene> {
  const draw = chance(seed * 31 + (stitched ? 3 : 4));
  const [width, height] = draw.share() < 0.5 ? [760, 570] : [570, 760];
  const count = draw.whole(3, 30);
  const pitch = Math.min(
    draw.between({ clear: 8, fair: 6.5, hard: 5 }[grade], 30),
    (Math.min(width, height) * 0.7) / count,
  );
  const length = count * pitch;
  const turn = draw.between(-180, 180);
  const middle = { x: width / 2 + draw.between(-40, 40), y: height / 2 + draw.between(-40, 40) };
  const kind = draw.of(stitched ? grounds.slice(0, 4) : grounds);
  const base = draw.between(45, 200);
  const apart = draw.between(...({ clear: [60, 110], fair: [35, 80], hard: [20, 50] }[grade] as [number, number]));
  const lighter = base < 110 || (base < 150 && draw.share() < 0.5);
  const tone = lighter ? base + apart : base - apart;
  const long = draw.between(0.6, 0.85) * pitch;
  const thick = Math.max(1.4, Math.min(draw.between(0.18, 0.34) * pitch, pitch - long + 1.5));
  const slant = draw.share() < 0.4 ? draw.between(-24, 24) : 0;
  const parts: string[] = [];
  const threads = stitched ? sewing(count) : [];
  if (stitched) {
    for (const { from, to, left } of threads) {
      const x = ((from + to) / 2) * pitch + draw.normal() * 0.025 * pitch;
      const y = draw.normal() * 0.02 * pitch;
      const own = tone * (1 + draw.normal() * 0.03);
      const half = Math.max(0.2, ((to - from - 1) * pitch + long - thick) / 2);
      const bar = (dy: number, wide: number, colour: string): string =>
        `<line x1="${x - half}" y1="${y + dy}" x2="${x + half}" y2="${y + dy}" stroke="${colour}" stroke-width="${wide}" stroke-linecap="round" stroke-opacity="${left}" transform="rotate(${slant / (to - from)} ${x} ${y})"/>`;
      parts.push(
        bar(thick * 0.3, thick, `rgba(0,0,0,${draw.between(0.1, 0.35)})`),
        bar(0, thick, hex(own, own * 0.95, own * 0.85)),
        bar(-thick * 0.18, thick * 0.35, hex(own * 1.15, own * 1.1, own)),
      );
    }
    if (draw.share() < 0.7) {
      for (let at = 0; at <= count; at++) {
        if (threads.some(({ from, to }) => from < at && at < to)) continue;
        parts.push(
          `<circle cx="${at * pitch}" cy="0" r="${thick * 0.38}" fill="rgba(10,5,0,${draw.between(0.3, 0.7)})"/>`,
        );
      }
    }
  }
  const edge = draw.share() < 0.45 ? draw.between(1, 2.4) * pitch * (draw.share() < 0.5 ? 1 : -1) : null;
  const beyond =
    edge === null
      ? ''
      : `<rect x="-2000" width="4000" y="${edge > 0 ? edge : edge - 3000}" height="3000" fill="rgba(0,0,0,0.3)"/><rect x="-2000" width="4000" y="${edge}" height="1.6" fill="rgba(255,255,255,0.25)"/>`;
  const row = `<g transform="translate(${middle.x} ${middle.y}) rotate(${turn}) translate(${-length / 2} 0)">${beyond}${parts.join('')}</g>`;
  const sheet = await drawn(
    `<g transform="scale(${fine})">${groundOf(kind, base, pitch, width, height, draw)}${row}</g>`,
    width * fine,
    height * fine,
  );
  const camera = held(width, height, grade, draw);
  const image = await taken3(sheet, camera, grade, draw);
  const [c, s] = [Math.cos((turn * Math.PI) / 180), Math.sin((turn * Math.PI) / 180)];
  const at = (along: number) => camera.seen({ x: middle.x + c * along, y: middle.y + s * along });
  const line: StitchScene['line'] = [at(-length / 2), at(length / 2)];
  return {
    image,
    line,
    count: stitched ? count : 0,
    threads,
    pitch: Math.hypot(line[1].x - line[0].x, line[1].y - line[0].y) / count,
    ground: kind,
  };
}

function groundOf(
  kind: (typeof grounds)[number],
  base: number,
  pitch: number,
  width: number,
  height: number,
  draw: ReturnType<typeof chance>,
): string {
  const colour = (by: number): string => hex(base * by, base * by * 0.93, base * by * 0.82);
  const size = draw.between(0.4, 1.4) * Math.max(7, pitch);
  const lean = draw.between(0, 180);
  const tile = (inner: string, w: number, h: number): string =>
    `<defs><pattern id="g" width="${w}" height="${h}" patternUnits="userSpaceOnUse" patternTransform="rotate(${lean})">${inner}</pattern></defs><rect x="-900" y="-900" width="2800" height="2800" fill="${colour(1)}"/><rect x="-900" y="-900" width="2800" height="2800" fill="url(#g)"/>`;
  const soft = draw.between(0.9, 0.95);
  if (kind === 'plain') return `<rect width="${width}" height="${height}" fill="${colour(1)}"/>`;
  if (kind === 'basket')
    return tile(
      `<rect width="${size / 2}" height="${size / 2}" fill="${colour(soft)}"/><rect x="${size / 2}" y="${size / 2}" width="${size / 2}" height="${size / 2}" fill="${colour(soft)}"/>`,
      size,
      size,
    );
  if (kind === 'herringbone')
    return tile(
      `<path d="M0 ${size}L${size} 0M${size} 0L${2 * size} ${size}" stroke="${colour(soft)}" stroke-width="${size * 0.3}" fill="none"/>`,
      2 * size,
      size,
    );
  if (kind === 'dots')
    return tile(`<circle cx="${size}" cy="${size}" r="${size * 0.5}" fill="${colour(0.7)}"/>`, 2 * size, 2 * size);
  if (kind === 'checks')
    return tile(
      `<rect width="${size}" height="${2 * size}" fill="${colour(0.8)}"/><rect width="${2 * size}" height="${size}" fill="rgba(255,255,255,0.2)"/>`,
      2 * size,
      2 * size,
    );
  const pebbles: string[] = [];
  const count = Math.min(2600, (width * height) / (size * size * 0.35));
  for (let at = 0; at < count; at++)
    pebbles.push(
      `<circle cx="${draw.between(0, width).toFixed(1)}" cy="${draw.between(0, height).toFixed(1)}" r="${(size * draw.between(0.2, 0.4)).toFixed(1)}" fill="${colour(draw.between(0.92, 1.08))}"/>`,
    );
  return `<rect width="${width}" height="${height}" fill="${colour(1)}"/>${pebbles.join('')}`;
}
