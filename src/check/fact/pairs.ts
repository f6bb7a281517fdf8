import { pairsOf } from '../../evidence';
import { type PairOf, pairLookup } from '../pairs';
import { defineFact } from './define';

/** How every two statements stand to each other: compared once, however many checks ask. */
export const pairs = defineFact<PairOf>(({ evidence }) => ({ is: pairLookup(pairsOf(evidence)) }));
