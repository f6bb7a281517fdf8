import { expect, test } from 'vitest';
import { insertEntry, newDraft, removeEntry, setField } from '../../../src/maker';
import { axisFacts, axisYears } from '../../../src/ui/makers/construction-rows';
import { skippedWords } from '../../../src/ui/makers/SlotFields';
import { tableFaults } from '../../../src/ui/makers/serial-gaps';
import { strings } from '../../../src/words';

const undo = (what: string | undefined) => strings.makers.undoStep(what ?? '');

test('every step is named as the person who took it would', () => {
  const start = newDraft('Ondrasse');
  const said = [
    setField(start, ['codeSystems', 0, 'used', 1], '1999'),
    setField(start, ['codeSystems', 0, 'layout', 2, 'table', 1, 'made', 0], '1999'),
    setField(start, ['codeSystems', 0, 'layouts', 1, 0, 'letters'], 'ABC'),
    setField(start, ['plants', 1, 'used', 1, 0], '1990'),
    setField(start, ['trade', 'sampleSales'], true),
    setField(start, [], {}, { what: strings.makers.steps.learn }),
    insertEntry(start, ['plants'], {}),
    insertEntry(start, ['codeSystems', 0, 'layout'], { year: 2 }),
    insertEntry(start, ['prices'], {}),
    removeEntry(setField(start, ['plants'], [{}]), ['plants'], 0),
  ].map(({ past }) => undo(past.at(-1)?.what));
  expect(said).toEqual([
    'Undo: change code system 1, period, last date',
    'Undo: change code system 1, slot 3, range 2, years made, first date',
    'Undo: change code system 1, layout 2, slot 1, letters',
    'Undo: change workshop 2, period 2, first date',
    'Undo: change how it is sold, sample sales',
    'Undo: learn a system',
    'Undo: add workshop',
    'Undo: add slot to code system 1',
    'Undo: add price',
    'Undo: remove workshop 1',
  ]);
});

test('gaps and overlaps between ranges of numbers are told at the range that they follow or meet', () => {
  const made = ['1990', null];
  const table = [
    { first: 300, last: null, made },
    { first: 1, last: 99, made },
    { first: 150, last: 210, made },
    { first: 200, last: 299, made },
    { last: 5, made },
  ];
  expect(tableFaults(table)).toEqual([
    { kind: 'gap', first: 100, last: 149, row: 1 },
    { kind: 'overlap', first: 200, last: 210, row: 3 },
  ]);
  expect(
    tableFaults([
      { first: 1, last: null },
      { first: 50, last: 60 },
    ]),
  ).toEqual([{ kind: 'overlap', first: 50, last: 60, row: 1 }]);
  expect(tableFaults([])).toEqual([]);
});

test('construction facts stand by part and date; those half written have no bar', () => {
  const facts = [
    { part: 'zip', is: 'brass', used: ['1990', '1994-06'], strength: 'hard' },
    { part: 'lining', is: 'twill', used: ['1980', null], strength: 'soft' },
    { part: 'zip', is: 'steel', used: ['1970', '1989'], strength: 'hard' },
    { part: 'zip', is: 'horn', used: ['19', null], strength: 'hard' },
    { part: 'zip', is: 'bone', used: ['1999', '1990'], strength: 'hard' },
    null,
  ];
  const rows = axisFacts(facts);
  expect(rows.map(({ at, from, end, soft }) => [at, from, end, soft])).toEqual([
    [2, 1970, 1990, false],
    [0, 1990, 1995, false],
    [1, 1980, null, true],
  ]);
  expect(axisYears(rows)).toEqual({ first: 1970, last: 1997, ticks: [1970, 1980, 1990] });
});

test('a letter cycle says which letters it skips', () => {
  expect(skippedWords('ABCDEFGHJKLMNPRSTUVWXYZ')).toBe('Skipped: I O Q');
  expect(skippedWords('ABCDEFGHIJKLMNOPQRSTUVWXYZ')).toBe('No letter is skipped.');
  expect(skippedWords(undefined)).toBe('');
});
