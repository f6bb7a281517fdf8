import { describe, expect, it } from 'vitest';
import { type Told, told } from './listing-of';

describe('who does not vouch for the piece, and who doubts something else', () => {
  it.each<Told>([
    ['Not sure if it is real.', ['not-vouched']],
    ['Not sure if it is real leather.', []],
    ['If you are not sure it is real, have it looked at.', []],
    ['No guarantee that it’s authentic.', ['not-vouched']],
    ['Weiß nicht, ob die echt ist.', ['not-vouched']],
    ['Weiß nicht, ob das Leder echt ist.', []],
    ['本物かどうかわかりません。', ['not-vouched']],
    ['本革かどうかわかりません。', []],
  ])('%s', (text, claims, title) => expect(told(['not-vouched'], text, title)).toEqual(claims));
});
