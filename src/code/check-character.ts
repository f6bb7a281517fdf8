/** The check-character rules of a maker file, by name. Each gives the check characters for the characters it covers. */
export type CheckRule = 'luhn' | 'mod10' | 'mod11' | 'mod97' | 'iso6346' | 'vin';

/** A digit's value, or 10 to 35 for A to Z; null for anything else. */
const baseThirtySix = (character: string): number | null => {
  const value = Number.parseInt(character, 36);
  return Number.isNaN(value) ? null : value;
};

/** Source: ISO 6346:2022: A = 10, then on, leaving out the multiples of 11. */
const containerValue = (character: string): number | null => {
  const value = baseThirtySix(character);
  return value === null || value < 10 ? value : value + Math.floor((value - 1) / 10);
};

const vinLetters = 'ABCDEFGH.JKLMN.P.R..STUVWXYZ';
const vinLetterValues = '12345678.12345.7.9..23456789';

/** Source: 49 CFR 565.15(c), Table III; I, O and Q have no value. */
const vinValue = (character: string): number | null => {
  if (character >= '0' && character <= '9') return Number(character);
  const place = vinLetters.indexOf(character);
  return place < 0 || character === '.' ? null : Number(vinLetterValues[place]);
};

/** Source: 49 CFR 565.15(c), Table IV; the ninth place is the check itself and weighs nothing. */
const vinWeights = [8, 7, 6, 5, 4, 3, 2, 10, 0, 9, 8, 7, 6, 5, 4, 3, 2];

const elevenths = '0123456789X';

/** Weights as a maker file gives them: a full list stands in order, a shorter one repeats from the last character. */
const weightAt = (weights: readonly number[], place: number, length: number): number =>
  weights.length === length ? weights[place]! : weights[(length - 1 - place) % weights.length]!;

function weightedSum(values: readonly number[], weights: readonly number[]): number {
  return values.reduce((sum, value, place) => sum + value * weightAt(weights, place, values.length), 0);
}

/** Source: ISO/IEC 7812-1 Annex B; letters count as two digits (A = 10), as in ISO 6166. */
function luhn(body: readonly string[]): string {
  const digits = body.flatMap((character) => [...String(baseThirtySix(character))].map(Number));
  const sum = digits.reverse().reduce((total, digit, place) => {
    const doubled = place % 2 === 0 ? digit * 2 : digit;
    return total + (doubled > 9 ? doubled - 9 : doubled);
  }, 0);
  return String((10 - (sum % 10)) % 10);
}

/** ISO 7064 MOD 97-10: two digits that bring the whole to 1 modulo 97. */
function mod97(body: readonly string[]): string {
  const remainder = [...body, '0', '0'].reduce((rest, character) => {
    const value = baseThirtySix(character)!;
    return (rest * (value > 9 ? 100 : 10) + value) % 97;
  }, 0);
  return String(98 - remainder).padStart(2, '0');
}

/** Characters that a rule's check characters can be, and how many there are. */
export const checkShape: Record<CheckRule, { width: number; of: string }> = {
  luhn: { width: 1, of: '0123456789' },
  mod10: { width: 1, of: '0123456789' },
  mod11: { width: 1, of: elevenths },
  mod97: { width: 2, of: '0123456789' },
  iso6346: { width: 1, of: '0123456789' },
  vin: { width: 1, of: elevenths },
};

/**
 * The check characters for `body`, the covered characters in order without separators; null when one of them has no
 * value under the rule. `at` is the place of the check among the characters (the VIN's weights need it).
 * Sources: GS1 General Specifications 7.9 (mod10 with 3, 1 from the right); ISO 2108 (mod11 with 2, 3, 4 … from the
 * right and X for ten); the others beside their tables above.
 */
export function checkCharacters(
  rule: CheckRule,
  body: readonly string[],
  at: number,
  weights?: readonly number[],
): string | null {
  const worth = rule === 'vin' ? vinValue : rule === 'iso6346' ? containerValue : baseThirtySix;
  const values = body.map(worth);
  if (values.length === 0 || !values.every((value) => value !== null)) return null;
  switch (rule) {
    case 'luhn':
      return luhn(body);
    case 'mod97':
      return mod97(body);
    case 'mod10':
      return String((10 - (weightedSum(values, weights ?? [3, 1]) % 10)) % 10);
    case 'mod11':
      return elevenths[
        (11 - (weightedSum(values, weights ?? values.map((_, place) => values.length + 1 - place)) % 11)) % 11
      ]!;
    case 'iso6346':
      return String((values.reduce((sum, value, place) => sum + value * 2 ** place, 0) % 11) % 10);
    case 'vin': {
      const weighed = values.reduce(
        (sum, value, place) => sum + value * (vinWeights[place < at ? place : place + 1] ?? 0),
        0,
      );
      return elevenths[weighed % 11]!;
    }
  }
}
