import { expect, it } from 'vitest';
import { isCorrected, withoutTakenBack } from '../../../src/claim/taken-back';

const corrected = (text: string, code: string) =>
  isCorrected(text, text.indexOf(code), text.indexOf(code) + code.length);

it.each([
  ['kv0915, not kv0951', 'kv0951', true],
  ['kv0915, not kv0951', 'kv0915', false],
  ['nicht "kv0951", sondern kv0915', 'kv0951', true],
  ['kv0951ではなくkv0915', 'kv0951', true],
  ['i first wrote kv0951', 'kv0951', true],
  ['looks like kv0951 in the photo, but says kv0915', 'kv0951', true],
  ['it says kv0951', 'kv0951', false],
])('“%s” corrects %s: %s', (text, code, wanted) => expect(corrected(text, code)).toBe(wanted));

it('what is corrected goes where its sentence, or the one beside it, has the right one', () => {
  const left = (text: string) => {
    const codes = Array.from(text.matchAll(/kv\d{4}/g), ({ index, 0: code }) => ({ start: index, code }));
    return withoutTakenBack(text, codes).map(({ code }) => code);
  };
  expect(left('kv0915, not kv0951')).toEqual(['kv0915']);
  expect(left('not kv0951')).toEqual(['kv0951']);
  expect(left('i first wrote kv0951. it is kv0915')).toEqual(['kv0915']);
  expect(left('it is kv0915. i first wrote kv0951')).toEqual(['kv0915']);
  expect(left('not kv0951, and not kv0915')).toEqual(['kv0951', 'kv0915']);
  expect(left(`ok. not kv0951 ${'x'.repeat(70)}. kv0915`)).toEqual(['kv0915']);
  // The right one begins eighty characters behind the sentence, and then eighty-one.
  expect(left(`i first wrote kv0951. ${'x'.repeat(77)} kv0915`)).toEqual(['kv0915']);
  expect(left(`i first wrote kv0951. ${'x'.repeat(78)} kv0915`)).toEqual(['kv0951', 'kv0915']);
});
