import type { MakerFile } from '../maker/types';
import { phraseFinder } from '../text';

/** Remembers what was built for the last list of maker files: patterns over all their words are large. */
export function rememberForMakers<T>(build: (makers: MakerFile[]) => T): (makers: MakerFile[]) => T {
  let last: { makers: MakerFile[]; built: T } | null = null;
  return (makers) => {
    const same = last?.makers.length === makers.length && makers.every((file, index) => file === last?.makers[index]);
    if (!last || !same) last = { makers: [...makers], built: build(makers) };
    return last.built;
  };
}

/** Finds makers by all that their files call them. */
export const nameFinder = rememberForMakers((makers) =>
  phraseFinder<string>(Object.fromEntries(makers.map(({ maker, aliases }) => [maker, [maker, ...aliases]]))),
);
