import type { Ask, Finding, FindingKind } from '../check/types';
import type { Claim } from '../claim/types';
import { stillOpen } from './answered';
import type { Question } from './types';

/** What an answer is worth by the kind of finding that it settles: any contradiction outweighs all doubts and gaps. */
const worth: Record<FindingKind, number> = { contradiction: 10_000, doubt: 100, gap: 1, agreement: 0 };

interface Topic {
  topic: string;
  wants: Question['wants'];
  asks: Ask[];
  settles: Map<string, FindingKind>;
}

/**
 * The questions that the findings raise: one for each topic, in the order in which the first ones settle the most.
 * What the seller has told already is not asked. A finding counts for the first question that settles it;
 * contradictions come before doubts before gaps. Pure.
 */
export function askQuestions(findings: Finding[], claims: readonly Claim[] = []): Question[] {
  const open = topicsOf(findings, claims);
  const settled = new Set<string>();
  const questions: Question[] = [];
  while (open.length > 0) {
    const gains = open.map((topic) => gainOf(topic, settled));
    const best = gains.indexOf(Math.max(...gains));
    const [topic] = open.splice(best, 1) as [Topic];
    const settles = [...topic.settles.keys()];
    for (const id of settles) settled.add(id);
    questions.push({ id: topic.topic, wants: topic.wants, asks: topic.asks, settles });
  }
  return questions;
}

function topicsOf(findings: Finding[], claims: readonly Claim[]): Topic[] {
  const topics = new Map<string, Topic>();
  for (const finding of findings) {
    if (finding.kind === 'agreement') continue;
    for (const asked of finding.asks) {
      const ask = stillOpen(asked, claims);
      const topic: Topic = topics.get(ask.topic) ?? {
        topic: ask.topic,
        wants: ask.wants,
        asks: [],
        settles: new Map(),
      };
      topics.set(ask.topic, topic);
      topic.settles.set(finding.id, finding.kind);
      if (!topic.asks.some((one) => isSame(one, ask))) topic.asks.push(ask);
      if (ask.wants === 'photo') topic.wants = 'photo';
    }
  }
  return [...topics.values()];
}

const isSame = (a: Ask, b: Ask) => a.ask === b.ask && JSON.stringify(a.data) === JSON.stringify(b.data);

const gainOf = (topic: Topic, settled: Set<string>): number =>
  [...topic.settles].reduce((sum, [id, kind]) => sum + (settled.has(id) ? 0 : worth[kind]), 0);
