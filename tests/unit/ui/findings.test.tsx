// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import type { Case } from '../../../src/case';
import type { Finding } from '../../../src/check/types';
import { reason } from '../../../src/evidence';
import { yearSpan } from '../../../src/span';
import { Against } from '../../../src/ui/parts/Findings';
import { listingOf } from '../case/sample-listing';
import { claimed, piece } from '../evidence/samples';

const finding = (id: string, evidence: string[]): Finding => ({
  id,
  check: id,
  kind: 'doubt',
  data: {
    written: { statement: `Statement of ${id}.`, basis: ['a rule'], innocent: 'an innocent way', settles: 'a photo' },
  },
  source: { kind: 'practice', text: 'common practice, no source' },
  evidence,
  photos: [],
  claims: [],
  asks: [],
});

const evidence = [
  claimed('a', { spans: [yearSpan(1984)] }),
  piece('b', { spans: [yearSpan(1994)] }),
  piece('c', { spans: [yearSpan(1994)], strength: 'soft' }),
];
const kase: Case = {
  format: 1,
  listing: listingOf('Ondrasse Carryall 30', 'A bag.'),
  photos: [],
  corrections: [],
  maker: null,
  claims: [],
  decodings: [],
  marks: [],
  evidence,
  reasoning: reason(evidence),
  outcomes: [finding('bare', []), finding('soft', ['a', 'c']), finding('hard', ['a', 'b'])].map((one) => ({
    outcome: 'speaks',
    check: one.check,
    findings: [one],
  })),
  questions: [],
  summary: { contradictions: 0, doubts: 3, gaps: 0, agreements: 0 },
  skipped: [],
};

function show(): HTMLElement {
  const room = document.createElement('div');
  render(<Against kase={kase} />, room);
  return room;
}

test('findings of one kind stand heaviest first, whatever the order of the checks', () => {
  const order = [...show().querySelectorAll('details.finding')].map((card) => card.getAttribute('data-check'));
  expect(order).toEqual(['hard', 'soft', 'bare']);
});

test('the weight of a finding is explained on request, and only where it rests on evidence', () => {
  const [hard, , bare] = [...show().querySelectorAll('details.finding')];
  expect(hard?.textContent).toContain('It rests on hard facts only: no habit is needed.');
  expect(hard?.textContent).toContain('1 other fact stands against the same one: the listing says “a” (1984).');
  expect(bare?.textContent).not.toContain('How sure is this?');
});
