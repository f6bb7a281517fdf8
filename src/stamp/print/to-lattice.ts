import type { PrintSymbol } from '../engines';
import type { Lattice } from '../types';

/** Characters that a stamp can hold. */
export const stampCharacters = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 -./';

/**
 * Characters that are taken for one another in stamped leather, with the share of a misreading that goes to each.
 * Common practice for the pairs; the shares are our own estimate from our rendered photographs.
 */
const confusable: Readonly<Record<string, string>> = {
  '0': 'ODQ',
  '1': 'I7L',
  '2': 'Z7',
  '3': '89B',
  '4': 'A9',
  '5': 'S6',
  '6': 'G85',
  '7': 'T1Z',
  '8': 'B36',
  '9': '83',
  A: '4R',
  B: '8R3',
  C: 'GO',
  D: '0O',
  E: 'FB',
  F: 'EP',
  G: '6C',
  H: 'NM',
  I: '1L',
  J: 'I1',
  K: 'XR',
  L: '1I',
  M: 'NH',
  N: 'MH',
  O: '0DQ',
  P: 'FR',
  Q: 'O0',
  R: 'KB',
  S: '58',
  T: '7I',
  U: 'VO',
  V: 'YU',
  W: 'VM',
  X: 'KY',
  Y: 'VX',
  Z: '27',
};

/** Small letters and signs that a general engine gives where a stamp has a capital or a digit. */
const standsFor: Readonly<Record<string, string>> = {
  '|': 'I',
  '!': '1',
  '(': 'C',
  ')': 'J',
  '[': 'I',
  ']': 'I',
  '§': 'S',
  $: 'S',
  '£': 'E',
  '€': 'E',
  '¥': 'Y',
  '%': '9',
  '&': '8',
  '@': '0',
  '°': '0',
  '—': '-',
  '–': '-',
  _: '-',
  ',': '.',
  '·': '.',
};

/** The stamp character that an engine's character stands for, or null for one that no stamp holds. */
export function stampCharacter(text: string): string | null {
  const plain = standsFor[text] ?? text.toUpperCase();
  return plain.length === 1 && stampCharacters.includes(plain) ? plain : null;
}

/**
 * Recognised characters as a lattice: one step a character, a step of "no new character" between two. `certainty`
 * (0 to 1) is how far the word as a whole is to be believed; the rest goes to the characters it is mistaken for.
 */
export function latticeFromSymbols(symbols: readonly PrintSymbol[], certainty: number): Lattice {
  const steps: Record<string, number>[] = [];
  for (const symbol of symbols) {
    const shares: Record<string, number> = {};
    for (const { text, share } of symbol.choices) {
      const character = stampCharacter(text);
      if (character !== null && share > 0) shares[character] = (shares[character] ?? 0) + share;
    }
    const best = Object.entries(shares).sort((a, b) => b[1] - a[1])[0];
    if (best === undefined) continue;
    const total = Object.values(shares).reduce((sum, share) => sum + share, 0);
    const step: Record<string, number> = {};
    for (const [character, share] of Object.entries(shares)) step[character] = (certainty * share) / total;
    const others = confusable[best[0]] ?? '';
    for (const other of others) step[other] = (step[other] ?? 0) + (0.8 * (1 - certainty)) / others.length;
    // A blemish taken for a character: the step may say nothing.
    step[''] = 0.1 * (1 - certainty);
    if (steps.length > 0) steps.push({ '': 1 });
    steps.push(step);
  }
  return { steps };
}
