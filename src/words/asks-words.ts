import type { AskData } from '../check';
import type { Kit } from './kit';

/** One language's questions to the seller: polite, and accusing no one. */
export type AskWords = { [A in keyof AskData]: (data: AskData[A], kit: Kit) => string };
