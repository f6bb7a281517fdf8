import { describe, expect, it } from 'vitest';
import { authorshipPlain } from '../../../src/check/authorship-plain';
import { claim, facts, said } from './sample';

describe('authorship-plain', () => {
  it('doubts a hedge', () => {
    expect(
      said(authorshipPlain, facts({ claims: [claim('hedged-authorship', 'in the style of Ondrasse', {})] })),
    ).toEqual(['doubt: The listing hedges who made it: “in the style of Ondrasse”.']);
  });
  it('is silent otherwise', () => {
    expect(said(authorshipPlain, facts())).toEqual(['silent']);
  });
});
