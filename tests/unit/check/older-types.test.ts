import { expect, test } from 'vitest';
import { findingSchema, outcomeSchema } from '../../../src/check/types';
import { questionSchema } from '../../../src/question/types';
import { sayFinding, sayQuestion, sayReason } from '../../../src/words';

const older = {
  id: 'made-date:c1',
  check: 'made-date',
  kind: 'doubt',
  statement: 'The stamp reads KV0915.',
  basis: ['a rule'],
  innocent: 'A slip.',
  settles: 'A photo.',
  source: { kind: 'practice', text: 'common practice, no source' },
  evidence: [],
  photos: ['p1'],
  claims: ['c1'],
  asks: [{ topic: 'made-date', wants: 'fact', words: 'When?' }],
};

test('a finding, a reason and a question of before are read whole and shown as they were written', () => {
  const finding = findingSchema.parse(older);
  expect(sayFinding(finding, 'de')).toEqual({
    statement: 'The stamp reads KV0915.',
    basis: ['a rule'],
    innocent: 'A slip.',
    settles: 'A photo.',
  });
  expect(finding.asks).toEqual([{ ask: 'as-written', topic: 'made-date', wants: 'fact', data: { words: 'When?' } }]);
  expect(findingSchema.parse(finding)).toEqual(finding);
  const outcome = outcomeSchema.parse({ outcome: 'cannot-tell', check: 'x-y', why: 'no photo was read' });
  expect(outcome.outcome === 'cannot-tell' && sayReason(outcome.why, 'en')).toBe('no photo was read');
  const question = questionSchema.parse({ id: 'made-date', wants: 'fact', words: 'When?', settles: [] });
  expect(sayQuestion(question, 'en')).toBe('When?');
});

test('what is neither of before nor of now is refused', () => {
  expect(findingSchema.safeParse({ ...older, statement: 3 }).success).toBe(false);
  expect(findingSchema.safeParse(null).success).toBe(false);
});
