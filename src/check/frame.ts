import type * as z from 'zod';
import { commonPractice, type MakerPart, type Source } from '../source';
import { type Facts, type Handed, type HandedAsRead, handOver, type Needs, tellFacts } from './facts';
import type { Ask, Finding, FindingKind, Outcome, Reason, SentenceData } from './types';

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

/** What a check says in one case. Its sentences are made of `data` by the words of a language. */
export interface Speech<D = SentenceData> {
  kind: FindingKind;
  data: D;
  /** Tells apart several findings of one check; stable from one look at a listing to the next. */
  key?: string;
  source?: Source;
  evidence?: string[];
  photos?: string[];
  claims?: string[];
  asks?: Ask[];
}
export type Answer<D = SentenceData> = Speech<D>[] | { cannotTell: Reason } | { notApplicable: Reason };

interface Head {
  /** File name without ending; also the name of its test. */
  id: string;
  family: Family;
  /** Kinds of findings that it may give. */
  kinds: readonly FindingKind[];
  source: Source;
  /** The numbers at which its answer turns, by name: its test tries each at, just under and just over it. */
  limits?: Readonly<Record<string, number>>;
}

export interface Check extends Head {
  /** What its sentences are made with. */
  data: z.ZodType;
  needs: Needs;
  judge: (facts: Facts) => Outcome;
}

/** A check by its name and data, which the words of each language are typed by. */
export interface CheckOf<Id extends string, D extends z.ZodType> extends Check {
  id: Id;
  data: D;
}

/**
 * Makes a check of its head, its needs and `run`. `run` is handed the facts that `needs` names and answers with what it
 * has to say (nothing: silent), or why it cannot tell or does not apply.
 * A finding of a kind that the check did not announce is a bug and throws.
 */
export function defineCheck<const Id extends string, const N extends Needs, D extends z.ZodType>(
  definition: Head & {
    id: Id;
    data: D;
    needs: N;
    /** Why it does not apply to this case, if so: asked before any computed fact is. */
    unless?: (facts: HandedAsRead<N>) => Reason | null;
    run: (facts: Handed<N>) => Answer<z.infer<D>>;
  },
): CheckOf<Id, D> {
  const { run, unless, ...head } = definition;
  const answerTo = (facts: Facts): Answer => {
    const over = handOver(head.needs, facts);
    if (!('handed' in over)) return over;
    const handed = over.handed as HandedAsRead<N>;
    const why = unless?.(handed) ?? null;
    if (why !== null) return { notApplicable: why };
    const told = tellFacts(head.needs, facts);
    return 'is' in told ? (run({ ...handed, ...told.is } as Handed<N>) as Answer) : told;
  };
  return {
    ...head,
    judge(facts) {
      const answer = answerTo(facts);
      if ('cannotTell' in answer) return { outcome: 'cannot-tell', check: head.id, why: answer.cannotTell };
      if ('notApplicable' in answer) return { outcome: 'not-applicable', check: head.id, why: answer.notApplicable };
      if (answer.length === 0) return { outcome: 'silent', check: head.id };
      const findings = withoutRepeats(answer.map((speech) => toFinding(head, speech as Speech, facts.maker)));
      return { outcome: 'speaks', check: head.id, findings };
    },
  };
}

/** The same words, or the same key, once: a title often repeats what the description says. Claims are joined. */
function withoutRepeats(findings: Finding[]): Finding[] {
  const kept: { finding: Finding; said: string }[] = [];
  for (const finding of findings) {
    const said = JSON.stringify(finding.data);
    const same = kept.find((one) => one.finding.id === finding.id || one.said === said)?.finding;
    if (!same) kept.push({ finding, said });
    else same.claims = [...new Set([...same.claims, ...finding.claims])];
  }
  return kept.map(({ finding }) => finding);
}

function toFinding(head: Head, speech: Speech, maker: Facts['maker']): Finding {
  if (!head.kinds.includes(speech.kind)) throw new Error(`${head.id} does not announce a ${speech.kind}`);
  return {
    id: speech.key === undefined ? head.id : `${head.id}:${speech.key}`,
    check: head.id,
    kind: speech.kind,
    data: speech.data,
    source: asInvented(speech.source ?? head.source, maker),
    evidence: speech.evidence ?? [],
    photos: speech.photos ?? [],
    claims: speech.claims ?? [],
    asks: speech.kind === 'agreement' ? [] : (speech.asks ?? []),
  };
}

/** What rests on an invented maker file says so, also where the file names a source of its own. */
const asInvented = (source: Source, maker: Facts['maker']): Source =>
  source.kind === 'maker-file' && maker?.invented ? { ...source, invented: true } : source;

export const practice = commonPractice;
/** The maker file as the source of a rule, with the sources that the file itself gives for what was used of it. */
export const fromMakerFile = (
  maker: string,
  part: MakerPart | null,
  itsSources: string | readonly string[] = [],
): Source => ({
  kind: 'maker-file',
  maker,
  invented: false,
  part,
  sources: typeof itsSources === 'string' ? [itsSources] : [...itsSources],
});
/** Says in the metadata that the rule itself stands in whichever maker file is used. */
export const makerFileSource: Source = { kind: 'maker-file', maker: null, invented: false, part: null, sources: [] };
