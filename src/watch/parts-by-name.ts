import type { WatchDatabase } from './database';
import type { Parts, StoredLook, StoredPicture } from './types';

/** Looks and pictures by their names, of the database or of a file that is taken in. */
export interface PartsByName {
  look(name: string): Promise<StoredLook | undefined>;
  picture(name: string): Promise<StoredPicture | undefined>;
}

export const partsIn = (database: WatchDatabase): PartsByName => ({
  look: (name) => database.get('looks', name),
  picture: (name) => database.get('pictures', name),
});

/** The parts of a file by their names. */
export function byName({ looks, pictures }: Parts): PartsByName {
  const lookOf = new Map(looks.map((one) => [one.hash, one]));
  const pictureOf = new Map(pictures.map((one) => [one.hash, one]));
  return { look: async (name) => lookOf.get(name), picture: async (name) => pictureOf.get(name) };
}
