import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('a country and a year that stand by themselves', () => {
  it.each<Told>([
    ['England, 1968.', ['origin GB', 'made 1968-1968']],
    ['Sac en toile enduite, France, 1999.', ['origin FR', 'made 1999-1999']],
    ['Bought in Paris, France, 1999.', []],
    ['イタリア製、1991年。', ['origin IT', 'made 1991-1991']],
  ])('%s', (text, claims, title) => expect(told(['made', 'bought', 'origin'], text, title)).toEqual(claims));
});
