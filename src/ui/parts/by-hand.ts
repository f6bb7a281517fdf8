import type { NewCorrection } from '../../case';

/** What a screen lets the buyer do to a case; left out where it only shows one. */
export interface ByHand {
  type(code: string): void;
  correct(made: NewCorrection): void;
  undo(id: string): void;
}
