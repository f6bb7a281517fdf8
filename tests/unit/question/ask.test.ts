import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Ask, Finding, FindingKind } from '../../../src/check/types';
import { askQuestions } from '../../../src/question';
import { questionSchema } from '../../../src/question/types';

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

  it('weighs a doubt as a hundred gaps and a contradiction as a hundred doubts; of equals the first comes first', () => {
    const many = (count: number, kind: FindingKind) =>
      Array.from({ length: count }, (_, index) => finding(`${kind}-${index}`, kind, 'many'));
    const order = (count: number, kind: FindingKind, one: FindingKind) =>
      askQuestions([...many(count, kind), finding('one', one, 'one')]).map(({ id }) => id);
    expect(order(99, 'gap', 'doubt')).toEqual(['one', 'many']);
    expect(order(100, 'gap', 'doubt')).toEqual(['many', 'one']);
    expect(order(99, 'doubt', 'contradiction')).toEqual(['one', 'many']);
    expect(order(100, 'doubt', 'contradiction')).toEqual(['many', 'one']);
  });

  it('wants a photo as soon as one of a topic’s asks does, in any order', () => {
    const fact: Ask = { ask: 'told', topic: 'size', wants: 'fact', data: {} };
    const photo: Ask = { ask: 'shown', topic: 'size', wants: 'photo', data: {} };
    const wants = (...asks: Ask[]) =>
      askQuestions(asks.map((ask, index) => ({ ...finding(`f${index}`, 'gap'), asks: [ask] }))).map((one) => one.wants);
    expect(wants(fact, photo)).toEqual(['photo']);
    expect(wants(photo, fact)).toEqual(['photo']);
    expect(wants(fact, fact)).toEqual(['fact']);
  });

  it('keeps two asks of one topic apart that differ in what they ask or in what it is made with', () => {
    const ask = (name: string, part: string): Ask => ({ ask: name, topic: 'parts', wants: 'photo', data: { part } });
    const asks = [ask('one', 'base'), ask('one', 'lining'), ask('other', 'base'), ask('one', 'base')];
    const findings = asks.map((one, index) => ({ ...finding(`f${index}`, 'gap'), asks: [one] }));
    expect(askQuestions(findings)[0]?.asks).toEqual(asks.slice(0, 3));
  });

  it('are kept as they are asked: one ask or several, for a photo or a fact, never none', () => {
    const question = { id: 'parts', wants: 'photo', asks: [asking('photo-a'), asking('b')], settles: ['a'] };
    expect(questionSchema.parse(question)).toEqual(question);
    expect(questionSchema.parse({ ...question, wants: 'fact', asks: [asking('b')] }).wants).toBe('fact');
    for (const wrong of [{ asks: [] }, { wants: '' }, { wants: 'money' }])
      expect(questionSchema.safeParse({ ...question, ...wrong }).success).toBe(false);
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
