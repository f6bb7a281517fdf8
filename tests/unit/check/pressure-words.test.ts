import { describe, expect, it } from 'vitest';
import { pressureWords } from '../../../src/check/pressure-words';
import { factsSaying, said } from './sample';

describe('pressure-words', () => {
  it.each([
    ['No questions, must go today', 'doubt: The listing says “No questions” and “must go today”.'],
    ['pas de questions', 'doubt: The listing says “pas de questions”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(pressureWords, factsSaying(words))).toEqual([statement]);
  });
  it.each(['Feel free to ask any questions'])('is silent on %j', (words) => {
    expect(said(pressureWords, factsSaying(words))).toEqual(['silent']);
  });
});
