import type { Derivation, Informs, Known, Says } from '../evidence';
import type { Kit } from './kit';

/** What a fact is called that may be wrong. */
export type FactName = 'code' | 'mark' | 'model' | 'material' | 'origin' | 'purchase' | 'year' | 'date';

/** What evidence says, in one language: statements and what follows from them together, all without a full stop. */
export interface EvidenceWords {
  /** One statement, with its dates and places in words. */
  stated: {
    [K in Says['kind']]: (says: Extract<Says, { kind: K }>, dates: string, places: string, kit: Kit) => string;
  };
  /** The statement inside another sentence. */
  clause: (statement: string) => string;
  anyDateAndPlace: string;
  facts: Record<FactName, string>;
  /** One date or place does not fit all of these. */
  conflict: (over: 'date' | 'place', hard: boolean, clauses: readonly string[]) => string;
  /** A code read by its shape alone stands apart from the rest of these. */
  apartByShape: (clauses: readonly string[]) => string;
  /** What of this was read, seen and said agrees on the stretch; each is quoted in short. */
  agreeing: (told: Record<Known, readonly string[]>, stretch: string, kit: Kit) => string;
  /** Why an agreement of two facts tells something, a sentence each. */
  informs: Record<Informs, string>;
  /** Whether it is counted where several facts agree on a date or a place. */
  narrows: { counts: string; little: string };
  /** If this one is wrong, the rest agrees on the stretch. */
  explanation: (fact: string, clause: string, rest: 'all' | 'hard', stretch: string) => string;
  weight: {
    /** It rests on what page and photos show, not on dates or places. */
    bare: string;
    hard: string;
    soft: (unverified: boolean, clause: string) => string;
    counted: (facts: number, again: boolean) => string;
    agree: (facts: number) => string;
    against: (facts: number, clause: string) => string;
    source: Record<Derivation['source'], string>;
  };
}
