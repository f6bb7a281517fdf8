// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import { type Case, weighedFindings } from '../../../src/case';
import type { Finding } from '../../../src/check/types';
import { reason } from '../../../src/evidence';
import { yearSpan } from '../../../src/span';
import { DossierFindings } from '../../../src/ui/dossier/DossierFindings';
import { Against, WhatFits } from '../../../src/ui/parts/Findings';
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

test('what fits says why it could have come out otherwise, and whether it counts, in the panel and in the dossier', () => {
  const both = [
    claimed('a', { spans: [yearSpan(1994)] }),
    piece('b', { from: { kind: 'reading', id: 'b' }, spans: [yearSpan(1994)] }),
  ];
  const fits: Finding = { ...finding('fits', ['a', 'b']), kind: 'agreement' };
  const outcomes: Case['outcomes'] = [{ outcome: 'speaks', check: 'fits', findings: [fits] }];
  const fitting: Case = { ...kase, evidence: both, reasoning: reason(both), outcomes };
  const said =
    'The period has a beginning and an end, and the date could have lain outside it. It counts where several facts agree.';
  const room = document.createElement('div');
  render(<WhatFits kase={fitting} />, room);
  expect(room.querySelector('.finding')?.textContent).toContain(`Why it tells something${said}`);
  const findings = weighedFindings(fitting).map((one) => ({ ...one, number: 1 }));
  render(<DossierFindings groups={[{ kind: 'agreement', findings }]} />, room);
  expect(room.querySelector('.finding')?.textContent).toContain(`Why it tells something${said}`);
  // A case whose reasoning holds no such agreement has no such line.
  render(<WhatFits kase={{ ...fitting, reasoning: reason(evidence) }} />, room);
  expect(room.textContent).not.toContain('Why it tells');
});
