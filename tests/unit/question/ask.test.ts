import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Ask, Finding, FindingKind } from '../../../src/check/types';
import { askQuestions } from '../../../src/question';

const asking = (topic: string): Ask => ({
  ask: topic,
  topic,
  wants: topic.startsWith('photo') ? 'photo' : 'fact',
  data: {},
});

const finding = (id: string, kind: FindingKind, ...topics: string[]): Finding => ({
  id,
  check: id,
  kind,
  data: {},
  source: { kind: 'practice', text: 'common practice, no source' },
  evidence: [],
  photos: [],
  claims: [],
  asks: topics.map(asking),
});

describe('askQuestions', () => {
  it('asks nothing without findings or for agreements', () => {
    expect(askQuestions([])).toEqual([]);
    expect(askQuestions([finding('a', 'agreement', 'date')])).toEqual([]);
  });

  it('merges what findings ask by topic and keeps each wording once', () => {
    const findings = [finding('a', 'gap', 'photo-stamp'), finding('b', 'doubt', 'photo-stamp')];
    expect(askQuestions(findings)).toEqual([
      { id: 'photo-stamp', wants: 'photo', asks: [asking('photo-stamp')], settles: ['a', 'b'] },
    ]);
  });

  it('puts a contradiction before many doubts, and a doubt before many gaps', () => {
    const findings = [
      ...['g1', 'g2', 'g3'].map((id) => finding(id, 'gap', 'gaps')),
      ...['d1', 'd2'].map((id) => finding(id, 'doubt', 'doubts')),
      finding('c1', 'contradiction', 'contradiction'),
    ];
    expect(askQuestions(findings).map(({ id }) => id)).toEqual(['contradiction', 'doubts', 'gaps']);
  });

  it('counts a finding once: what the first question settles adds nothing to a later one', () => {
    const findings = [
      finding('a', 'doubt', 'first', 'repeat'),
      finding('b', 'doubt', 'first', 'repeat'),
      finding('c', 'doubt', 'first'),
      finding('d', 'gap', 'other'),
    ];
    expect(askQuestions(findings).map(({ id }) => id)).toEqual(['first', 'other', 'repeat']);
  });

  it('settles every finding that asks, with the first questions settling the most', () => {
    const kinds = fc.constantFrom<FindingKind>('contradiction', 'doubt', 'gap');
    const topics = fc.uniqueArray(fc.constantFrom('photo-a', 'b', 'c', 'd'), { minLength: 1 });
    const many = fc.array(fc.tuple(kinds, topics), { maxLength: 12 });
    fc.assert(
      fc.property(many, (rows) => {
        const findings = rows.map(([kind, asked], index) => finding(`f${index}`, kind, ...asked));
        const questions = askQuestions(findings);
        expect(new Set(questions.flatMap(({ settles }) => settles))).toEqual(new Set(findings.map(({ id }) => id)));
        expect(new Set(questions.map(({ id }) => id)).size).toBe(questions.length);
        const hardest = findings.some(({ kind }) => kind === 'contradiction');
        const first = questions[0]?.settles.map((id) => findings.find((one) => one.id === id)?.kind);
        if (hardest) expect(first).toContain('contradiction');
      }),
    );
  });
});
