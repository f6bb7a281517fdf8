import { withoutSigns } from './sign';
import type { Lattice } from './types';

/** A prefix with its probability when it ends with "no new character", and when it ends with its last character. */
interface Beam {
  text: string;
  blank: number;
  last: number;
}

/**
 * The texts that a lattice spells without any code system, most likely first, with their probabilities: prefix beam
 * search over CTC steps, a character repeated without a blank between counting once.
 * Source: A. Graves, "Supervised Sequence Labelling with Recurrent Neural Networks", 2012, section 7.5.
 */
export function freeTexts(lattice: Lattice, width = 12, most = 5): { text: string; probability: number }[] {
  let beams: Beam[] = [{ text: '', blank: 1, last: 0 }];
  for (const step of lattice.steps) {
    const next = new Map<string, Beam>();
    const add = (text: string, blank: number, last: number): void => {
      const beam = next.get(text);
      if (beam === undefined) next.set(text, { text, blank, last });
      else {
        beam.blank += blank;
        beam.last += last;
      }
    };
    const characters = Object.entries(step).filter(([, probability]) => probability > 1e-4);
    for (const { text, blank, last } of beams) {
      for (const [character, probability] of characters) {
        if (character === '') add(text, (blank + last) * probability, 0);
        else if (text.endsWith(character)) {
          add(text, 0, last * probability);
          add(text + character, 0, blank * probability);
        } else add(text + character, 0, (blank + last) * probability);
      }
    }
    beams = [...next.values()].sort((a, b) => b.blank + b.last - a.blank - a.last).slice(0, width);
  }
  const totals = new Map<string, number>();
  for (const { text, blank, last } of beams) {
    const trimmed = withoutSigns(text);
    totals.set(trimmed, (totals.get(trimmed) ?? 0) + blank + last);
  }
  return [...totals]
    .map(([text, probability]) => ({ text, probability: Math.min(1, probability) }))
    .sort((a, b) => b.probability - a.probability)
    .slice(0, most);
}
