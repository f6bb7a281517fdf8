import { commonPractice, type Source } from '../source';
import { type Facts, type Handed, handOver, type Needs } from './facts';
import type { Ask, Finding, FindingKind, Outcome } from './types';

export const families = [
  'code',
  'time',
  'place',
  'construction',
  'materials',
  'size',
  'price',
  'text',
  'photos',
  'seller',
  'changes',
] as const;
export type Family = (typeof families)[number];

/** What a check says in one case; what it leaves out is taken from the check's own wording. */
export interface Speech {
  kind: FindingKind;
  /** One sentence that names the photo, the words and the dates. */
  statement: string;
  /** Tells apart several findings of one check; stable from one look at a listing to the next. */
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
export type Answer = Speech[] | { cannotTell: string } | { notApplicable: string };

interface Wording {
  /** File name without ending; also the name of its test. */
  id: string;
  family: Family;
  /** Shown when the check holds. */
  title: string;
  /** Shown when it speaks against the piece or misses something. */
  failureTitle: string;
  /** Kinds of findings that it may give. */
  kinds: readonly FindingKind[];
  /** The rule in one sentence. */
  basis: string;
  /** How the same would come about with nothing wrong. */
  innocent: string;
  /** What would settle it. */
  settles: string;
  source: Source;
}

export interface Check extends Wording {
  needs: Needs;
  judge: (facts: Facts) => Outcome;
}

/**
 * Makes a check of its wording, its needs and `run`. `run` is handed the facts that `needs` names and answers
 * with what it has to say (nothing: silent), or why it cannot tell or does not apply.
 * A finding of a kind that the check did not announce is a bug and throws.
 */
export function defineCheck<const N extends Needs>(
  definition: Wording & { needs: N; run: (facts: Handed<N>) => Answer },
): Check {
  const { run, ...wording } = definition;
  return {
    ...wording,
    judge(facts) {
      const over = handOver(wording.needs, facts);
      const answer = 'handed' in over ? run(over.handed as Handed<N>) : over;
      if ('cannotTell' in answer) return { outcome: 'cannot-tell', check: wording.id, why: answer.cannotTell };
      if ('notApplicable' in answer) return { outcome: 'not-applicable', check: wording.id, why: answer.notApplicable };
      if (answer.length === 0) return { outcome: 'silent', check: wording.id };
      const findings = withoutRepeats(answer.map((speech) => toFinding(wording, speech)));
      return { outcome: 'speaks', check: wording.id, findings };
    },
  };
}

/** The same sentence, or the same key, once: a title often repeats what the description says. Claims are joined. */
function withoutRepeats(findings: Finding[]): Finding[] {
  const kept: Finding[] = [];
  for (const finding of findings) {
    const same = kept.find(({ id, statement }) => id === finding.id || statement === finding.statement);
    if (!same) kept.push(finding);
    else same.claims = [...new Set([...same.claims, ...finding.claims])];
  }
  return kept;
}

function toFinding(wording: Wording, speech: Speech): Finding {
  if (!wording.kinds.includes(speech.kind)) throw new Error(`${wording.id} does not announce a ${speech.kind}`);
  return {
    id: speech.key === undefined ? wording.id : `${wording.id}:${speech.key}`,
    check: wording.id,
    kind: speech.kind,
    statement: speech.statement,
    basis: speech.basis ?? [wording.basis],
    innocent: speech.innocent ?? wording.innocent,
    settles: speech.settles ?? wording.settles,
    source: speech.source ?? wording.source,
    evidence: speech.evidence ?? [],
    photos: speech.photos ?? [],
    claims: speech.claims ?? [],
    asks: speech.kind === 'agreement' ? [] : (speech.asks ?? []),
  };
}

export const practice = commonPractice;
/** The maker file as the source of a rule, with the source that the file itself gives for what was used of it. */
export const fromMakerFile = (maker: string, what: string, itsSource?: string): Source => ({
  kind: 'maker-file',
  text: `maker file of ${maker}: ${what}${itsSource ? ` (source: ${itsSource})` : ''}`,
});
/** Says in the metadata that the rule itself stands in whichever maker file is used. */
export const makerFileSource: Source = { kind: 'maker-file', text: "the maker file's own statement and its sources" };
