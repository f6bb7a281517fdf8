import { expect, test } from 'vitest';
import { decodeLattice } from '../../../src/code';
import { builtInMakers } from '../../../src/maker';
import { listOfPeriods } from '../../../src/span';
import type { Lattice } from '../../../src/stamp/types';
import { chanceFrom, pick, pickText } from '../../reference/number-systems';

const signs = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789';
const digits = '0123456789';
const seed = 20_251_125;

/** A normal number by Box and Muller. */
const normal = (chance: () => number) => Math.sqrt(-2 * Math.log(1 - chance())) * Math.cos(2 * Math.PI * chance());

/**
 * What an honest recogniser would say of a text seen through noise: each sign has a score, the true one higher by
 * `clarity`; its probabilities are the exact ones for scores with unit noise and signs that are equally likely.
 */
function seenThroughNoise(chance: () => number, text: string, clarity: number): Lattice {
  const steps = [...text].map((truth) => {
    const scores = [...signs].map((sign) => Math.exp(clarity * (normal(chance) + (sign === truth ? clarity : 0))));
    const total = scores.reduce((sum, score) => sum + score, 0);
    const shares = [...signs].map((sign, at) => [sign, scores[at]! / total] as const);
    return Object.fromEntries(shares.filter(([, share]) => share > 1e-4));
  });
  return { steps: steps.flatMap((step) => [step, { '': 1 }]) };
}

const two = (number: number) => String(number).padStart(2, '0');
const file = builtInMakers[0]!;
const plantsOf = (year: number) =>
  file.plants
    .filter((plant) =>
      listOfPeriods(plant.used).some(([first, last]) => Number(first) <= year && year <= Number(last ?? 9999)),
    )
    .map(({ code }) => code);

/** Mostly sound codes of Ondrasse, some of their shape with any values, some other text. */
function anyStamp(chance: () => number): string {
  const kind = chance();
  const whole = 1990 + Math.floor(chance() * 34);
  const year = two(whole % 100);
  const number = two(1 + Math.floor(chance() * (whole >= 2007 ? 52 : 12)));
  const plants = plantsOf(whole);
  if (kind < 0.8) return `${pick(chance, plants)}${number[0]}${year[0]}${number[1]}${year[1]}`;
  if (kind < 0.92) return `${pickText(chance, signs.slice(0, 26), 2)}${pickText(chance, digits, 4)}`;
  return pickText(chance, signs, 6);
}

test(`of readings said to be as likely as p, about p are right (seed ${seed})`, () => {
  const chance = chanceFrom(seed);
  const bins = [0.5, 0.7, 0.9, 0.99, 1].map((upTo) => ({ upTo, count: 0, said: 0, right: 0 }));
  let accepted = 0;
  let acceptedRight = 0;
  for (let round = 0; round < 250; round++) {
    const text = anyStamp(chance);
    const lattice = seenThroughNoise(chance, text, 1.8 + chance() * 1.8);
    const decoding = decodeLattice(lattice, { makers: builtInMakers, maker: 'Ondrasse', now: '2024-12-31' });
    const readings = decoding.readings.length > 0 ? decoding.readings : decoding.nearest.map(({ reading }) => reading);
    const best = readings[0]?.text;
    if (best === undefined) continue;
    const said = readings.filter((reading) => reading.text === best).reduce((sum, one) => sum + one.probability, 0);
    const bin = bins.find(({ upTo }) => said <= upTo + 1e-9)!;
    bin.count++;
    bin.said += said;
    if (best === text) bin.right++;
    if (decoding.readings.length > 0) {
      accepted++;
      if (best === text) acceptedRight++;
    }
  }
  const table = bins
    .map(
      ({ upTo, count, said, right }) =>
        `up to ${upTo}: ${count} said ${(said / count).toFixed(2)}, right ${(right / count).toFixed(2)}`,
    )
    .join('\n');
  for (const { count, said, right } of bins) {
    if (count >= 30) expect(Math.abs(said - right) / count, table).toBeLessThan(0.15);
  }
  expect(accepted, table).toBeGreaterThan(60);
  expect(acceptedRight / accepted, table).toBeGreaterThan(0.95);
}, 120_000);
