// @vitest-environment jsdom
import { render } from 'preact';
import { expect, test } from 'vitest';
import { type Dating, reason } from '../../../src/evidence';
import { yearSpan, yearsSpan } from '../../../src/span';
import { TimeAxis } from '../../../src/ui/TimeAxis';
import { claimed, coded, marked, piece } from '../evidence/samples';

function show(evidence: Dating[]): HTMLElement {
  const room = document.createElement('div');
  render(<TimeAxis evidence={evidence} reasoning={reason(evidence)} />, room);
  return room;
}

const evidence = [
  claimed('made in 1994', { id: 'claim', spans: [yearSpan(1994)] }),
  coded('KV0915', { id: 'code', spans: [yearsSpan(1993, 1996)], places: ['BE'] }),
  marked('The common control mark with the scales exists since 27 June 1975', {
    id: 'zip',
    spans: [yearsSpan(1990, null)],
    strength: 'soft',
  }),
];

test('one image with a name that says the result, a row for each statement, and the stretch that agrees', () => {
  const room = show(evidence);
  const chart = room.querySelector('.time-axis-chart')!;
  expect(chart.getAttribute('role')).toBe('img');
  expect(chart.getAttribute('aria-label')).toContain('The code and the listing agree on 1994');
  expect(room.querySelectorAll('.time-axis-row')).toHaveLength(3);
  for (const row of chart.querySelectorAll('.time-axis-row'))
    expect(row.querySelectorAll('.time-axis-band')).toHaveLength(1);
  expect(room.querySelector('.time-axis-agreed')?.textContent).toBe('The code and the listing agree on 1994.');
});

test('hard and soft are told apart without colour: soft bars are hatched with a broken outline', () => {
  const bars = [...show(evidence).querySelectorAll('.time-axis-chart .time-axis-bar')];
  expect(bars.map((bar) => bar.getAttribute('fill')?.startsWith('url(#') ?? false)).toEqual([false, false, true]);
  expect(bars.map((bar) => bar.hasAttribute('stroke-dasharray'))).toEqual([false, false, true]);
});

test('the table behind it says every row in words and is opened by a native summary', () => {
  const room = show(evidence);
  expect(room.querySelector('details > summary')?.textContent).toBe('The same as a table');
  const cells = [...room.querySelectorAll('tbody tr')].map((row) => [...row.children].map((cell) => cell.textContent));
  expect(cells[1]).toEqual([
    "The stamp reads KV0915: 1993 to 1996, BelgiumSource: the listing's description",
    '1993 to 1996, Belgium',
    'firm; agrees with most',
  ]);
  expect(cells).toHaveLength(3);
});

test('a row’s words stand outside of the drawing, so that no bar, band or tick can cross them', () => {
  const chart = show(evidence).querySelector('.time-axis-chart')!;
  const labels = [...chart.querySelectorAll('.time-axis-label')];
  expect(labels.map(({ textContent }) => textContent)).toEqual([
    'Listing: 1994',
    'Code as quoted: 1993 to 1996',
    'The common control mark with the scales exists since 27 June 1975',
  ]);
  for (const label of labels) expect(label.closest('svg')).toBeNull();
  for (const bar of chart.querySelectorAll('.time-axis-bar, .time-axis-band, .time-axis-tick'))
    expect(bar.closest('.time-axis-track')).not.toBeNull();
});

test('nothing is styled inline, which the content security policy would drop', () => {
  expect(show(evidence).querySelectorAll('[style]')).toHaveLength(0);
});

test('which one wrong fact would explain everything is said', () => {
  const room = show([
    piece('year', { spans: [yearSpan(1984)], says: { kind: 'made', field: 'title', words: '1984' } }),
    ...evidence,
  ]);
  expect([...room.querySelectorAll('.time-axis-explained')].map((line) => line.textContent)).toEqual([
    'If the year claimed is wrong (the listing says “1984”), all the rest agrees: 1994, Belgium.',
  ]);
});

test('in a tie every side is named, in words and in the table, and has its band', () => {
  const label = marked('label', { spans: [yearsSpan(1970, 2000)] });
  const room = show([claimed('claim', { spans: [yearSpan(1987)] }), coded('code', { spans: [yearSpan(1998)] }), label]);
  expect(room.querySelector('.time-axis-agreed')?.textContent).toBe(
    'The marks and the listing agree on 1987, and the code and the marks agree on 1998.',
  );
  expect(room.querySelectorAll('.time-axis-row:first-of-type .time-axis-band')).toHaveLength(2);
  expect([...room.querySelectorAll('tbody td:last-child')].map((cell) => cell.textContent)).toEqual([
    'firm; on one of the equal sides',
    'firm; on one of the equal sides',
    'firm; agrees with most',
  ]);
  const five = [1981, 1983, 1985, 1987, 1989].map((year) => claimed(`${year}`, { spans: [yearSpan(year)] }));
  expect(show([...five, label]).querySelector('.time-axis-agreed')?.textContent).toBe(
    'The marks and the listing agree on 1981, the marks and the listing agree on 1983, the marks and the listing agree on 1985, and as many on 2 other dates.',
  );
});

test('a page full of dates is drawn in part, and the table holds the rest', () => {
  const many = Array.from({ length: 40 }, (_, at) => piece(`e${at}`, { spans: [yearSpan(1950 + at)] }));
  const room = show(many);
  expect(room.querySelectorAll('.time-axis-row')).toHaveLength(30);
  expect(room.querySelectorAll('tbody tr')).toHaveLength(40);
  expect(room.textContent).toContain('10 more statements in the table.');
});

test('without dated evidence nothing is shown', () => {
  expect(show([]).innerHTML).toBe('');
});

test('hostile words stay text', () => {
  const room = show([claimed('<img src=x onerror=alert(1)>')]);
  expect(room.querySelector('img')).toBeNull();
});
