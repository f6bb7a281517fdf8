import { expect, test } from 'vitest';
import { reasoningSchema } from '../../../src/evidence';
import { evidenceSchema } from '../../../src/evidence/types';
import { yearSpan } from '../../../src/span';
import { sayStated } from '../../../src/words';
import { piece } from './samples';

const { says: _, ...rest } = piece('a');
const older = { ...rest, statement: 'The listing says “made in 1994”' };

test('evidence of before is read whole and shown as it was written', () => {
  const read = evidenceSchema.parse(older);
  expect(sayStated(read, 'de')).toBe('The listing says “made in 1994”');
  expect(evidenceSchema.parse(read)).toEqual(read);
  expect(evidenceSchema.safeParse({ ...older, statement: 3 }).success).toBe(false);
  expect(evidenceSchema.safeParse(null).success).toBe(false);
});

test('a reasoning of before loses its sentences and nothing else', () => {
  const stretch = { spans: [yearSpan(1994)], places: [] };
  const nobody = { read: [], seen: [], said: [] };
  const told = { date: nobody, place: nobody };
  const now = {
    agrees: false,
    agreeing: [{ evidence: ['a'], facts: 1, told, ...stretch }],
    conflicts: [{ evidence: ['a', 'b'], over: 'date', strength: 'soft', rule: null }],
    conflictsComplete: true,
    explanations: [{ basis: 'a', evidence: ['a'], rest: 'all', ...stretch }],
  };
  const said = <T extends object>(all: T[]) => all.map((one) => ({ ...one, statement: 'A sentence' }));
  const before = {
    ...now,
    agreeing: said(now.agreeing.map(({ told: _told, ...one }) => one)),
    conflicts: said(now.conflicts.map(({ rule: _rule, ...one }) => one)),
    explanations: said(now.explanations),
  };
  expect(reasoningSchema.parse(before)).toEqual(now);
  expect(reasoningSchema.parse(now)).toEqual(now);
  expect(reasoningSchema.safeParse({ ...now, conflicts: [3] }).success).toBe(false);
});
