import { describe, expect, it } from 'vitest';
import { told } from './listing-of';

const kinds = (short: string, text: string) => told([short], text);

describe('grades of a legend', () => {
  const grades = ['new', 'like new', 'very good', 'damaged'];
  const conditions = (text: string) => kinds('condition', text);
  it('four different ones in a row grade nothing, three are said', () => {
    expect(conditions(`Condition: ${grades.slice(0, 3).join(', ')}.`)).toHaveLength(3);
    expect(conditions(`Condition: ${grades.join(', ')}.`)).toEqual([]);
  });
  it('but for the one that is said of this piece', () => {
    expect(conditions(`${grades.join(', ')}. This one is damaged.`)).toEqual(['condition damaged']);
  });
});
