// @vitest-environment jsdom
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { buildCase, type Case } from '../../../src/case';
import { DossierDocument } from '../../../src/ui/dossier/DossierDocument';
import { CaseView } from '../../../src/ui/parts/CaseView';
import { CaseRow } from '../../../src/ui/watchlist/CaseRow';
import { dossierOf, type ReadableRow, rowOf } from '../../../src/watch';
import { inputOf, truthRows } from '../../reference/cases/truth-case';
import { recordOf, sampleRecord } from '../watch/sample-case';

const room = document.createElement('div');
beforeEach(() => document.body.append(room));
afterEach(() => {
  render(null, room);
  room.remove();
});

const built = (file: 'sound' | 'misdescribed', at = 0) => {
  const rows = truthRows(file).filter(
    ({ stamp, contradiction }) => stamp && (file === 'sound' || contradiction.length > 0),
  );
  const row = rows[at];
  if (!row) throw new Error('no such case');
  return buildCase(inputOf(row));
};
const sound = built('sound');
const wrong = built('misdescribed');
const screens: [name: string, show: (kase: Case) => void][] = [
  ['the panel', (kase) => render(<CaseView kase={kase} pictureOfLine={() => null} />, room)],
  [
    'the dossier',
    (kase) =>
      render(<DossierDocument dossier={dossierOf({ record: sampleRecord(), case: kase, pictures: [] })} />, room),
  ],
];

describe.each(screens)('the head in %s', (_name, show) => {
  it.each([
    ['a sound piece', sound],
    ['a misdescribed one', wrong],
  ])('says three lines of %s in words, and counts nothing', async (_piece, kase) => {
    await act(() => show(kase));
    expect([...room.querySelectorAll('.head-lines dt')].map((line) => line.textContent)).toEqual([
      'Speaks against',
      'Still open',
      'Not looked at',
    ]);
    expect(room.textContent).not.toMatch(/\d+ (?:contradiction|doubt|gap|agreement|check)s?\b|What fits \(|= \d/);
    expect(room.querySelector('.kind-agreement')).toBeNull();
  });

  it('never says nothing found without saying what was not looked at', async () => {
    await act(() => show(sound));
    const line = (name: string) => room.querySelector(`[data-line="${name}"] dd`)?.textContent ?? '';
    expect(line('against')).toBe('Nothing was found in what was looked at.');
    expect(line('not-looked-at')).toContain('Who made it: no photo can show that.');
  });
});

describe('a row of the watch list', () => {
  const show = async (kase: Case) => {
    const row = rowOf(await recordOf(kase)) as ReadableRow;
    const nothing = () => undefined;
    render(<CaseRow row={row} readFace={async () => null} onStatus={nothing} onRemove={nothing} />, room);
  };
  const foremost = () => room.querySelector('.case-foremost')?.textContent;

  it('says what speaks against the piece, else what is open, and counts nothing', async () => {
    await act(() => show(wrong));
    expect(foremost()).toMatch(/^Speaks against: \S+ .*\.$/);
    await act(() => show(sound));
    expect(foremost()).toMatch(/^(?:Still open|Not looked at): \S+ .*\.$/);
    expect(room.textContent).not.toMatch(/\d+ (?:contradiction|doubt|gap|agreement|check)s?\b/);
  });

  it('says a finding that lacks what its sentence needs by the title of its check', async () => {
    const outcomes = wrong.outcomes.map((one) =>
      one.outcome === 'speaks'
        ? { ...one, findings: one.findings.map((finding) => ({ ...finding, check: 'price-changed', data: {} })) }
        : one,
    );
    await act(() => show({ ...wrong, outcomes }));
    expect(room.querySelector('h2')?.textContent).toBe(wrong.listing.title[0]?.value);
    expect(foremost()).toMatch(/^Speaks against: The price has fallen steeply/);
  });

  it('says what was not looked at where nothing was found', async () => {
    await act(() => show({ ...sound, outcomes: [] }));
    expect(foremost()).toContain('Not looked at: ');
    expect(foremost()).toContain('Who made it: no photo can show that.');
  });
});

describe('the panel', () => {
  it('leads from a line of the head to the part that it sums up', async () => {
    await act(() => render(<CaseView kase={wrong} pictureOfLine={() => null} />, room));
    await act(() => room.querySelector<HTMLElement>('[data-line="against"] button')?.click());
    expect(document.activeElement?.textContent).toBe('What speaks against it');
    await act(() => render(<CaseView kase={sound} pictureOfLine={() => null} />, room));
    await act(() => room.querySelector<HTMLElement>('[data-line="not-looked-at"] button')?.click());
    expect(document.activeElement?.textContent).toBe('What was not looked at');
  });

  it('shows a check that failed as failed, in the open, beside all that the others say', async () => {
    const outcomes = wrong.outcomes.map((one) =>
      one.check === 'parts-shown'
        ? { outcome: 'failed' as const, check: one.check, why: 'sides is not iterable' }
        : one,
    );
    await act(() => render(<CaseView kase={{ ...wrong, outcomes }} pictureOfLine={() => null} />, room));
    const failed = room.querySelector('[data-failed="parts-shown"]');
    expect(failed?.textContent).toBe(
      '“There are as many photos as parts to be seen”: this check failed here, which says nothing of the listing. All others stand. (sides is not iterable)',
    );
    // The head names it in the open; its words stand one step behind.
    expect(room.querySelector('[data-line="not-looked-at"]')?.textContent).toContain(
      'A part of Tellstamp failed here, and what it looks at is not judged: “There are as many photos as parts to be seen”.',
    );
    expect(room.querySelectorAll('[data-kind="contradiction"]').length).toBeGreaterThan(0);
    await act(() =>
      render(
        <DossierDocument dossier={dossierOf({ record: sampleRecord(), case: { ...wrong, outcomes }, pictures: [] })} />,
        room,
      ),
    );
    expect(room.textContent).toContain('“There are as many photos as parts to be seen”: this check failed here');
  });
});
