import { expect, test } from 'vitest';
import { learnSystem } from '../../../src/code';
import { draftOf, inspectDraft, setField, undoStep } from '../../../src/maker';
import {
  chanceWords,
  doubtWords,
  outcomeWords,
  systemsOf,
  tellingWords,
  withLearned,
} from '../../../src/ui/makers/learned';

const examples = [
  ['KV0915', '1995-01, BE'],
  ['HJ1929', '1999-12, FR'],
  ['ZM0084', '2004-08, ES'],
  ['WQ1012', '2002-11, US'],
  ['KV0963', '1993-06, BE'],
  ['HJ0052', '2002-05, FR'],
].map(([code, reads]) => ({ code: code!, reads: reads! }));
const learned = learnSystem(examples);
const best = learned.remaining[0]!;

test('a learned layout makes an unfinished draft a maker file that is accepted, and one undo takes it all back', () => {
  const draft = draftOf({ format: 2, maker: 'Velmar Lane' });
  const after = setField(draft, [], withLearned(draft.value, best, examples));
  const { file, problems } = inspectDraft(after);
  expect(problems).toEqual([]);
  expect(file?.codeSystems).toMatchObject([
    {
      id: 'learned',
      layout: [{ plant: 2 }, { month: 'tens' }, { year: 'tens' }, { month: 'units' }, { year: 'units' }],
      examples,
    },
  ]);
  expect(file?.plants.map(({ code, place }) => [code, place])).toEqual([
    ['KV', 'BE'],
    ['HJ', 'FR'],
    ['ZM', 'ES'],
    ['WQ', 'US'],
  ]);
  expect(systemsOf(after.value, best)).toEqual(['learned']);
  expect(undoStep(after).value).toBe(draft.value);
  expect(systemsOf(undoStep(after).value, best)).toBeNull();
});

test('what a draft has already stays, whole or not, and no name is used twice', () => {
  const held = { code: 'KV', place: 'BE', used: ['1980', null] };
  const value = {
    format: 2,
    maker: 'Velmar Lane',
    plants: [null, held, { place: 'IT' }],
    codeSystems: [{ id: 'learned', layout: [] }, 7],
  };
  const after = withLearned(value, best, examples) as { plants: unknown[]; codeSystems: { id?: string }[] };
  expect(after.plants.slice(0, 3)).toEqual(value.plants);
  expect(after.plants.slice(3)).toMatchObject([{ code: 'HJ' }, { code: 'ZM' }, { code: 'WQ' }]);
  expect(after.codeSystems.map((system) => system.id)).toEqual(['learned', undefined, 'learned-2']);
});

test('an example that is taken to be wrong is not written', () => {
  const odd = { code: 'KV0936', reads: '1991-03, BE' };
  const found = learnSystem([...examples, odd]);
  expect(found.remaining[0]?.wrong).toEqual([6]);
  expect(doubtWords(found.doubted[0]!, 'row 7, KV0936')).toBe(
    'row 7, KV0936: the layout reads 1996-03, BE in it. Look where its date is from, and once more at the stamp; another code of the same year would tell.',
  );
  const { codeSystems } = withLearned({}, found.remaining[0]!, [...examples, odd]);
  expect(codeSystems).toMatchObject([{ examples }]);
});

test('chance is said in numbers that a person can keep', () => {
  expect([12.3, 1, 0.6, 0.25, 1 / 9228, 1e-20].map(chanceWords)).toEqual([
    'Of all layouts tried, about 12 would fit as well by chance alone.',
    'Of all layouts tried, about 1 would fit as well by chance alone.',
    'Of all layouts tried, about 1 would fit as well by chance alone.',
    'By chance alone, any of the layouts tried would fit as well about once in 4 such lists.',
    'By chance alone, any of the layouts tried would fit as well about once in 9,200 such lists.',
    'By chance alone, any of the layouts tried would fit as well less than once in a million such lists.',
  ]);
});

test('what remains is said, and what would settle it', () => {
  expect([outcomeWords(learned, examples), tellingWords(learned)]).toEqual(['One layout remains.', null]);
  const none = [
    { code: 'KV0915', reads: '1971-03' },
    { code: 'HJ1929', reads: '1988-05' },
    { code: 'ZM0084', reads: '1990-09' },
    { code: 'WQ1012', reads: '1978-12' },
  ];
  expect(outcomeWords(learnSystem(none), none)).toMatch(/^Nothing explains these 4 codes/);
  const open = [
    { code: '0404', reads: '2004-04' },
    { code: '0505', reads: '2005-05' },
    { code: '0606', reads: '2006-06' },
  ];
  const several = learnSystem(open);
  expect(several.ambiguous).toBe(true);
  expect(outcomeWords(several, open)).toBe(
    `${several.remaining.length} explanations remain, likeliest first: these codes do not settle it.`,
  );
  expect(tellingWords(several)).toBe(
    `A code such as ${several.tellingCode?.code} with its known date would tell them apart.`,
  );
});
