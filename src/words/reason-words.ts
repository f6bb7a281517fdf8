import type { ReasonData } from '../check';
import type { Kit } from './kit';
import type { SayWithin } from './problem-words';

/** Why checks have nothing to say, in one language; no full stop, it may end a line. */
export type ReasonWords = { [R in keyof ReasonData]: (data: ReasonData[R], kit: Kit, say: SayWithin) => string };
