import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Quad } from '../../../src/photo';
import type { CameraPose } from '../../market/photo-renderer/camera';
import type { Light } from '../../market/photo-renderer/light';
import { srgb } from '../../market/photo-renderer/material';
import type { PhotoSpec } from '../../market/photo-renderer/photograph';
import { jpegOf, photograph } from '../../market/photo-renderer/photograph';
import { type Random, randomFrom } from '../../market/photo-renderer/random';
import type { StampedLine, StampScene, Technique } from '../../market/photo-renderer/stamp-scene';

export type Difficulty = 'clear' | 'fair' | 'hard' | 'no code';

export interface BenchPhoto {
  path: string;
  difficulty: Difficulty;
  /** What is stamped, null where nothing is. */
  code: string | null;
  /** Where it is stamped: corners of the code from cap line to baseline, where the set tells them. */
  quad?: Quad | null;
}

/**
 * Photographs by the demo marketplace's renderer, whose code, lettering, leather and light the training never saw:
 * the second renderer of the bench. They are drawn once into `folder` and found there again.
 */
export async function renderedPhotos(folder: string, each: number): Promise<BenchPhoto[]> {
  mkdirSync(folder, { recursive: true });
  const photos: BenchPhoto[] = [];
  for (const difficulty of ['clear', 'fair', 'hard', 'no code'] as const) {
    for (let number = 1; number <= each; number++) {
      const name = `${difficulty.replace(' ', '-')}-${number}`;
      const random = randomFrom(number * 7919 + difficulty.length * 104729 + difficulty.charCodeAt(0));
      const code = difficulty === 'no code' ? null : validCode(random);
      const path = join(folder, `${name}.jpg`);
      const spec = specOf(name, difficulty, code, random);
      if (!existsSync(path)) writeFileSync(path, await jpegOf(photograph(spec), spec.quality));
      photos.push({ path, difficulty, code });
    }
  }
  return photos;
}

const pick = <T>(random: Random, items: readonly T[]): T => items[Math.floor(random() * items.length)]!;
const between = (random: Random, low: number, high: number): number => low + random() * (high - low);
/** Between the two ends of the range for a level of difficulty. */
const ranged = (random: Random, ranges: readonly (readonly [number, number])[], level: number): number => {
  const [low, high] = ranges[level] ?? ranges[0]!;
  return between(random, low, high);
};
const whole = (random: Random, low: number, high: number): number => Math.floor(between(random, low, high + 1));
const two = (value: number): string => String(value).padStart(2, '0');

/** A code that one of the built-in (invented) makers' systems can have written. */
function validCode(random: Random): string {
  const interleave = (plant: string, first: string, second: string): string =>
    `${plant}${first[0]}${second[0]}${first[1]}${second[1]}`;
  const kind = random();
  if (kind < 0.45) {
    const plant = pick(random, [
      ['KV', 1990, 2003],
      ['HJ', 1990, 2006],
      ['LD', 1996, 2006],
      ['ZM', 1994, 2006],
    ] as const);
    return interleave(plant[0], two(whole(random, 1, 12)), two(whole(random, plant[1], plant[2]) % 100));
  }
  if (kind < 0.7) {
    return interleave(pick(random, ['LD', 'HJ', 'PX']), two(whole(random, 1, 52)), two(whole(random, 7, 24)));
  }
  if (kind < 0.85) return `${whole(random, 80, 83)}${whole(random, 1, 9)}`;
  return `${whole(random, 84, 85)}${two(whole(random, 1, 12))}`;
}

const shades = [
  '#a9713f',
  '#5c3a21',
  '#33201a',
  '#7a2430',
  '#b58a5e',
  '#42444a',
  '#2f3b2c',
  '#8c5a34',
  '#1c1a19',
  '#c7b08a',
];

function specOf(name: string, difficulty: Difficulty, code: string | null, random: Random): PhotoSpec {
  const level = { clear: 0, fair: 1, hard: 2, 'no code': whole(random, 0, 2) }[difficulty];
  const technique: Technique = pick(random, ['blind', 'blind', 'blind', 'inked', 'foil']);
  const shade = pick(random, shades);
  const dark = srgb(shade)[1] < 0.12;
  const colour = technique === 'foil' ? pick(random, ['#d8b45c', '#cfcfcf', '#c98f5a']) : dark ? '#d9d0c0' : '#1d1613';
  const line = (text: string, y: number, capHeight: number): StampedLine => ({
    text,
    technique,
    capHeight,
    weight: between(random, 0.11, 0.18),
    spacing: between(random, 0.2, 0.42),
    narrow: between(random, 0.72, 1.05),
    x: between(random, -8, 8),
    y,
    turn: between(random, -4, 4),
    jitter: [0.008, 0.015, 0.025][level]!,
    depth:
      technique === 'blind'
        ? ranged(
            random,
            [
              [0.36, 0.55],
              [0.24, 0.38],
              [0.14, 0.26],
            ],
            level,
          )
        : 0.1,
    ...(technique === 'blind' ? {} : { colour }),
    worn: [0.1, 0.3, 0.5][level]!,
    uneven: between(random, -0.1, [0.1, 0.25, 0.5][level]!),
  });
  const lines: StampedLine[] = [];
  if (code !== null)
    lines.push(
      line(
        code,
        between(random, -4, 6),
        ranged(
          random,
          [
            [4.2, 7],
            [3.4, 6],
            [2.6, 5],
          ],
          level,
        ),
      ),
    );
  const named = random() < (code === null ? 0.3 : 0.25);
  if (named)
    lines.push(line(pick(random, ['ONDRASSE', 'CALDERWICK & ROOK', 'TESSARO VELL']), -12, between(random, 2.6, 3.6)));
  const stamp: StampScene = {
    leather: {
      colour: srgb(shade),
      grain: between(random, 0.8, 2.6),
      relief: ranged(
        random,
        [
          [0.02, 0.1],
          [0.06, 0.18],
          [0.12, 0.3],
        ],
        level,
      ),
      gloss: between(random, 0.08, 0.35),
      patina: between(random, 0.05, 0.3),
    },
    lines,
    ...(random() < 0.3
      ? {
          tab: {
            halfWidth: 30,
            halfHeight: 17,
            lining: pick(random, ['#5c5c33', '#31405a', '#6b2028']),
            thread: '#b9983f',
          },
        }
      : {}),
    ...(random() < 0.4 ? { seam: { y: -19, thread: pick(random, ['#b9983f', '#e0d8c4', '#30241c']) } } : {}),
  };
  const tipped = [8, 16, 24][level]!;
  const pose: CameraPose = {
    width: 900,
    height: 675,
    shows: between(random, 55, [85, 110, 130][level]!),
    yaw: between(random, -tipped, tipped),
    pitch: between(random, -tipped, tipped),
    roll: between(random, -tipped * 0.7, tipped * 0.7),
    bow: between(random, 0, level * 3),
  };
  const light: Light = {
    from: between(random, 0, 360),
    elevation: between(random, 20, 50),
    direct: between(random, 0.5, 0.75),
    scattered: between(random, 0.25, 0.42),
    warmth: between(random, 0.95, 1.12),
    fall: between(random, 0.1, 0.6),
    vignette: between(random, 0, 0.6),
    blur: ranged(
      random,
      [
        [0.6, 0.9],
        [0.8, 1.4],
        [1.2, 2.2],
      ],
      level,
    ),
    noise: between(random, 1.5, [3, 5, 8][level]!),
    ...(level === 2 && random() < 0.5
      ? { moved: { pixels: whole(random, 3, 6), towards: between(random, 0, 180) } }
      : {}),
  };
  return { file: name, subject: { kind: 'stamp', stamp }, pose, light, quality: [84, 72, 60][level]! };
}
