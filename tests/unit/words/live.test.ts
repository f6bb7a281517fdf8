import { afterEach, expect, test } from 'vitest';
import { chooseLanguage, kit, onLanguage, strings } from '../../../src/words';
import { live } from '../../../src/words/live';

afterEach(() => chooseLanguage('en'));

test('what a module kept when it was loaded follows the language', () => {
  const { stamp } = strings;
  const choices = Object.entries(strings.makers.slot.rules);
  expect(stamp.remove('KV0915')).toBe('Remove KV0915');
  expect(choices.map(([name]) => name)).toContain('luhn');
  let told = 0;
  const end = onLanguage(() => told++);
  chooseLanguage('en-XA');
  expect(stamp.remove('KV0915')).toMatch(/^\[Rëmövë KV0915 /);
  expect(kit.language).toBe('en-XA');
  chooseLanguage('en-XA');
  expect(told).toBe(1);
  end();
  chooseLanguage('en');
  expect(told).toBe(1);
  expect(stamp.remove('KV0915')).toBe('Remove KV0915');
});

test('lists and members are those of the words at the time', () => {
  let words: { lines: string[]; part: Record<string, string> } = { lines: ['one', 'two'], part: { a: 'A' } };
  const followed = live(() => words);
  expect(followed.lines.map((line) => line)).toEqual(['one', 'two']);
  words = { lines: ['eins'], part: { a: 'Ä', b: 'B' } };
  expect([...followed.lines]).toEqual(['eins']);
  expect(Object.entries(followed.part)).toEqual([
    ['a', 'Ä'],
    ['b', 'B'],
  ]);
  expect('b' in followed.part).toBe(true);
});
