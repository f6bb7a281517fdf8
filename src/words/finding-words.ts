import type { CheckData, FindingKind } from '../check';
import type { Kit } from './kit';

/** The sentences of one check in one language. */
export interface CheckWords<D> {
  /** Shown when the check holds. */
  title: string;
  /** Shown when it speaks against the piece or misses something. */
  failureTitle: string;
  /** The rule in one sentence. */
  rule: string;
  /** One sentence: what stands against what, or what is missing. */
  statement: (data: D, kit: Kit, kind: FindingKind) => string;
  /** What the finding rests on, where the rule alone does not say it. */
  basis?: (data: D, kit: Kit, kind: FindingKind) => readonly [string, ...string[]];
  /** How the same would come about with nothing wrong; `explained` says it with what the finding knows. */
  innocent: string;
  explained?: (data: D, kit: Kit) => string | null;
  /** What would clear it up; `settled` says it where the finding asks for something else. */
  settles: string;
  settled?: (data: D, kit: Kit) => string | null;
}

/** Every check's sentences: one language of findings. */
export type FindingCatalogue = { [Id in keyof CheckData]: CheckWords<CheckData[Id]> };

/** The sentences of some checks, typed by what each is made with. */
export type WordsFor<Id extends keyof CheckData> = Pick<FindingCatalogue, Id>;
