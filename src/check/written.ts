import * as z from 'zod';
import type { Source } from '../source';
import type { Handed, Needs } from './facts';
import { type Check, defineCheck, type Family } from './frame';
import { because } from './reasons';
import type { Ask, FindingKind, Reason } from './types';

/** The sentences of a check that still carries its own, in English alone. */
export interface Wording {
  /** Shown when the check holds. */
  title: string;
  /** Shown when it speaks against the piece or misses something. */
  failureTitle: string;
  /** The rule in one sentence. */
  basis: string;
  /** How the same would come about with nothing wrong. */
  innocent: string;
  /** What would settle it. */
  settles: string;
}

export const writtenSchema = z.strictObject({
  written: z.strictObject({
    /** One sentence that names the photo, the words and the dates. */
    statement: z.string(),
    basis: z.array(z.string()).min(1),
    innocent: z.string(),
    settles: z.string(),
  }),
});

export interface WrittenSpeech {
  kind: FindingKind;
  statement: string;
  key?: string;
  /** At least one sentence: a finding that rests on nothing is none. */
  basis?: [string, ...string[]];
  innocent?: string;
  settles?: string;
  source?: Source;
  evidence?: string[];
  photos?: string[];
  claims?: string[];
  asks?: Ask[];
}
type WrittenAnswer = WrittenSpeech[] | { cannotTell: string | Reason } | { notApplicable: string | Reason };

const reasonOf = (why: string | Reason): Reason =>
  typeof why === 'string' ? because('as-written', { words: why }) : why;

/** A check whose findings carry their sentences: each becomes one with `defineCheck` and words in each language. */
export function defineWritten<const N extends Needs>(
  definition: Wording & {
    id: string;
    family: Family;
    kinds: readonly FindingKind[];
    source: Source;
    needs: N;
    run: (facts: Handed<N>) => WrittenAnswer;
  },
): Check {
  const { title, failureTitle, basis, innocent, settles, run, ...head } = definition;
  const check = defineCheck<string, N, typeof writtenSchema>({
    ...head,
    data: writtenSchema,
    run(facts) {
      const answer = run(facts);
      if ('cannotTell' in answer) return { cannotTell: reasonOf(answer.cannotTell) };
      if ('notApplicable' in answer) return { notApplicable: reasonOf(answer.notApplicable) };
      return answer.map(({ statement, basis: own, innocent: why, settles: how, ...speech }) => ({
        ...speech,
        data: {
          written: { statement, basis: own ?? [basis], innocent: why ?? innocent, settles: how ?? settles },
        },
      }));
    },
  });
  return { ...check, wording: { title, failureTitle, basis, innocent, settles } };
}
