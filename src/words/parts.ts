import type { Part } from '../claim/types';

/** The parts of a bag as one language names them in a sentence: "the lining". */
export type PartNames = Record<Part, string>;
