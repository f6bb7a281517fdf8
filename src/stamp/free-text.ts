import type { Lattice } from './types';

/** Probability of a prefix that ends with "no new character", and of one that ends with its last character. */
interface Beam {
  blank: number;
  last: number;
}

/**
 * The texts that a lattice spells without any code system, most likely first, with their probabilities: prefix beam
 * search over CTC steps, a character repeated without a blank between counting once.
 * Source: A. Graves, "Supervised Sequence Labelling with Recurrent Neural Networks", 2012, section 7.5.
 */
export function freeTexts(lattice: Lattice, width = 12, most = 5): { text: string; probability: number }[] {
  let beams = new Map<string, Beam>([['', { blank: 1, last: 0 }]]);
  for (const step of lattice.steps) {
    const next = new Map<string, Beam>();
    const add = (text: string, blank: number, last: number): void => {
      const beam = next.get(text);
      if (beam === undefined) next.set(text, { blank, last });
      else {
        beam.blank += blank;
        beam.last += last;
      }
    };
    const characters = Object.entries(step).filter(([, probability]) => probability > 1e-4);
    for (const [text, { blank, last }] of beams) {
      for (const [character, probability] of characters) {
        if (character === '') add(text, (blank + last) * probability, 0);
        else if (text.endsWith(character)) {
          add(text, 0, last * probability);
          add(text + character, 0, blank * probability);
        } else add(text + character, 0, (blank + last) * probability);
      }
    }
    const kept = [...next].sort((a, b) => b[1].blank + b[1].last - a[1].blank - a[1].last).slice(0, width);
    beams = new Map(kept);
  }
  const totals = new Map<string, number>();
  for (const [text, { blank, last }] of beams) {
    const trimmed = text.trim();
    totals.set(trimmed, (totals.get(trimmed) ?? 0) + blank + last);
  }
  return [...totals]
    .map(([text, probability]) => ({ text, probability: Math.min(1, probability) }))
    .sort((a, b) => b.probability - a.probability)
    .slice(0, most);
}
