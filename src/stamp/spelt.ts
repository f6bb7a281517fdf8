import { type PlacedCharacter, placedCharacters } from './align';
import { freeTexts } from './free-text';
import { weighRuns } from './runs';
import type { Lattice } from './types';

/** What a line spells: its lattice, where its characters stand, the texts that it may be, likeliest first, and the likeliest. */
export interface Spelt {
  lattice: Lattice;
  placed: readonly PlacedCharacter[];
  texts: ReturnType<typeof freeTexts>;
  free: ReturnType<typeof freeTexts>[number];
}

export function speltBy(lattice: Lattice): Spelt {
  const texts = weighRuns(freeTexts(lattice, 40, 40));
  return { lattice, placed: placedCharacters(lattice), texts, free: texts[0] ?? { text: '', probability: 0 } };
}
