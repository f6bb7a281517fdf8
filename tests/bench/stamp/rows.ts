import { basename, dirname, join } from 'node:path';
import { randomFrom } from '../../market/photo-renderer/random';
import { bare, type Judged, reliability, share } from './judge';
import type { BenchPhoto, Difficulty } from './rendered';

export type JudgedPhoto = { photo: BenchPhoto; result: Judged };

type Way = 'withSystems' | 'named' | 'free';
const wayNames = { withSystems: 'with code systems', named: 'with code systems, maker known', free: 'free' };

/** A photograph's folder and name: both halves of the validation set count from one. */
const nameOf = ({ path }: BenchPhoto): string => join(basename(dirname(path)), basename(path));

const isRight = ({ photo, result }: JudgedPhoto, way: Way): boolean =>
  bare(result[way]?.text ?? '') === bare(photo.code ?? '');

/** Share and how many photos it is a share of: a percentage of thirty photos says little. */
const shareOf = (part: number, whole: number): string => (whole === 0 ? '–' : `${share(part, whole)} of ${whole}`);

/** Exact codes of each class, letters and digits only, and what was accepted, rightly or not. */
export function rates(name: string, judged: readonly JudgedPhoto[], way: Way) {
  const of = (difficulty: Difficulty) => judged.filter(({ photo }) => photo.difficulty === difficulty);
  const exact = (difficulty: Difficulty): string => {
    const photos = of(difficulty);
    return shareOf(photos.filter((one) => isRight(one, way)).length, photos.length);
  };
  const coded = judged.filter(({ photo }) => photo.code !== null);
  const accepted = coded.filter(({ result }) => result[way]?.accepted);
  const among = coded.filter(({ photo, result }) => result.lines.some((text) => bare(text) === bare(photo.code ?? '')));
  const asStamped = coded.filter(({ photo, result }) => result.free.text === photo.code);
  const empty = of('no code').filter(({ result }) => result[way]?.accepted);
  return {
    'from the whole photo': `${name}, ${wayNames[way]}`,
    clear: exact('clear'),
    fair: exact('fair'),
    hard: exact('hard'),
    'any line': way === 'free' ? shareOf(among.length, coded.length) : '',
    'first, separators too': way === 'free' ? shareOf(asStamped.length, coded.length) : '',
    accepted: shareOf(accepted.length, coded.length),
    'wrong but accepted': shareOf(accepted.filter((one) => !isRight(one, way)).length, coded.length),
    'no code: accepted': shareOf(empty.length, of('no code').length),
  };
}

/** What the likeliest reading said of itself, and whether it was right. */
export const saidOf = (judged: readonly JudgedPhoto[]): { probability: number; right: boolean }[] =>
  judged
    .filter(({ result }) => result.withSystems.text !== '')
    .map((one) => ({ probability: one.result.withSystems.probability, right: isRight(one, 'withSystems') }));

/** Photographs whose accepted reading is wrong, one line each: what must not happen. */
export const missesOf = (judged: readonly JudgedPhoto[]): string[] =>
  judged
    .filter((one) => one.result.withSystems.accepted && !isRight(one, 'withSystems'))
    .map(
      ({ photo, result }) => `wrong but accepted: ${nameOf(photo)} is ${photo.code}, read ${result.withSystems.text}`,
    );

/** Every photograph that was not read right, with all that was read on it. */
export const misreadings = (judged: readonly JudgedPhoto[]): string[] =>
  judged
    .filter((one) => one.photo.code !== null && !(isRight(one, 'withSystems') && isRight(one, 'free')))
    .map(({ photo, result: { withSystems, lines } }) => {
      const said = `${withSystems.text || 'nothing'} (${share(withSystems.probability, 1)})`;
      return `misread: ${nameOf(photo)} is ${photo.code}, with systems ${said}, free ${lines.join(' | ') || 'nothing'}`;
    });

/** The mean error of readers of whom each reading is right exactly as often as they say: few readings scatter. */
function errorByChance(said: readonly { probability: number }[], draws = 200): number {
  const random = randomFrom(1);
  let sum = 0;
  for (let draw = 0; draw < draws; draw++) {
    sum += reliability(said.map(({ probability }) => ({ probability, right: random() < probability }))).error;
  }
  return sum / draws;
}

/** The reliability diagram of each set and of all together, with the expected calibration error of each. */
export function reliabilityTable(sets: readonly { name: string; judged: readonly JudgedPhoto[] }[]) {
  const whole = { name: 'all sets', judged: sets.flatMap(({ judged }) => judged) };
  const parts = [whole, ...sets].map(({ name, judged }) => {
    const said = saidOf(judged);
    return { name, readings: said.length, ...reliability(said), byChance: errorByChance(said) };
  });
  return {
    errors: parts.map(({ name, readings, error, byChance }) => ({
      set: name,
      readings,
      'expected calibration error': share(error, 1),
      'by chance alone': share(byChance, 1),
    })),
    bins: parts.flatMap(({ name, bins }) => bins.map((bin) => ({ set: name, ...bin }))),
  };
}
