import type { Part } from '../claim/types';
import { isKnownPart, type KnownPart } from '../maker';

/** The parts of a bag as one language names them in a sentence: "the lining". */
export type PartNames = Record<Part, string>;
export type KnownPartNames = Record<KnownPart, string>;

/** Names a part of a maker file; one of the file's own is called by its own name. */
export const partNamer =
  (names: KnownPartNames) =>
  (part: string): string =>
    isKnownPart(part) ? names[part] : part.replaceAll('-', ' ');
