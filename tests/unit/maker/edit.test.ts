import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { slotKinds } from '../../../src/code';
import {
  builtInMakers,
  type Draft,
  draftOf,
  draftSchema,
  exportText,
  freshSlots,
  insertEntry,
  inspectDraft,
  liveExamples,
  moveEntry,
  newDraft,
  openText,
  redoStep,
  removeEntry,
  setField,
  undoStep,
} from '../../../src/maker';
import { layoutSchema } from '../../../src/maker/slot-schema';
import { sayFault } from '../../../src/words';

const system = {
  id: 'month-year',
  used: ['1990', '1999'] as [string, string],
  layout: [{ month: 2 as const }, { year: 2 as const }],
  examples: [{ code: '0195', reads: '1995-01' }],
};

test('a maker is written field by field until the file is sound', () => {
  let draft = newDraft();
  expect(inspectDraft(draft).byField.get('maker')?.[0]).toMatchObject({ fault: { kind: 'empty' } });
  draft = setField(draft, ['maker'], 'Ondrasse');
  expect(inspectDraft(draft).problems).toEqual([]);
  draft = insertEntry(draft, ['codeSystems'], system);
  draft = setField(draft, ['codeSystems', 0, 'examples', 0, 'reads'], '1995-02');
  expect([...inspectDraft(draft).byField.keys()]).toEqual(['codeSystems[0].examples[0]']);
  draft = undoStep(draft);
  expect(inspectDraft(draft).file?.codeSystems).toEqual([system]);
});

test('slots are added, moved and removed, and each step is undone and done again', () => {
  const layout = ['codeSystems', 0, 'layout'] as const;
  const start = insertEntry(newDraft('Ondrasse'), ['codeSystems'], system);
  const added = insertEntry(start, layout, { plant: 2 }, 0);
  const moved = moveEntry(added, layout, 0, 2);
  const removed = removeEntry(moved, layout, 0);
  const layouts = [added, moved, removed].map(({ value }) => (value.codeSystems as (typeof system)[])[0]?.layout);
  expect(layouts).toEqual([
    [{ plant: 2 }, { month: 2 }, { year: 2 }],
    [{ month: 2 }, { year: 2 }, { plant: 2 }],
    [{ year: 2 }, { plant: 2 }],
  ]);
  expect(removed.past.map(({ what }) => what)).toEqual([
    'add to codeSystems',
    'add to codeSystems[0].layout',
    'move codeSystems[0].layout[0]',
    'remove codeSystems[0].layout[0]',
  ]);
  expect(undoStep(undoStep(removed)).value).toEqual(added.value);
  expect(redoStep(redoStep(undoStep(undoStep(removed)))).value).toEqual(removed.value);
  expect(undoStep(newDraft())).toEqual(newDraft());
});

test('typing a word is one step', () => {
  let draft = newDraft();
  for (const text of ['O', 'On', 'Ond']) draft = setField(draft, ['maker'], text, { typing: true });
  draft = setField(draft, ['note'], 'x', { typing: true });
  expect(draft.past).toHaveLength(2);
  expect(undoStep(undoStep(draft)).value).toEqual({ format: 2, maker: '' });
});

test('a draft survives being stored as JSON, with its steps', () => {
  const draft = undoStep(setField(setField(newDraft(), ['maker'], 'Ondrasse'), ['note'], 'seen in a shop'));
  const stored = draftSchema.parse(JSON.parse(JSON.stringify(draft)));
  expect(stored).toEqual(draft);
  expect(redoStep(stored).value.note).toBe('seen in a shop');
});

test('a field named __proto__ changes nothing', () => {
  const draft = setField(newDraft('Ondrasse'), ['__proto__', 'polluted'], true);
  expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  expect(draft.value).toEqual({ format: 2, maker: 'Ondrasse' });
});

const seed = 20_251_125;
test(`any series of steps is undone to the beginning and done again to the end (seed ${seed})`, () => {
  const action = fc.oneof(
    fc.tuple(fc.constant('set'), fc.constantFrom('maker', 'note'), fc.string({ maxLength: 5 })),
    fc.tuple(fc.constant('insert'), fc.constantFrom('plants', 'models'), fc.string({ maxLength: 5 })),
    fc.tuple(fc.constant('remove'), fc.constantFrom('plants', 'models'), fc.constant('')),
  );
  fc.assert(
    fc.property(fc.array(action, { maxLength: 30 }), (actions) => {
      const start = newDraft('Ondrasse');
      const end = actions.reduce<Draft>((draft, [kind, field, value]) => {
        if (kind === 'set') return setField(draft, [field], value);
        return kind === 'insert' ? insertEntry(draft, [field], value) : removeEntry(draft, [field], 0);
      }, start);
      let back = end;
      for (let count = 0; count < 40; count++) back = undoStep(back);
      expect(back.value).toEqual(start.value);
      let forth = back;
      for (let count = 0; count < 40; count++) forth = redoStep(forth);
      expect(forth.value).toEqual(end.value);
    }),
    { seed, numRuns: 200 },
  );
});

test('a file goes out and comes back the same; one that is not yet sound opens with its problems', () => {
  for (const file of builtInMakers) {
    const opened = openText(exportText(draftOf(file)));
    expect(opened.problems).toEqual([]);
    expect(opened.draft?.value).toEqual(file);
  }
  const unsound = openText('{"format":1,"maker":"Ondrasse","plants":[{"code":"kv"}]}');
  expect(unsound.draft?.value.maker).toBe('Ondrasse');
  expect(unsound.problems.map(({ where }) => where)).toEqual(['plants[0].code', 'plants[0].place', 'plants[0].used']);
  expect(openText('not a file').draft).toBeNull();
  expect(openText('[1]').draft).toBeNull();
});

test('examples decode live beside the slots', () => {
  const examples = [
    { code: '0195', reads: '1995-01' },
    { code: '0295', reads: '1995-03' },
    { code: '1395', reads: '1995-12' },
    { code: '0495', reads: 'in spring' },
    { code: '0582', reads: '1982-05' },
  ];
  expect(
    liveExamples({ ...system, examples }, []).map(({ says, state, why }) => ({
      says,
      state,
      why: why && sayFault(why, undefined, 'en'),
    })),
  ).toEqual([
    { says: ['1995-01'], state: 'agrees', why: null },
    { says: ['1995-02'], state: 'differs', why: '"0295" reads 1995-02, but the example says "1995-03"' },
    { says: [], state: 'not read', why: '"1395" does not fit the system\'s layout: month "13" should be 01 to 12' },
    {
      says: ['1995-04'],
      state: 'reads not understood',
      why: '"in spring" in "in spring" is neither a date nor a place code',
    },
    { says: ['1982-05'], state: 'differs', why: '"0582" reads 1982-05, which lies outside the system\'s period' },
  ]);
});

test('every slot of the language can be clicked into a layout', () => {
  expect(freshSlots.map(({ kind }) => kind)).toEqual(slotKinds.map(({ kind }) => kind));
  expect(layoutSchema.safeParse(freshSlots.map(({ slot }) => slot)).error).toBeUndefined();
});
