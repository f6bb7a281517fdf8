import { partSchema } from '../claim/types';

/** Parts that a maker file can speak of beside those that a listing's words are sorted by. */
export const furtherParts = ['clasp', 'chain', 'feet', 'rivet', 'screw', 'logo', 'label', 'pocket', 'card'] as const;

/** Every part that needs no words of its own in a file. */
export const knownParts = [...partSchema.options, ...furtherParts] as const;
export type KnownPart = (typeof knownParts)[number];

export const isKnownPart = (part: string): part is KnownPart => (knownParts as readonly string[]).includes(part);
