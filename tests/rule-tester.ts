import { describe, expect, it } from 'vitest';
import type { Check, Facts } from '../src/check';
import type { Finding, FindingKind, SentenceData } from '../src/check/types';
import type { Source } from '../src/source';
import { saySource } from '../src/words';
import { inEnglish } from './said';

/** A whole finding as a rule is to give it; what is left out is empty. */
export interface Told {
  kind: FindingKind;
  data: SentenceData;
  /** What its English statement is, word for word. */
  says: string;
  basis: string[];
  /** Which questions it asks; one with data as `[ask, data]`. */
  asks?: (string | [string, SentenceData])[];
  evidence?: string[];
  photos?: string[];
  claims?: string[];
  source?: string;
}

/** The number at which a rule's answer turns, and what it answers just under it, at it and just over it. */
export interface Limit {
  is: number;
  /** The smallest step that matters. */
  step: number;
  given: (value: number) => Facts;
  /** Outcomes, or the kind of the finding. */
  under: Answer;
  at: Answer;
  over: Answer;
}
type Answer = FindingKind | 'silent' | 'cannot-tell' | 'not-applicable';

interface Cases {
  speaks: Record<string, [given: Facts, told: Told | Told[]]>;
  /** Empty only for a rule that always has something to say. */
  silent: Record<string, Facts>;
  /** Where the rule cannot tell or does not apply, and the reason that it gives. */
  declines?: Record<string, [given: Facts, outcome: 'cannot-tell' | 'not-applicable', reason: string]>;
  /** One for each limit that the rule declares, by the same name. */
  limits?: Record<string, Limit>;
}

/** Holds a rule to its contract: what it says in full, where it is silent, and that each of its limits is where it says. */
export function testRule(check: Check, { speaks, silent, declines = {}, limits = {} }: Cases): void {
  describe(check.id, () => {
    describe('speaks', () => {
      it.each(Object.entries(speaks))('%s', (_name, [given, told]) => {
        const expected = (Array.isArray(told) ? told : [told]).map((one) => complete(one, check));
        expect(findingsOf(check, given).map(shown)).toEqual(expected);
      });
    });
    if (Object.keys(silent).length > 0)
      describe('stays silent', () => {
        it.each(Object.entries(silent))('%s', (_name, given) => expect(answerOf(check, given)).toBe('silent'));
      });
    if (Object.keys(declines).length > 0)
      describe('says why it says nothing', () => {
        it.each(Object.entries(declines))('%s', (_name, [given, outcome, reason]) => {
          const answer = check.judge(given);
          const why = 'why' in answer && typeof answer.why !== 'string' ? answer.why.reason : null;
          expect([answer.outcome, why]).toEqual([outcome, reason]);
        });
      });
    it('declares its limits, each of them tried here', () => {
      expect(check.limits ?? {}).toEqual(
        Object.fromEntries(Object.entries(limits).map(([name, { is }]) => [name, is])),
      );
    });
    it.each(Object.entries(limits))('turns at its limit: %s', (_name, { is, step, given, under, at, over }) => {
      const answers = [is - step, is, is + step].map((value) => answerOf(check, given(value)));
      expect(answers).toEqual([under, at, over]);
    });
  });
}

function findingsOf(check: Check, given: Facts): Finding[] {
  const outcome = check.judge(given);
  if (outcome.outcome !== 'speaks') throw new Error(`${check.id} does not speak: ${JSON.stringify(outcome)}`);
  return outcome.findings;
}

/** The outcome; of one that speaks the kind of its first finding. */
function answerOf(check: Check, given: Facts): string {
  const outcome = check.judge(given);
  return outcome.outcome === 'speaks' ? (outcome.findings[0]?.kind as string) : outcome.outcome;
}

function shown(finding: Finding): Required<Told> {
  const { statement, basis } = inEnglish(finding);
  const asks = finding.asks.map(({ ask, data }): string | [string, SentenceData] =>
    Object.keys(data).length === 0 ? ask : [ask, data],
  );
  const { kind, data, evidence, photos, claims, source } = finding;
  return { kind, data, says: statement, basis, asks, evidence, photos, claims, source: sourceSaid(source) };
}

/** A document by its name, all others as a screen says them. */
const sourceSaid = (source: Source): string => ('text' in source ? source.text : saySource(source, 'en'));

const complete = (told: Told, { source }: Check): Required<Told> => ({
  asks: [],
  evidence: [],
  photos: [],
  claims: [],
  source: sourceSaid(source),
  ...told,
});
