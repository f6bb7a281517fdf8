import { describe, expect, it } from 'vitest';
import { gradeWords } from '../../../src/check/grade-words';
import { factsSaying, said } from './sample';

describe('grade-words', () => {
  it.each([
    ['Mirror quality, 1:1', 'doubt: The listing says “Mirror quality” and “1:1”.'],
    ['qualité miroir', 'doubt: The listing says “qualité miroir”.'],
    ['スーパーコピー品です', 'doubt: The listing says “スーパーコピー”.'],
  ])('speaks on %j', (words, statement) => {
    expect(said(gradeWords, factsSaying(words))).toEqual([statement]);
  });
  it.each(['The mirror inside is intact, quality leather', 'Ratio 21:15', 'Replicated stitches'])(
    'is silent on %j',
    (words) => {
      expect(said(gradeWords, factsSaying(words))).toEqual(['silent']);
    },
  );
});
