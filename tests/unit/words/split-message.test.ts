import fc from 'fast-check';
import { expect, it } from 'vitest';
import { lengthOf, splitMessage } from '../../../src/words';

const questions = [
  '1. Could you add a sharp photo of the stamped code, straight from above?',
  '2. How do you know when it was made?\nThe title says 1987.',
  '3. Would you take the piece back, and within how many days?',
];
const message = ['Hello,', '', 'I have 3 questions before I decide:', '', ...questions, '', 'Thank you.'].join('\n');

it('leaves a message that fits as it is', () => {
  expect(splitMessage(message, message.length)).toEqual([{ text: message, tooLong: false }]);
});

it('splits between questions into numbered parts, each within the limit, with nothing lost', () => {
  const parts = splitMessage(message, 130).map(({ text }) => text);
  expect(parts).toEqual([
    '(1/3) Hello,\n\nI have 3 questions before I decide:\n\n1. Could you add a sharp photo of the stamped code, straight from above?',
    '(2/3) 2. How do you know when it was made?\nThe title says 1987.\n3. Would you take the piece back, and within how many days?',
    '(3/3) Thank you.',
  ]);
});

it('cuts no question, however small the field: it stands alone and says that it is too long', () => {
  const parts = splitMessage(message, 40);
  for (const question of questions) expect(parts.filter(({ text }) => text.endsWith(question))).toHaveLength(1);
  expect(parts.filter(({ tooLong }) => tooLong).map(({ text }) => text.replace(/^\(\d+\/\d+\) /, ''))).toEqual([
    'I have 3 questions before I decide:',
    ...questions,
  ]);
});

it('keeps every word in order, and every part within the limit that it says it keeps', () => {
  const line = fc
    .string({ minLength: 1, maxLength: 60, unit: 'grapheme' })
    .map((text) => `q${text.replace(/\s/g, '')}`);
  fc.assert(
    fc.property(fc.array(line, { minLength: 1, maxLength: 12 }), fc.integer({ min: 20, max: 300 }), (asks, most) => {
      const text = ['Hello,', '', ...asks.map((ask, at) => `${at + 1}. ${ask}`), '', 'Thanks.'].join('\n');
      const parts = splitMessage(text, most);
      const words = (said: string) => said.split(/\s+/).filter(Boolean);
      expect(
        parts.flatMap((part) => words(parts.length === 1 ? part.text : part.text.replace(/^\(\d+\/\d+\) /, ''))),
      ).toEqual(words(text));
      for (const part of parts) expect(lengthOf(part.text) > most).toBe(part.tooLong);
    }),
  );
});
